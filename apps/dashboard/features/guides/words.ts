import type { Guide } from "@pith/rules";
import { renderWord } from "@pith/rules";
import { getTranslations } from "next-intl/server";
import { readerLanguage } from "../../format/language.ts";
import type { Choice } from "../forms/plan.ts";

/** The words of soil tests are the rules' own, so that a guide reads here as it does in an answer. */
const soilWord = (kind: "nutrient" | "extractant" | "class" | "response", word: string) =>
  renderWord(`soil-reading.${kind}.${word}`, { language: readerLanguage(), units: "metric" });

export const nutrientWord = (nutrient: string) => soilWord("nutrient", nutrient);
export const extractantWord = (extractant: string) => soilWord("extractant", extractant);
export const classWord = (name: string) => soilWord("class", name);
export const responseWord = (response: string) => soilWord("response", response);

/** Each choice of guide by its title; an unverified one says so. */
export async function guideChoices({
  held,
  own,
  chosen,
}: {
  held: readonly Pick<Guide, "id" | "title" | "status">[];
  own: readonly { guide: Pick<Guide, "id" | "title" | "status"> }[];
  chosen: string | undefined;
}): Promise<Choice[]> {
  const [t, statuses] = await Promise.all([getTranslations("guides"), getTranslations("ranges.statuses")]);
  const choices = [...own.map(({ guide }) => guide), ...held].map(({ id, title, status }) => ({
    value: id,
    // The titles of those held here say "(unverified)" themselves; the status says it and how it is known.
    label:
      status === "seen"
        ? title
        : t("choice", { title: title.replace(/ \(unverified\)$/, ""), status: statuses(status) }),
  }));
  // What was chosen stands in the form even where nobody holds it any more: saving would take it away unasked.
  const gone = chosen !== undefined && choices.every(({ value }) => value !== chosen);
  return gone ? [...choices, { value: chosen, label: t("gone", { id: chosen }) }] : choices;
}
