import type { SourceRef, Working } from "../../core/working.ts";
import { scovilleQuantity } from "../../quantities/soil/scoville.ts";
import { tTwoSided } from "../../quantities/statistics/distributions.ts";
import type { Trial } from "../../states/trial.ts";
import { type Analysis, POWER } from "../../trials/analyse.ts";
import { SCOVILLE_FACTOR, unitOf } from "../../trials/sentence.ts";

const FISHER: SourceRef = { key: "fisher-1925", locator: "analysis of variance" };
const TUKEY: SourceRef = { key: "nist-handbook-tukey", locator: "confidence limits of all pairs" };

/** The arithmetic of one response. */
export function writeAnalysis(w: Working, trial: Trial, analysis: Analysis): void {
  const { values, table, residual, families, paired } = analysis;
  const { kind } = values.response;
  const unit = unitOf(kind) ?? "as measured";
  w.line(
    "n",
    `${kind}: plots in, of ${trial.plots.length}`,
    "those with a value",
    values.rows.length,
    "plots",
  );
  for (const { source: term, df, ss, f, p } of table) {
    const source = /^\d/.test(term) ? `factor ${term}` : term;
    w.line(
      "SS",
      `${kind}: ${source}, ${df} df`,
      values.leftOut.length > 0 ? "after all terms that do not hold it" : "of its means",
      ss,
      "squared",
      values.leftOut.length > 0 ? { key: "yates-1934" } : FISHER,
    );
    if (f === null) continue;
    w.line("F", `${kind}: ${source}`, "mean square / mean square of plots treated alike", f, "1", FISHER);
    w.line("p", `${kind}: ${source}, a larger F by chance`, `P(F > ${f})`, p, "1", FISHER);
  }
  w.line("s", `${kind}: spread of plots treated alike`, "sqrt(MS residual)", residual.sd, unit, FISHER);
  const t = tTwoSided(trial.alpha, residual.df);
  w.line(
    "t",
    `exceeded by chance in ${trial.alpha} of trials, ${residual.df} df`,
    "quantile",
    t,
    "1",
    FISHER,
  );
  for (const { means, pairs, detectable } of families) {
    const [pair] = pairs;
    if (pair) {
      w.line("LSD", `${kind}: ${means.length} means, first pair`, "t s d", pair.lsd, unit, {
        key: "fisher-1935",
      });
      const q = (pair.hsd / pair.lsd) * t * Math.SQRT2;
      w.line("q", `studentised range of ${means.length} means, ${residual.df} df`, "quantile", q, "1", TUKEY);
      w.line("HSD", `${kind}: Tukey's difference, first pair`, "q / sqrt(2) s d", pair.hsd, unit, {
        key: "kramer-1956",
      });
    }
    w.line(
      "D",
      `${kind}: difference of ${means.length} means found in ${POWER} of trials like this`,
      "P(F' > Fcrit) = power, lambda = (D / (s d))^2",
      detectable,
      unit,
      { key: "noncentral-f" },
    );
  }
  if (paired) {
    w.line(
      "d",
      `${kind}: second less first, mean of the pairs`,
      "mean of differences",
      paired.difference,
      unit,
      FISHER,
    );
    w.line("t", `${kind}: of the pairs, ${paired.df} df`, "d / (s_d / sqrt(n))", paired.t, "1", FISHER);
  }
  if (kind === "capsaicinoids-mg-per-kg") writeScoville(w, analysis);
}

/** The laboratory's sum is taken as capsaicin and dihydrocapsaicin, which share a factor. */
function writeScoville(w: Working, { families }: Analysis): void {
  w.estimate(
    "capsaicinoids",
    "taken as capsaicin and dihydrocapsaicin together; others, if the laboratory counted them in, are less hot",
    { key: "todd-1977" },
  );
  for (const { mean } of families.at(-1)?.means ?? []) {
    if (mean < 0) continue;
    const { working } = scovilleQuantity.compute({
      capsaicinMgPerKg: mean,
      dihydrocapsaicinMgPerKg: 0,
      nordihydrocapsaicinMgPerKg: 0,
      factor: SCOVILLE_FACTOR,
    });
    w.include({ working, estimated: [] });
  }
}
