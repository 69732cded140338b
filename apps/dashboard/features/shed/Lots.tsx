import type { FarmDetail, Records } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import { dayText, todayIn } from "../../format/dates.ts";
import { inText } from "../../format/units.ts";
import { type Lot, lotsOf } from "./lots.ts";

interface Props {
  records: Records;
  materialId: string;
  detail: FarmDetail;
}

/** The lots of a material: which, how much is left, until when it is good. */
export async function Lots({ records, materialId, detail }: Props) {
  const t = await getTranslations("lots");
  const today = todayIn(detail.sites[0]?.timeZone);
  const { units } = detail.farm;
  const lots = lotsOf(records, materialId);
  if (lots.length === 0) return null;
  const nameOf = ({ lot, receivedOn }: Lot) =>
    lot === null ? t("of", { day: dayText(receivedOn, today) }) : t("lot", { lot });
  return (
    <ul className="plain">
      {lots.map((one) => (
        <li key={one.id}>
          {nameOf(one)}:{" "}
          {one.leftKg === null
            ? t("came", { amount: inText(one.kg, "kg", units) })
            : t("left", { amount: inText(one.leftKg, "kg", units) })}
          {one.bestBefore !== null && (
            <span className={one.bestBefore < today ? "unknown" : "faint"}>
              {" "}
              {one.bestBefore < today
                ? t("overdue", { day: dayText(one.bestBefore, today) })
                : t("bestBefore", { day: dayText(one.bestBefore, today) })}
            </span>
          )}
        </li>
      ))}
    </ul>
  );
}
