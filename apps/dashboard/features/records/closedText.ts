import type { FarmDetail, Records } from "@pith/contract";
import type { getTranslations } from "next-intl/server";
import { instantText, longDayText } from "../../format/dates.ts";
import { readerLocale } from "../../format/language.ts";

type Words = Awaited<ReturnType<typeof getTranslations<"closed">>>;

/** A sentence for each bed that a label closes now, to work, to picking or to both. */
export function closedText(
  closed: Records["closed"],
  detail: FarmDetail,
  t: Words,
  locale = readerLocale(),
): { bedId: string; text: string }[] {
  return closed.flatMap(({ bedId, reEntryUntil, harvestFrom }) => {
    const found = detail.beds.find((one) => one.id === bedId);
    const zone = detail.sites.find((one) => one.id === found?.siteId)?.timeZone;
    const bed = found?.name ?? "";
    const until = reEntryUntil === null ? null : instantText(reEntryUntil, zone, locale);
    const from = harvestFrom === null ? null : longDayText(harvestFrom, locale);
    if (until !== null && from !== null) return [{ bedId, text: t("both", { bed, until, from }) }];
    if (until !== null) return [{ bedId, text: t("work", { bed, until }) }];
    return from === null ? [] : [{ bedId, text: t("pick", { bed, from }) }];
  });
}
