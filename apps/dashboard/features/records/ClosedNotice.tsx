import type { FarmDetail, Records } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import { instantText, longDayText } from "../../format/dates.ts";

interface Props {
  closed: Records["closed"];
  detail: FarmDetail;
  /** Of this bed alone. */
  bedId?: string;
}

/** Beds that a label closes now, to work and to picking: said wherever somebody may be about to go in, and printed. */
export async function ClosedNotice({ closed, detail, bedId }: Props) {
  const t = await getTranslations("closed");
  const mine = closed.filter((one) => bedId === undefined || one.bedId === bedId);
  if (mine.length === 0) return null;
  return (
    <section className="closed-notice" aria-label={t("head")}>
      <p className="closed-head">{t("head")}</p>
      <ul className="plain">
        {mine.map(({ bedId: id, reEntryUntil, harvestFrom }) => {
          const bed = detail.beds.find((one) => one.id === id);
          const zone = detail.sites.find((one) => one.id === bed?.siteId)?.timeZone;
          const name = bed?.name ?? "";
          const until = reEntryUntil === null ? null : instantText(reEntryUntil, zone);
          const from = harvestFrom === null ? null : longDayText(harvestFrom);
          return (
            <li key={id}>
              {until !== null && from !== null
                ? t("both", { bed: name, until, from })
                : until !== null
                  ? t("work", { bed: name, until })
                  : from !== null && t("pick", { bed: name, from })}
            </li>
          );
        })}
      </ul>
      <p className="faint small">{t("why")}</p>
    </section>
  );
}
