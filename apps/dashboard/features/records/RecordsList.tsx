import type { FarmDetail, Records } from "@pith/contract";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { dayText } from "../../format/dates.ts";
import { SignPhotos } from "../signs/SignPhotos.tsx";
import { removeRecord } from "./actions.ts";
import { linesOf } from "./lines.ts";
import { signsOf } from "./plans.ts";

interface Props {
  records: Records;
  detail: FarmDetail;
  /** The page to come back to after something was taken back. */
  back: string;
  who: "agent" | "farmer";
  mayWrite: boolean;
}

/** Letters of a year. */
const YEAR = 4;

/** What was seen and done, newest first; what was entered by mistake can be taken back. */
export async function RecordsList({ records, detail, back, who, mayWrite }: Props) {
  const [t, words] = await Promise.all([getTranslations("records"), getTranslations("words")]);
  const lines = linesOf(records, detail, { t, words });
  if (lines.length === 0) return <p>{t("none")}</p>;
  return (
    <>
      <ul className="listing records">
        {lines.map(({ id, kind, on, what, where, sign }) => (
          <li key={id}>
            <p>
              <time dateTime={on}>{on.length === YEAR ? on : dayText(on)}</time> {what}{" "}
              <span className="faint">{where}</span>
            </p>
            {sign && (
              <Link className="tap no-print" href={`${signsOf(who, detail.farm.id)}/${id}`}>
                {t("photos")}
                <span className="unseen">: {what}</span>
              </Link>
            )}
            {mayWrite && kind && (
              <details className="no-print">
                <summary>
                  {t("takeBack")}
                  <span className="unseen">: {what}</span>
                </summary>
                <form action={removeRecord.bind(null, { farmId: detail.farm.id, kind, id, back })}>
                  <button type="submit" className="quiet">
                    {t("takeBackSure")}
                  </button>
                </form>
              </details>
            )}
            {sign && <SignPhotos sign={sign} detail={detail} />}
          </li>
        ))}
      </ul>
      {records.older && (
        <p className="no-print">
          <Link className="tap" href={`${back}?before=${records.older}#records`}>
            {t("older", { day: dayText(records.older) })}
          </Link>
        </p>
      )}
    </>
  );
}

/** Which page of the records the address asks for. */
export const recordsQuery = ({ before }: Record<string, string>): { before?: string } =>
  before !== undefined && /^\d{4}-\d{2}-\d{2}$/.test(before) ? { before } : {};
