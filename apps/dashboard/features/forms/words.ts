import { getTranslations } from "next-intl/server";
import { languageAsked } from "../../server/language.ts";
import type { ProblemWords } from "./read.ts";
import type { FormWords } from "./view.ts";

/** The labels, hints and words of a plan, from the catalogue. */
export async function formWords(labels: string): Promise<FormWords> {
  const [t, words, form] = await Promise.all([
    getTranslations("fields"),
    getTranslations("words"),
    getTranslations("form"),
  ]);
  // The keys are built from the contract's field names; the catalogue's shape cannot express that.
  return {
    label: (path) => t(`${labels}.${path}.label` as never),
    hint: (path) => {
      const key = `${labels}.${path}.hint` as never;
      return t.has(key) ? t(key) : null;
    },
    word: (path, word) => words(`${labels}.${path}.${word}` as never),
    title: (key) => t(`${labels}.$titles.${key}` as never),
    none: form("none"),
    choose: form("choose"),
    yes: form("yes"),
    no: form("no"),
    unsaid: form("unsaid"),
  };
}

export async function problemWords(): Promise<ProblemWords> {
  const [t, language] = await Promise.all([getTranslations("form"), languageAsked()]);
  return {
    language,
    notANumber: (typed) => t("notANumber", { typed }),
    between: (low, high) => t("between", { low, high }),
    needed: t("needed"),
    notAMoment: t("notAMoment"),
    unreachable: t("unreachable"),
    changed: t("changed"),
    seeFields: t("seeFields"),
  };
}

/** The words on every form. */
export async function frameWords() {
  const t = await getTranslations("form");
  return { optional: t("optional"), remove: t("remove"), busy: t("busy"), kept: t("kept") };
}
