import type { FieldProblem, Problem } from "@pith/contract";
import { instantOfClock, type Language, type UnitSystem } from "@pith/rules";
import { inText, toSi, unitOf } from "../../format/units.ts";
import type { FormState, Plan } from "./plan.ts";
import { factsOf } from "./schema.ts";
import { asText, at, unitFinder } from "./view.ts";

/** What the messages beside a field need from the catalogue. */
export interface ProblemWords {
  language: Language;
  notANumber: (typed: string) => string;
  between: (low: string, high: string) => string;
  needed: string;
  notAMoment: string;
  unreachable: string;
  changed: string;
  seeFields: string;
}

/** What a field for a day and a time sends. */
const CLOCK = /^\d{4}-\d\d-\d\dT([01]\d|2[0-3]):[0-5]\d(:\d\d)?$/;

/** A form that was sent in, in the shape of the request, SI inside. */
export interface ReadForm {
  json: Record<string, unknown>;
  typed: Record<string, string>;
  /** What could not be read at all; the rest is for the API to judge. */
  problems: Record<string, string>;
}

/** Reads a form by its plan. A number nobody touched keeps the full precision it is stored with. */
export function readForm(
  plan: Plan,
  schema: Parameters<typeof factsOf>[0],
  data: FormData,
  units: UnitSystem,
  words: ProblemWords,
  stored: Record<string, unknown> = {},
): ReadForm {
  const facts = factsOf(schema);
  const typed = typedIn(data, plan);
  const raw = (path: string) => (typed[path] ?? "").trim();
  const unit = (path: string) => plan.unitOf?.(path, raw) ?? unitOf(path);
  const storedUnit = unitFinder(plan, stored);
  const json: Record<string, unknown> = {};
  const problems: Record<string, string> = {};

  const fieldValue = (path: string): unknown => {
    const fact = facts(path);
    const text = raw(path);
    if (fact.kind === "flag" && !(fact.nullable && text === "")) return text === "yes";
    if (text === "") return null;
    if (fact.kind === "moment") {
      if (CLOCK.test(text)) return instantOfClock(text, plan.zone ?? "UTC");
      problems[path] = words.notAMoment;
      return null;
    }
    if (fact.kind !== "number") return text;
    const before = at(stored, path);
    if (typeof before === "number" && text === asText(before, fact, storedUnit(path), units)) return before;
    const number = Number(text);
    if (!Number.isFinite(number)) {
      problems[path] = words.notANumber(text);
      return null;
    }
    return toSi(number, unit(path), units);
  };

  for (const section of plan.sections) {
    for (const path of section.fields ?? []) {
      const value = fieldValue(path);
      const fact = facts(path);
      // Nothing typed: null where the wire knows null, else left out.
      if (value === null && !fact.nullable) continue;
      put(json, path, value);
    }
    if (!section.each) continue;
    const { path, fields } = section.each;
    put(json, path, []);
    for (const row of rowsIn(typed, path)) {
      const entries = fields.map((f) => [f, fieldValue(`${path}.${row}.${f}`)] as const);
      (at(json, path) as unknown[]).push(Object.fromEntries(entries));
    }
  }
  settleParts(json, plan, facts);
  return { json, typed, problems };
}

/** What was typed, by field; the rows of a list are numbered without gaps, as the request will number them. */
function typedIn(data: FormData, plan: Plan): Record<string, string> {
  const sent: Record<string, string> = {};
  for (const [name, value] of data) {
    if (typeof value === "string" && !name.startsWith("$")) sent[name] = value;
  }
  for (const { each } of plan.sections) {
    if (!each) continue;
    rowsIn(sent, each.path).forEach((row, index) => {
      if (row === index) return;
      for (const field of each.fields) {
        const from = `${each.path}.${row}.${field}`;
        const value = sent[from];
        if (value === undefined) continue;
        sent[`${each.path}.${index}.${field}`] = value;
        delete sent[from];
      }
    });
  }
  return sent;
}

/** Rows of a list that were sent, in order. */
const rowsIn = (typed: Record<string, string>, path: string): number[] => {
  const rows = Object.keys(typed)
    .filter((name) => name.startsWith(`${path}.`))
    .map((name) => Number(name.slice(path.length + 1).split(".")[0]));
  return [...new Set(rows)].sort((a, b) => a - b);
};

function put(json: Record<string, unknown>, path: string, value: unknown): void {
  const parts = path.split(".");
  const last = parts.pop() as string;
  let here = json;
  for (const part of parts) {
    here[part] ??= {};
    here = here[part] as Record<string, unknown>;
  }
  here[last] = value;
}

/**
 * A part of which nothing but a preset word or an unticked box was filled in is left out where the wire knows null, else
 * empty. Innermost parts first: a part with an empty part in it may be empty itself.
 */
function settleParts(json: Record<string, unknown>, plan: Plan, facts: ReturnType<typeof factsOf>): void {
  const paths = plan.sections.flatMap((section) => section.fields ?? []).filter((path) => path.includes("."));
  for (const part of partsOf(paths)) {
    const filled = paths.some(
      (path) =>
        path.startsWith(`${part}.`) &&
        facts(path).kind !== "word" &&
        ![null, undefined, false].includes(at(json, path) as null),
    );
    if (facts(part).nullable) {
      if (!filled) put(json, part, null);
    } else if (at(json, part) === undefined) put(json, part, {});
  }
}

/** Every part that paths go through, the innermost first. */
function partsOf(paths: string[]): string[] {
  const parts = paths.flatMap((path) => {
    const steps = path.split(".").slice(0, -1);
    return steps.map((_, i) => steps.slice(0, i + 1).join("."));
  });
  return [...new Set(parts)].sort((a, b) => b.split(".").length - a.split(".").length);
}

/** A problem document as what stands beside the fields, in the reader's units. */
export function problemState(
  before: FormState,
  read: ReadForm,
  problem: Problem | null,
  plan: Plan,
  schema: Parameters<typeof factsOf>[0],
  units: UnitSystem,
  words: ProblemWords,
): FormState {
  const facts = factsOf(schema);
  const raw = (path: string) => (read.typed[path] ?? "").trim();
  const problems = { ...read.problems };
  const loose: string[] = [];
  for (const fault of problem?.errors ?? []) {
    const name = nameOf(fault, read.typed);
    if (name === null) loose.push(fault.field ? `${fault.field}: ${fault.message}` : fault.message);
    else problems[name] ??= sentence(fault, name);
  }
  const plain =
    problem?.title === "unreachable"
      ? words.unreachable
      : problem?.status === 412
        ? words.changed
        : (problem?.detail ?? problem?.title);
  const message =
    loose.length > 0
      ? loose.join(" ")
      : Object.keys(problems).length > 0
        ? words.seeFields
        : (plain ?? words.unreachable);
  return {
    attempt: before.attempt + 1,
    message,
    problems,
    typed: read.typed,
    ...(problem && { status: problem.status, type: problem.type }),
  };

  function sentence(fault: FieldProblem, name: string): string {
    const fact = facts(name);
    // Of what may stay empty the service says when it may not.
    if (raw(name) === "" && !fact.nullable && !fact.optional) return words.needed;
    const unit = plan.unitOf?.(name, raw) ?? unitOf(name);
    const outside = OUTSIDE.test(fault.message);
    // The service may know closer bounds than the schema.
    const [min, max] = SPAN.exec(fault.accepted ?? "")
      ?.slice(1)
      .map(Number) ?? [fact.min, fact.max];
    if (fact.kind === "number" && outside && min !== undefined && max !== undefined) {
      const show = (v: number) => (unit ? inText(v, unit, units, words.language) : String(v));
      return words.between(show(min), show(max));
    }
    return fault.message;
  }
}

/** How the API says, in either language, that a number is outside its bounds: said again here in the reader's units. */
const OUTSIDE =
  /^(must be )?(at least|at most|more than|less than) |^debe ser (al menos|más de|menos de) |^debe ser \S+ o menos$/;

const SPAN = /^(-?[\d.]+) to (-?[\d.]+)$/;

/** The form's field that a problem is about: itself, or the first field of the part it names. */
function nameOf(fault: FieldProblem, typed: Record<string, string>): string | null {
  const field = fault.field.replace(/^(body|json)\./, "");
  if (field in typed) return field;
  const inside = Object.keys(typed).find((name) => name.startsWith(`${field}.`));
  return field && inside ? inside : null;
}
