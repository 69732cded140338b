import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { num, word } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import { ANOVA_DESIGNS, type AnovaDesign, type AnovaRow, AnovaRowSchema, layOut } from "./anovaRows.ts";
import { fUpperTail, tTwoSided } from "./distributions.ts";
import { type Fit, sequentialFit } from "./sequentialFit.ts";
import { stableMean } from "./sums.ts";

export interface AnovaLine {
  source: string;
  df: number;
  ss: number;
  /** Null in the total. */
  ms: number | null;
  /** Null in the residual and the total, and where the residual is exactly nothing. */
  f: number | null;
  p: number | null;
}

export interface Anova {
  /** Terms in their order (blocks first), then `residual` and `total`. */
  table: AnovaLine[];
  /** By label; for factors `N=0`, and for their combinations `N=0, P=1`. */
  means: Record<string, number>;
  /** Least significant difference of two treatment means, or of two combinations; null where replication is unequal. */
  lsd: number | null;
  /** The same for each factor's own means. */
  lsdByFactor: Record<string, number | null>;
  residualSd: number;
  r2: number;
  /** Terms that cannot be told from earlier ones. */
  aliased: string[];
}

export interface AnovaInput {
  design: AnovaDesign;
  rows: readonly AnovaRow[];
  /** Two-sided level of the least significant difference; left out: 0.05. */
  alpha?: number;
}

/**
 * Analysis of variance of a trial, sums of squares in the order of the terms.
 *
 *   F = MS / MS residual, LSD = t(alpha, df residual) sqrt(2 MS residual / r)
 *
 * Source: Fisher 1925; checked against the NIST certified sets. The LSD protects one planned comparison, not all.
 *
 * @throws DomainError naming the row or the field where the layout does not fit the design
 */
export function anova({ design, rows, alpha = 0.05 }: AnovaInput): Anova {
  const { terms, groupings } = layOut(design, rows);
  const values = rows.map((row) => row.value);
  const fit = sequentialFit(values, terms);
  const { df: dfE, ss: ssE } = fit.residual;
  if (dfE < 1)
    refuse("rows", "leave nothing to judge chance by", "more rows than the model has terms", rows.length);
  if (!(fit.total.ss > 0)) refuse("rows", "all hold the same value", "values that differ");
  const msE = ssE / dfE;
  const table = anovaTable(fit);

  const t = tTwoSided(alpha, dfE);
  const groups = groupings.map(({ name, labels }) => ({ name, members: membersOf(labels, values) }));
  const lsdOf = (members: Map<string, number[]>) => {
    const sizes = new Set([...members.values()].map((group) => group.length));
    const [r] = sizes;
    return sizes.size === 1 && r !== undefined ? t * Math.sqrt((2 * msE) / r) : null;
  };
  const finest = groups.at(-1);
  return {
    table,
    means: Object.fromEntries(
      groups.flatMap(({ members }) => [...members].map(([label, group]) => [label, stableMean(group)])),
    ),
    lsd: finest ? lsdOf(finest.members) : null,
    lsdByFactor: Object.fromEntries(groups.map(({ name, members }) => [name, lsdOf(members)])),
    residualSd: Math.sqrt(msE),
    r2: 1 - ssE / fit.total.ss,
    aliased: fit.aliased,
  };
}

/** The lines of a fitted model, with their F against the residual. */
export function anovaTable({
  terms,
  residual,
  total,
}: Pick<Fit, "terms" | "residual" | "total">): AnovaLine[] {
  const ms = residual.ss / residual.df;
  const line = (source: string, df: number, ss: number): AnovaLine => {
    const f = ms > 0 ? ss / df / ms : null;
    return { source, df, ss, ms: ss / df, f, p: f === null ? null : fUpperTail(f, df, residual.df) };
  };
  return [
    ...terms.map(({ source, df, ss }) => line(source, df, ss)),
    { source: "residual", ...residual, ms, f: null, p: null },
    { source: "total", ...total, ms: null, f: null, p: null },
  ];
}

function membersOf(labels: readonly string[], values: readonly number[]): Map<string, number[]> {
  const members = new Map<string, number[]>();
  labels.forEach((label, i) => {
    const group = members.get(label) ?? [];
    group.push(values[i] ?? Number.NaN);
    members.set(label, group);
  });
  return members;
}

const SOURCE = { key: "fisher-1925", locator: "analysis of variance" };

export const anovaQuantity = defineQuantity({
  id: "anova",
  question: "Do the treatments differ by more than chance?",
  schema: z.strictObject({
    design: word("how the plots were laid out", ANOVA_DESIGNS),
    rows: z.array(AnovaRowSchema).min(3).max(20_000).meta({ meaning: "one row a plot", unit: "rows" }),
    alpha: num("two-sided level of the least significant difference", "fraction", 0.0001, 0.5).optional(),
  }),
  outputs: {
    table: { meaning: "source, df, ss, ms, f, p; residual and total last", unit: "table" },
    means: { meaning: "mean of each treatment, level or combination", unit: "as given" },
    lsd: {
      meaning: "least significant difference of two treatment (or combination) means",
      unit: "as given",
    },
    lsdByFactor: { meaning: "least significant difference of two means of a factor", unit: "as given" },
    residualSd: { meaning: "residual standard deviation", unit: "as given" },
    r2: { meaning: "share of the total sum of squares that the model holds", unit: "1" },
    aliased: { meaning: "terms that cannot be told from earlier ones", unit: "list" },
  },
  sources: [SOURCE, { key: "nist-strd-anova" }],
  compute(input, w) {
    const result = anova(input);
    if (input.alpha === undefined) w.estimate("alpha", "0.05, two-sided (common practice)");
    const residual = result.table.find((line) => line.source === "residual");
    for (const line of result.table) {
      w.line("SS", `${line.source}, ${line.df} df`, "after the terms before it", line.ss, "squared", SOURCE);
      if (line.f !== null) {
        w.line("F", line.source, `F = ${line.ms} / ${residual?.ms}`, line.f, "1", SOURCE);
        w.line("p", `${line.source}: a larger F by chance`, `P(F > ${line.f})`, line.p, "1", SOURCE);
      }
    }
    w.line(
      "s",
      "residual standard deviation",
      "s = sqrt(MS residual)",
      result.residualSd,
      "as given",
      SOURCE,
    );
    w.line("LSD", "least significant difference", "LSD = t s sqrt(2 / r)", result.lsd, "as given", SOURCE);
    for (const term of result.aliased) {
      w.line("aliased", term, "cannot be told from earlier terms in this layout", null, "", SOURCE);
    }
    return result;
  },
});
