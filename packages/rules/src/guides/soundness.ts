import type { z } from "zod";
import type { Guide, GuideReading } from "./shape.ts";

type Report = (path: (string | number)[], message: string, accepted: string) => void;

/** What makes a table unsound, each at the number that would have to change. */
export function soundness(guide: Guide, context: z.RefinementCtx): void {
  const report: Report = (path, message, accepted) =>
    context.addIssue({ code: "custom", path, message, params: { accepted } });
  const nutrients = Object.entries(guide.nutrients);
  if (nutrients.length === 0) report(["nutrients"], "has no nutrient to read", "at least one");
  for (const [nutrient, reading] of nutrients) {
    if (reading) readingIsSound(reading, ["nutrients", nutrient], report);
  }
  if (guide.status === "office") officeSaysItsSource(guide, report);
  recommendationsAreSound(guide, report);
}

function officeSaysItsSource(guide: Guide, report: Report): void {
  if (guide.source.key !== "office-guide") {
    report(["source", "key"], "must be office-guide for a guide of an office's own", "office-guide");
  }
  if (guide.source.locator === undefined) {
    report(["source", "locator"], "is missing: where the table comes from", "author, title, year, page");
  }
}

function readingIsSound(reading: GuideReading, at: string[], report: Report): void {
  const { decimals, classes, boundByCec } = reading;
  const scale = 10 ** decimals;
  /** Printed steps, so that a tenth is compared as a whole number. */
  const steps = (value: number) => Math.round(value * scale);
  const shown = (step: number) => (step / scale).toFixed(decimals);
  const names = new Set<string>();
  for (const [i, { class: name, low, high }] of classes.entries()) {
    const path = [...at, "classes", i];
    if (names.has(name)) report([...path, "class"], `names ${name} twice`, "each class once");
    names.add(name);
    for (const [end, value] of Object.entries({ low, high })) {
      if (value !== null && Math.abs(value * scale - steps(value)) > 1e-6) {
        report([...path, end], `is finer than ${decimals} decimals`, shown(steps(value)));
      }
    }
    const before = classes[i - 1];
    const from = before === undefined ? 0 : before.high === null ? undefined : steps(before.high) + 1;
    if (from !== undefined && steps(low) !== from) {
      const wrong =
        before === undefined ? "must be where the lowest class begins" : gapOrOverlap(steps(low), from);
      report([...path, "low"], wrong, shown(from));
    }
    const isTop = i === classes.length - 1;
    if (isTop && high !== null) report([...path, "high"], "must be open in the topmost class", "null");
    if (!isTop && high === null) report([...path, "high"], "is open below another class", "a number");
    if (high !== null && high < low)
      report([...path, "high"], "is below the low end of its class", `at least ${low}`);
  }
  if (boundByCec) movingBoundIsSound(boundByCec, classes.length, at, report);
}

const gapOrOverlap = (low: number, from: number) =>
  low > from ? "leaves a gap above the class below it" : "overlaps the class below it";

function movingBoundIsSound(
  rows: NonNullable<GuideReading["boundByCec"]>,
  classes: number,
  at: string[],
  report: Report,
): void {
  if (classes !== 2)
    report([...at, "classes"], "must be two where the bound moves with exchange capacity", "2 classes");
  for (const [i, row] of rows.entries()) {
    const before = rows[i - 1];
    if (before && row.cecCmolPerKg <= before.cecCmolPerKg) {
      const message = "must rise from row to row";
      report([...at, "boundByCec", i, "cecCmolPerKg"], message, `more than ${before.cecCmolPerKg}`);
    }
  }
}

function recommendationsAreSound({ nutrients, recommendations }: Guide, report: Report): void {
  if (!recommendations) return;
  const at = "recommendations";
  const { targetPh, nitrogen, nitrogenSidedress, grid, magnesium, gypsum } = recommendations;
  const ordered = (range: { low: number; high: number } | undefined, path: (string | number)[]) => {
    if (range && range.high < range.low) report([...path, "high"], "is below low", `at least ${range.low}`);
  };
  ordered(targetPh, [at, "targetPh"]);
  ordered(nitrogen, [at, "nitrogen"]);
  ordered(nitrogenSidedress, [at, "nitrogenSidedress"]);
  ordered(magnesium?.withoutLime, [at, "magnesium", "withoutLime"]);
  ordered(gypsum?.rate, [at, "gypsum", "rate"]);
  const classesOf = (nutrient: keyof typeof nutrients) =>
    nutrients[nutrient]?.classes.map((c) => c.class) ?? [];
  if (magnesium && !classesOf("Mg").includes(magnesium.class)) {
    report([at, "magnesium", "class"], "is not a class of Mg in this guide", listed(classesOf("Mg")));
  }
  for (const [i, row] of (grid ?? []).entries()) {
    const path = [at, "grid", i];
    const known = classesOf(row.nutrient);
    if (known.length === 0) {
      report([...path, "nutrient"], "is not read by this guide", listed(Object.keys(nutrients)));
      continue;
    }
    const element = row.form.startsWith("P2O5") ? "P" : row.form.startsWith("K2O") ? "K" : row.form;
    if (element !== row.nutrient)
      report([...path, "form"], `does not hold ${row.nutrient}`, "a form of the nutrient");
    const seen = new Set<string>();
    for (const [j, entry] of row.rates.entries()) {
      ordered(entry, [...path, "rates", j]);
      if (!known.includes(entry.class)) {
        report(
          [...path, "rates", j, "class"],
          `is not a class of ${row.nutrient} in this guide`,
          listed(known),
        );
      }
      if (seen.has(entry.class))
        report([...path, "rates", j, "class"], `rates ${entry.class} twice`, "each class once");
      seen.add(entry.class);
    }
  }
}

const listed = (names: readonly string[]) => names.join(", ");
