import { ledgerRoutes } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import { instantText } from "../../format/dates.ts";
import { call } from "../../server/api.ts";
import { readerZone } from "../../server/zone.ts";

const SHOWN = 14;

interface Props {
  officeId: string;
  /** How many, newest first. */
  most?: number;
}

/** Signed checkpoints to keep outside the office: what shows that the ledger was not rewritten afterwards. */
export async function Checkpoints({ officeId, most = SHOWN }: Props) {
  const [{ checkpoints }, zone, t] = await Promise.all([
    call(ledgerRoutes.listCheckpoints, { params: { officeId }, query: { limit: most } }),
    readerZone(),
    getTranslations("keeping"),
  ]);
  if (checkpoints.length === 0) return <p>{t("noCheckpoint")}</p>;
  return (
    <ul className="listing">
      {checkpoints.map(({ id, checkpoint: { at, seq, keyId } }) => (
        <li key={id}>
          <a className="tap" href={`/checkpoints/${id}`} download>
            {t("checkpoint", { at: instantText(at, zone), entries: seq })}
          </a>
          <p className="hash faint">{t("key", { keyId })}</p>
        </li>
      ))}
    </ul>
  );
}
