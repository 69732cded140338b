import type { FieldProblem } from "@pith/contract";
import { NUTRIENTS } from "@pith/rules";
import { getTranslations } from "next-intl/server";
import { readerLocale } from "../../format/language.ts";
import { nutrientWord } from "./words.ts";

/** One thing wrong with a guide: the field's path in the file, where that is in words, and what is wrong there. */
export interface GuideFault {
  field: string;
  where: string;
  text: string;
}

/** Field problems of a guide as a person reads them. */
export async function faultsOf(problems: readonly FieldProblem[]): Promise<GuideFault[]> {
  const t = await getTranslations("guides");
  const parts = new Intl.ListFormat(readerLocale(), { type: "unit" });
  const where = (field: string) => {
    const steps = field.split(".");
    const words = steps.map((step, i) => {
      if (/^\d+$/.test(step)) return t("part.row", { number: Number(step) + 1 });
      const key = `part.${step}` as "part.title";
      if (steps[i - 1] === "nutrients") return isNutrient(step) ? nutrientWord(step) : step;
      return t.has(key) ? t(key) : step;
    });
    return field === "" ? t("part.whole") : parts.format(words);
  };
  return problems.map(({ field, message, accepted }) => ({
    field,
    where: where(field),
    // What the schema's library says for itself begins as a sentence of its own.
    text: /^[A-Z]/.test(message)
      ? message
      : accepted === undefined || message.endsWith(accepted)
        ? t("fault", { message })
        : t("faultAccepted", { message, accepted }),
  }));
}

const isNutrient = (step: string) => (NUTRIENTS as readonly string[]).includes(step);
