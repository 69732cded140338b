import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { num } from "../../core/fields.ts";
import type { Term } from "./sequentialFit.ts";

export const ANOVA_DESIGNS = ["completely-randomised", "randomised-blocks", "factorial-blocks"] as const;
export type AnovaDesign = (typeof ANOVA_DESIGNS)[number];

const label = z.union([z.string().min(1).max(64), z.number()]).transform(String);

export const AnovaRowSchema = z.strictObject({
  block: label.optional(),
  treatment: label.optional(),
  factors: z.record(z.string().min(1).max(64), label).optional(),
  value: num("what was measured", "as given", -1e15, 1e15),
});
export type AnovaRow = z.output<typeof AnovaRowSchema>;

/** The groups whose means are compared, and the model's terms in their order. */
export interface Layout {
  terms: Term[];
  /** Per set of means: the label of each row. The last is the finest. */
  groupings: { name: string; labels: string[] }[];
}

/** More model columns than this is no trial layout, and would take minutes. */
const MODEL_COLUMNS_AT_MOST = 300;

/** Checks that every row has what the design reads and nothing else, and lays the model out. */
export function layOut(design: AnovaDesign, rows: readonly AnovaRow[]): Layout {
  const wantsBlock = design === "randomised-blocks" || (design === "factorial-blocks" && anyBlock(rows));
  const byFactors =
    design === "factorial-blocks" || (design === "completely-randomised" && !rows[0]?.treatment);
  rows.forEach((row, i) => {
    expectField(i, "block", row.block, wantsBlock, design);
    expectField(i, "treatment", row.treatment, !byFactors, design);
    expectField(i, "factors", row.factors, byFactors, design);
  });
  const blocks = rows.map((row) => row.block ?? "");
  const blockTerm: Term[] = wantsBlock ? [{ source: "block", factors: [blocks] }] : [];
  if (wantsBlock) atLeastTwo("block", blocks);
  if (!byFactors) {
    const treatments = rows.map((row) => row.treatment ?? "");
    atLeastTwo("treatment", treatments);
    const terms = [...blockTerm, { source: "treatment", factors: [treatments] }];
    withinReach(terms);
    return { terms, groupings: [{ name: "treatment", labels: treatments }] };
  }
  return layOutFactors(rows, blockTerm);
}

function layOutFactors(rows: readonly AnovaRow[], blockTerm: Term[]): Layout {
  const names = Object.keys(rows[0]?.factors ?? {});
  if (names.length === 0 || names.length > 5)
    refuse("rows.0.factors", "must name 1 to 5 factors", "1 to 5 factors");
  const columns = new Map(
    names.map((name) => [
      name,
      rows.map((row, i) => {
        const found = row.factors?.[name];
        if (found === undefined)
          refuse(`rows.${i}.factors.${name}`, "is missing", "the level of each factor");
        return found;
      }),
    ]),
  );
  rows.forEach((row, i) => {
    const extra = Object.keys(row.factors ?? {}).find((name) => !columns.has(name));
    if (extra) refuse(`rows.${i}.factors.${extra}`, "is not a factor of the first row", names.join(", "));
  });
  for (const [name, labels] of columns) atLeastTwo(`factors.${name}`, labels);
  const column = (name: string) => columns.get(name) ?? [];
  const terms = [
    ...blockTerm,
    ...subsets(names).map((subset) => ({ source: subset.join(":"), factors: subset.map(column) })),
  ];
  withinReach(terms);
  const cell = rows.map((_, i) => names.map((name) => `${name}=${column(name)[i]}`).join(", "));
  const mains = names.map((name) => ({ name, labels: column(name).map((level) => `${name}=${level}`) }));
  return { terms, groupings: names.length > 1 ? [...mains, { name: names.join(":"), labels: cell }] : mains };
}

/** Main effects first, then interactions of two, of three and so on. */
export function subsets(names: readonly string[]): string[][] {
  const all: string[][] = [[]];
  for (const name of names) {
    for (const set of [...all]) all.push([...set, name]);
  }
  const place = (set: string[]) => set.map((name) => names.indexOf(name));
  return all
    .filter((set) => set.length > 0)
    .sort((a, b) => a.length - b.length || (place(a).join() < place(b).join() ? -1 : 1));
}

const anyBlock = (rows: readonly AnovaRow[]) => rows.some((row) => row.block !== undefined);

function expectField(i: number, name: string, value: unknown, wanted: boolean, design: string): void {
  if (wanted && value === undefined) refuse(`rows.${i}.${name}`, `is needed in a ${design} design`, name);
  if (!wanted && value !== undefined)
    refuse(`rows.${i}.${name}`, "is not read by this design", "left out", value);
}

function atLeastTwo(name: string, labels: readonly string[]): void {
  const levels = new Set(labels).size;
  if (levels < 2) refuse("rows", `hold one ${name} only`, `at least 2 levels of ${name}`, levels);
}

function withinReach(terms: readonly Term[]): void {
  const levels = (labels: readonly (string | null)[]) => new Set(labels).size - 1;
  const columns = terms.reduce((sum, term) => sum + term.factors.map(levels).reduce((a, b) => a * b, 1), 0);
  if (columns > MODEL_COLUMNS_AT_MOST) {
    refuse(
      "rows",
      "have too many levels to be a trial",
      `at most ${MODEL_COLUMNS_AT_MOST} model terms`,
      columns,
    );
  }
}
