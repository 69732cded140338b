import { getMessages, getTranslations } from "next-intl/server";
import type { GuideFormWords } from "./fields.ts";

/** The words of the form of a guide. */
export async function guideFormWords(): Promise<GuideFormWords> {
  const [t, guides, form, messages] = await Promise.all([
    getTranslations("guides.form"),
    getTranslations("guides"),
    getTranslations("form"),
    getMessages(),
  ]);
  const { label, hint } = messages.guides.form;
  return {
    label,
    hint,
    title: {
      about: t("about"),
      recommendations: t("recommendations"),
      nutrient: t("nutrient", { number: "$number" }),
      class: t("class", { number: "$number" }),
    },
    addNutrient: t("addNutrient"),
    addClass: t("addClass"),
    removeNutrient: t("removeNutrient"),
    removeClass: t("removeClass"),
    notANumber: form("notANumber", { typed: "$typed" }),
    needed: form("needed"),
    twice: t("twice"),
    seeFields: form("seeFields"),
    unreachable: form("unreachable"),
    optional: form("optional"),
    save: guides("save"),
    busy: guides("busy"),
    cancel: guides("cancel"),
  };
}
