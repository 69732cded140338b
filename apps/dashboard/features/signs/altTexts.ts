import type { FarmDetail, Records } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import { dayText } from "../../format/dates.ts";

/** What each photograph of a sign is of, for who does not see it. */
export async function altTexts(sign: Records["signs"][number], detail: FarmDetail): Promise<string[]> {
  const [t, words] = await Promise.all([getTranslations("photos"), getTranslations("words.signs.sign")]);
  const planting = detail.plantings.find((one) => one.id === sign.plantingId)?.varietyName ?? "";
  return sign.photos.map((_, i) =>
    t("alt", { nth: i + 1, sign: words(sign.sign), planting, day: dayText(sign.on) }),
  );
}
