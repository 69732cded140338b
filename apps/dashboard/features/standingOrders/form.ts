import type { StandingOrderTerms } from "@pith/contract";
import { decisionsOf, decisionWords, GRADES } from "@pith/rules";
import { getTranslations } from "next-intl/server";
import { readerLanguage } from "../../format/language.ts";
import type { FieldView, SectionView } from "../forms/plan.ts";

/** What an order's form asks, and what was typed into it read back. */

/** What a rule can decide: as its words are filed, and what it decided on this office's farms. */
export const codesOf = (ruleId: string, seen: readonly (string | null)[]): string[] => [
  ...new Set([...decisionsOf(ruleId), ...seen.filter((code) => code !== null)]),
];

/** A decision in the rule's own few words. */
export const codeWords = (ruleId: string, code: string) =>
  decisionWords(ruleId, code, { language: readerLanguage(), units: "metric" });

/** An amount in words; one without any, like that of a single material, by the name it has in the working. */
export async function amountNames(): Promise<(name: string) => string> {
  const t = await getTranslations("standingOrders");
  return (name) => {
    const key = `amounts.${name}` as "amounts.litres";
    return !name.includes(".") && t.has(key)
      ? t(key)
      : name.replaceAll(/([A-Z])/g, (letter) => ` ${letter.toLowerCase()}`);
  };
}

export async function sectionsOf(
  { ruleId, codes, amounts }: { ruleId: string; codes: string[]; amounts: string[] },
  terms: StandingOrderTerms | null,
): Promise<SectionView[]> {
  const [t, advice, amountName] = await Promise.all([
    getTranslations("standingOrders"),
    getTranslations("advice"),
    amountNames(),
  ]);
  const field = (name: string, label: string, over: Partial<FieldView>): FieldView => ({
    name,
    label,
    kind: "text",
    unit: null,
    hint: null,
    required: false,
    value: "",
    choices: [],
    ...over,
  });
  const number = (
    name: string,
    label: string,
    value: number | null | undefined,
    over: Partial<FieldView> = {},
  ) =>
    field(name, label, {
      kind: "number",
      value: value === null || value === undefined ? "" : String(value),
      ...over,
    });
  const [bound] = Object.entries(terms?.mostAmounts ?? {});
  const section = (title: string, fields: FieldView[]): SectionView => ({ title, fields, each: null });
  return [
    section(
      t("decisions"),
      codes.map((code) =>
        field(`code.${code}`, codeWords(ruleId, code), {
          kind: "flag",
          value: terms?.decisionCodes.includes(code) ? "yes" : "",
        }),
      ),
    ),
    section(t("limits"), [
      number("mostPerWeek", t("mostPerWeek"), terms?.mostPerWeek ?? 7, { required: true }),
      field("leastGrade", t("leastGrade"), {
        kind: "choice",
        value: terms?.leastGrade ?? "",
        choices: [
          { value: "", label: t("anyGrade") },
          ...GRADES.map((grade) => ({ value: grade, label: advice(`grades.${grade}`) })),
        ],
      }),
      field("measuredOnly", t("measuredOnly"), { kind: "flag", value: terms?.measuredOnly ? "yes" : "" }),
      number("hoursFrom", t("hoursFrom"), terms?.hours?.from, { hint: t("hoursHint") }),
      number("hoursTo", t("hoursTo"), terms?.hours?.to),
      ...(amounts.length === 0
        ? []
        : [
            field("amountName", t("amountName"), {
              kind: "choice",
              value: bound?.[0] ?? "",
              choices: [
                { value: "", label: t("noAmount") },
                ...amounts.map((name) => ({ value: name, label: amountName(name) })),
              ],
            }),
            number("amountMost", t("amountMost"), bound?.[1]),
          ]),
      field("endsOn", t("endsOn"), {
        kind: "date",
        required: true,
        value: terms?.endsOn ?? "",
        hint: t("endsHint"),
      }),
    ]),
  ];
}

/** Terms as they were typed; the API judges them. */
export function termsFrom(typed: Record<string, string>): unknown {
  const number = (name: string) => (typed[name] ? Number(typed[name]) : null);
  const [from, to] = [number("hoursFrom"), number("hoursTo")];
  const most = number("amountMost");
  return {
    decisionCodes: Object.keys(typed).flatMap((name) => (name.startsWith("code.") ? [name.slice(5)] : [])),
    mostPerWeek: number("mostPerWeek"),
    leastGrade: typed.leastGrade || null,
    measuredOnly: typed.measuredOnly === "yes",
    hours: from === null && to === null ? null : { from, to },
    mostAmounts: typed.amountName && most !== null ? { [typed.amountName]: most } : {},
    endsOn: typed.endsOn,
  };
}

/** The field of the form that a field of the request was typed into. */
export const fieldOf = (path: string): string =>
  ({
    "terms.decisionCodes": "mostPerWeek",
    "terms.hours": "hoursFrom",
    "terms.hours.from": "hoursFrom",
    "terms.hours.to": "hoursTo",
  })[path] ?? path.replace(/^terms\.(mostAmounts\..*)?/, (_, amount) => (amount ? "amountMost" : ""));
