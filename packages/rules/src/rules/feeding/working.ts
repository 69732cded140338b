import { Working } from "../../core/working.ts";
import { dayShares, RATIO, ratioOn } from "../../food/curve.ts";
import { type FeedingPlan, N_CEILING_KG_PER_HA } from "../../food/plan.ts";
import type { PlantingState } from "../../states/states.ts";
import { UPTAKE_PER_TONNE, uptakePerTonne } from "../../tables/uptake.ts";
import { croppedAreaM2 } from "../../water/ground.ts";
import type { MaterialPlan } from "./material.ts";

const CP = { key: "common-practice" };

/** From the yield goal to the bag, line by line. */
export function writeWorking(
  state: PlantingState,
  goal: number,
  plan: FeedingPlan,
  m: MaterialPlan | undefined,
): Working {
  const w = new Working();
  const perTonne = uptakePerTonne("whole-crop");
  const rows = UPTAKE_PER_TONNE.filter((row) => row.part === "whole-crop" && row.status === "seen");
  const [first] = perTonne.sources;
  w.line("Y", "yield goal", "given", goal, "t/ha");
  for (const { nKgPerT, source } of rows) {
    w.line(
      "uN",
      "nitrogen taken up per tonne",
      "as published",
      `${nKgPerT.low} to ${nKgPerT.high}`,
      "kg/t",
      source,
    );
  }
  w.line("need", "nitrogen the crop takes up, low", "uN(low) Y", plan.need.low, "kg/ha", first ?? null);
  w.line("need", "nitrogen the crop takes up, high", "uN(high) Y", plan.need.high, "kg/ha", first ?? null);
  for (const c of plan.credits) {
    w.line(
      "credit",
      c.kind,
      c.how === "given" ? "as the agent judged it" : "computed",
      c.low === c.high ? c.low : `${c.low} to ${c.high}`,
      "kg/ha",
      c.source,
    );
  }
  w.line("ceiling", "above this no more yield was found", "195 lb/A", N_CEILING_KG_PER_HA, "kg/ha", {
    key: "california-n-plateau-2011",
    locator: "SN-228",
  });
  w.line(
    "T",
    "nitrogen to supply over the season",
    "min(ceiling, middle of need - middle of credits)",
    plan.seasonN,
    "kg/ha",
  );
  w.line("A", "nitrogen given so far", "Σ kg × N % / cropped land", plan.givenN, "kg/ha");
  w.line(
    "pool",
    "of that not yet taken up",
    "what was given less uptake by day, not below 0",
    plan.poolN,
    "kg/ha",
  );
  const shares = dayShares(plan.dates);
  const share = shares.filter((d) => d.day >= plan.from).reduce((sum, d) => sum + d.n, 0);
  w.line(
    "f",
    "share of the season's uptake still to come",
    "shape < 1, 4 to 5, < 3 lb/A a day by stage",
    share,
    "fraction",
    { key: "uc-pepper-fertility", locator: "daily nitrogen uptake" },
  );
  w.line("left", "nitrogen left to give", "T f - pool, by weeks", plan.leftN, "kg/ha");
  w.line(
    "week",
    "of that in the week ahead",
    "uptake of the week - pool",
    plan.weeksN[0]?.kgPerHa ?? 0,
    "kg/ha",
  );
  for (const [symbol, need] of [
    ["P2O5", plan.p2o5],
    ["K2O", plan.k2o],
  ] as const) {
    w.line(
      symbol,
      `${symbol} over the season, soil test: ${need.response}`,
      "uptake where it responds, removal where it may, none where unlikely",
      need.kgPerHa,
      "kg/ha",
      need.sources[0] ?? null,
    );
  }
  w.line(
    "r",
    "K2O:N of the shape on this day (custom)",
    `${RATIO.before} before visible buds, rising to ${RATIO.after} at set`,
    ratioOn(plan.dates, plan.from),
    "",
    CP,
  );
  w.line("bed", "cropped land of the bed", "length × bed spacing", croppedAreaM2(state.bed), "m2");
  if (m) {
    w.line(
      "rate",
      `material over the rest of the season, ${m.lead} leads`,
      "left / (grade / 100)",
      m.seasonKgPerHa,
      "kg/ha",
    );
    w.line("kg", "of that on this bed", "rate × cropped land", m.seasonKg, "kg");
    if (m.dose) {
      w.line(
        "kg",
        `given at once from ${m.dose.on}, weeks covered: ${m.dose.weeks}`,
        "Σ weeks / (grade / 100) × cropped land, at most what the shed holds",
        m.dose.kg,
        "kg",
        m.dose.weeks > 1 ? CP : null,
      );
    }
  }
  if (!plan.dates.seen.buds)
    w.estimate("buds-visible", "not noted: 30 days after setting out", {
      key: "fao56",
      locator: "Table 11, p. 104",
    });
  if (!plan.dates.seen.set)
    w.estimate("fruit-set", "not noted: 35 days after visible buds", {
      key: "fao56",
      locator: "Table 11, p. 104",
    });
  if (plan.credits.some((c) => c.kind === "soil-nitrate" && c.how === "computed")) {
    w.estimate("soil nitrate", "half to all of what the test found is counted", CP);
    if (state.bed.soil.bulkDensityKgPerM3 === undefined)
      w.estimate("bulkDensityKgPerM3", "1300 kg/m3 taken", CP);
  }
  return w;
}
