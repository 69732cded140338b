import { clockAt, type UnitSystem } from "@pith/rules";
import { inField, unitLabel, unitOf } from "../../format/units.ts";
import type { FieldView, Plan, SectionView } from "./plan.ts";
import { type FieldFacts, factsOf } from "./schema.ts";

/** The words a form needs from the catalogue. */
export interface FormWords {
  label: (path: string) => string;
  hint: (path: string) => string | null;
  word: (path: string, word: string) => string;
  title: (key: string) => string;
  none: string;
  /** Where nothing is chosen yet and something must be. */
  choose: string;
  /** Answers to a yes-or-no question that may be left open. */
  yes: string;
  no: string;
  unsaid: string;
}

type Values = Record<string, unknown>;

/** A form ready to be shown: labels, units, ranges and the values as text in the reader's units. */
export function viewOf(
  plan: Plan,
  schema: Parameters<typeof factsOf>[0],
  values: Values,
  units: UnitSystem,
  words: FormWords,
): SectionView[] {
  const facts = factsOf(schema);
  const unit = unitFinder(plan, values);
  const field = (path: string, fresh = false): FieldView => {
    const general = path.replace(/\.\d+\./, ".");
    const fact = facts(path);
    const value = fresh ? undefined : at(values, path);
    return {
      name: path,
      label: words.label(general),
      hint: words.hint(general),
      kind: plan.choices?.[general] ? "choice" : kindOf(fact, plan.long?.includes(path) ?? false),
      unit: unit(path) ? unitLabel(unit(path) as never, units) : null,
      required: isRequired(path, fact, facts),
      value:
        fact.kind === "moment" && typeof value === "string"
          ? clockAt(value, plan.zone ?? "UTC")
          : asText(value, fact, unit(path), units),
      choices: choicesOf(general, fact, plan, words, units),
      ...(plan.startNow?.includes(path) && { startsNowIn: plan.zone ?? "UTC" }),
    };
  };
  return plan.sections.map((section) => ({
    title: section.title ? words.title(section.title) : null,
    fields: (section.fields ?? []).map((path) => field(path)),
    each: section.each
      ? {
          path: section.each.path,
          add: words.title(section.each.add),
          template: section.each.fields.map((f) => field(`${section.each?.path}.0.${f}`, true)),
          rows: listAt(values, section.each.path).map((_, row) =>
            (section.each?.fields ?? []).map((f) => field(`${section.each?.path}.${row}.${f}`)),
          ),
        }
      : null,
  }));
}

export const unitFinder = (plan: Plan, values: Values) => (path: string) =>
  plan.unitOf?.(path, (p) => String(at(values, p) ?? "")) ?? unitOf(path);

/** A value as the form shows it. */
export function asText(
  value: unknown,
  fact: FieldFacts,
  unit: ReturnType<typeof unitOf>,
  units: UnitSystem,
): string {
  if (value === undefined || value === null) return "";
  if (typeof value === "boolean") return value ? "yes" : fact.nullable ? "no" : "";
  if (fact.kind === "number" && typeof value === "number") return inField(value, unit, units);
  return String(value);
}

const kindOf = (fact: FieldFacts, long: boolean): FieldView["kind"] => {
  if (long) return "long";
  // A box that is not ticked says no; what may be left unsaid is a choice of three.
  if (fact.kind === "word" || fact.kind === "id" || (fact.kind === "flag" && fact.nullable)) return "choice";
  return fact.kind;
};

/** A field inside a part that may be left out may itself be left empty. */
function isRequired(path: string, fact: FieldFacts, facts: (path: string) => FieldFacts): boolean {
  if (fact.nullable || fact.optional || fact.kind === "flag") return false;
  const parts = path.split(".");
  return parts.length === 1 || /\.\d+\./.test(path) || !facts(parts[0] as string).nullable;
}

function choicesOf(path: string, fact: FieldFacts, plan: Plan, words: FormWords, units: UnitSystem) {
  if (fact.kind === "flag" && fact.nullable) {
    return [
      { value: "", label: words.unsaid },
      { value: "yes", label: words.yes },
      { value: "no", label: words.no },
    ];
  }
  const unitOfWord = (word: string) => {
    const unit = plan.unitsByWord?.[path]?.[word];
    return unit ? `, ${unitLabel(unit, units)}` : "";
  };
  const choices =
    plan.choices?.[path] ??
    fact.words.map((word) => ({ value: word, label: words.word(path, word) + unitOfWord(word) }));
  if (plan.unchosen?.includes(path)) return [{ value: "", label: words.choose }, ...choices];
  const mayBeNone = fact.nullable || fact.optional;
  return mayBeNone && choices.length ? [{ value: "", label: words.none }, ...choices] : choices;
}

export function at(values: unknown, path: string): unknown {
  let here = values;
  for (const part of path.split(".")) {
    if (here === null || typeof here !== "object") return undefined;
    here = (here as Record<string, unknown>)[part];
  }
  return here;
}

const listAt = (values: Values, path: string): unknown[] => {
  const list = at(values, path);
  return Array.isArray(list) ? list : [];
};
