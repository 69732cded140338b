import {
  EXTRACTANTS,
  GUIDE_MEDIA,
  GUIDE_RESPONSES,
  GUIDE_UNITS,
  NUTRIENTS,
  RATE_FORMS,
  RATE_UNITS,
  SOIL_TEST_CLASSES,
} from "@pith/rules";
import type { Metadata } from "next";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import type { Choice } from "../../../../../features/forms/plan.ts";
import { addGuide } from "../../../../../features/guides/actions.ts";
import { formName } from "../../../../../features/guides/figures.ts";
import { guideFormWords } from "../../../../../features/guides/formWords.ts";
import { GuideForm } from "../../../../../features/guides/GuideForm.tsx";
import { classWord, extractantWord, nutrientWord } from "../../../../../features/guides/words.ts";
import { agentSeat } from "../../../../../server/seat.ts";
import { Row } from "../../../../../ui/Row.tsx";

export async function generateMetadata(): Promise<Metadata> {
  const t = await getTranslations("guides");
  return { title: t("addByForm") };
}

export default async function GuideFormPage() {
  const [, t, words] = await Promise.all([agentSeat(), getTranslations("guides"), guideFormWords()]);
  const choose = { value: "", label: t("choose") };
  const chosen = (of: readonly string[], say: (word: string) => string): Choice[] =>
    of.map((value) => ({ value, label: say(value) }));
  return (
    <Row
      notes={
        <div className="flow">
          <p>{t("form.help")}</p>
          <p>{t("checked")}</p>
        </div>
      }
    >
      <p className="crumbs">
        <Link href="/guides">{t("title")}</Link>
      </p>
      <h1>{t("addByForm")}</h1>
      <GuideForm
        add={addGuide}
        words={words}
        choices={{
          // What changes every number is asked, never preset.
          unit: [choose, ...chosen(GUIDE_UNITS, (unit) => t(`units.${unit}` as "units.lb/A"))],
          medium: chosen(GUIDE_MEDIA, (medium) => t(`medium.${medium}` as "medium.mineral-soil")),
          nutrient: [choose, ...chosen(NUTRIENTS, nutrientWord)],
          extractant: [choose, ...chosen(EXTRACTANTS, extractantWord)],
          decimals: chosen(["0", "1", "2", "3"], (decimals) => t("decimals", { decimals: Number(decimals) })),
          class: [choose, ...chosen(SOIL_TEST_CLASSES, classWord)],
          response: [
            choose,
            ...chosen(GUIDE_RESPONSES, (word) => t(`form.responses.${word}` as "form.responses.unlikely")),
          ],
          rates: [
            { value: "", label: t("form.noRates") },
            ...chosen(RATE_FORMS, (form) => t("form.ratesAs", { form: formName(form) })),
          ],
          rateUnit: chosen(RATE_UNITS, (unit) => unit),
        }}
      />
    </Row>
  );
}
