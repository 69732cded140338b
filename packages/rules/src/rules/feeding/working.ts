import { Working } from "../../core/working.ts";
import { contentsOf } from "../../food/blend/contents.ts";
import { RATIO, ratioOn } from "../../food/curve.ts";
import { FEED_EC_SOURCES } from "../../food/fertigation.ts";
import { type FeedingPlan, N_CEILING_KG_PER_HA } from "../../food/plan.ts";
import { LEACHING_SOURCE, roomMm } from "../../food/rainAhead.ts";
import { treatedShare } from "../../food/strip.ts";
import { rateKgPerHa } from "../../guides/recommend.ts";
import { NITRATE_CHECK_SOURCE } from "../../quantities/soil/sidedressNitrogen.ts";
import type { PlantingState } from "../../states/states.ts";
import { KG_PER_HA_PER_LB_PER_ACRE } from "../../tables/landUnits.ts";
import { UPTAKE_PER_TONNE, uptakePerTonne } from "../../tables/uptake.ts";
import { croppedAreaM2 } from "../../water/ground.ts";
import { type FeedingReading, type Frame, injectorOf } from "./reading.ts";

const CP = { key: "common-practice" };
const MIDWEST = { key: "midwest-vegetable-guide-2022", locator: "SN-224" };

/** From the yield goal to the bags, line by line. */
export function writeWorking(state: PlantingState, { goal, holdBack }: Frame, r: FeedingReading): Working {
  const w = new Working();
  const { plan } = r;
  writeNeed(w, goal, plan);
  writeSeason(w, plan);
  writeTests(w, plan);
  writeMinerals(w, plan);
  for (const need of r.secondary) {
    w.line(
      need.nutrient,
      `${need.nutrient} that a guide asks for`,
      "its rate less what was given since",
      need.leastKgPerHa,
      "kg/ha",
      need.source,
    );
  }
  if (holdBack) {
    w.line(
      "hold",
      "feed held back after cold",
      "as the rule cold-record decides",
      "until new leaves come",
      "",
      CP,
    );
  }
  writeBags(w, state, r);
  writeTanks(w, state, r);
  writeEstimates(w, state, r);
  return w;
}

function writeNeed(w: Working, goal: number, plan: FeedingPlan): void {
  const perTonne = uptakePerTonne("whole-crop");
  const rows = UPTAKE_PER_TONNE.filter((row) => row.part === "whole-crop" && row.status === "seen");
  const [first] = perTonne.sources;
  w.line("Y", "yield goal", "given", goal, "t/ha");
  for (const { nKgPerT, source } of rows) {
    const range = `${nKgPerT.low} to ${nKgPerT.high}`;
    w.line("uN", "nitrogen taken up per tonne", "as published", range, "kg/t", source);
  }
  if (plan.needBy) {
    const range = `${plan.need.low.toFixed(1)} to ${plan.need.high.toFixed(1)}`;
    w.line(
      "need",
      `nitrogen by ${plan.needBy.title}`,
      "the office's own rate",
      range,
      "kg/ha",
      plan.needBy.source,
    );
  } else {
    w.line("need", "nitrogen the crop takes up, low", "uN(low) Y", plan.need.low, "kg/ha", first ?? null);
    w.line("need", "nitrogen the crop takes up, high", "uN(high) Y", plan.need.high, "kg/ha", first ?? null);
  }
  const beside = plan.needBy ? undefined : plan.guide?.recommendations?.nitrogen;
  if (beside && plan.guide) {
    const { low, high } = rateKgPerHa(beside);
    w.line(
      "need",
      `${plan.guide.title}, beside it (${plan.guide.status})`,
      `${beside.low} to ${beside.high} ${beside.unit} for ${plan.guide.recommendations?.crop ?? "the crop"}`,
      `${low.toFixed(1)} to ${high.toFixed(1)}`,
      "kg/ha",
      plan.guide.source,
    );
  }
  for (const c of plan.credits) {
    const counts = {
      middle: "the middle counts",
      lowest: "from memory: the lowest counts",
      whole: "counted whole",
    };
    w.line(
      "credit",
      c.kind,
      `${c.how === "given" ? "as the agent judged it" : "computed"}; ${counts[c.assumes]}`,
      c.low === c.high ? c.low : `${c.low.toFixed(1)} to ${c.high.toFixed(1)}, counted ${c.mid.toFixed(1)}`,
      "kg/ha",
      c.source,
    );
  }
}

function writeSeason(w: Working, plan: FeedingPlan): void {
  w.line("ceiling", "above this no more yield was found", "195 lb/A", N_CEILING_KG_PER_HA, "kg/ha", {
    key: "california-n-plateau-2011",
    locator: "SN-228",
  });
  w.line("T", "nitrogen to supply, least", "need(low) - credits(high)", plan.season.low, "kg/ha");
  w.line(
    "T",
    "nitrogen to supply over the season",
    "min(ceiling, middle of need - credits as counted)",
    plan.seasonN,
    "kg/ha",
  );
  w.line(
    "T",
    "nitrogen to supply, most",
    "min(ceiling, need(high) - credits(low))",
    plan.season.high,
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
  w.line(
    "f",
    "share of the season's uptake still to come",
    "shape < 1, 4 to 5, < 3 lb/A a day by stage",
    plan.aheadN,
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
  const beside = [5, 10].map((lb) => (lb * KG_PER_HA_PER_LB_PER_ACRE).toFixed(1)).join(" to ");
  w.line(
    "week",
    "another guide, beside it",
    "20 to 50 % before planting, then 5 to 10 lb N/A a week",
    beside,
    "kg/ha",
    MIDWEST,
  );
}

function writeTests(w: Working, plan: FeedingPlan): void {
  const { nitrate, moved, plantTests } = plan;
  if (nitrate) {
    w.line(
      "NO3-N",
      `nitrate-N of the standing crop's soil, ${nitrate.on}`,
      "given",
      nitrate.mgPerKg,
      "mg/kg",
    );
    w.line(
      "side",
      "what that test would side-dress",
      "4 × max(0, 30 - NO3-N) lb/A",
      nitrate.sidedressKgPerHa,
      "kg/ha",
      NITRATE_CHECK_SOURCE,
    );
  }
  for (const t of plantTests) {
    w.line(
      t.nutrient,
      `${t.test.kind}, ${t.test.stage}, ${t.test.sampledOn}: ${t.says}`,
      `enough is ${t.enough.low} to ${t.enough.high} (from memory, unverified)`,
      t.value,
      t.unit,
      t.source,
    );
  }
  for (const [name, m] of [
    ["N", moved.n],
    ["K2O", moved.k],
  ] as const) {
    if (m.factor !== 1)
      w.line(
        "m",
        `the rest of the season's ${name} is moved`,
        "one fifth up or down, within the ceiling",
        m.factor,
        "",
        CP,
      );
  }
}

function writeMinerals(w: Working, plan: FeedingPlan): void {
  for (const [symbol, need] of [
    ["P2O5", plan.p2o5],
    ["K2O", plan.k2o],
  ] as const) {
    w.line(
      symbol,
      `${symbol} over the season, soil test: ${need.response}`,
      need.guide
        ? `middle of ${need.guide.title}: ${need.guide.low.toFixed(0)} to ${need.guide.high.toFixed(0)}`
        : "uptake where it responds, removal where it may, none where unlikely",
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
}

function writeBags(w: Working, state: PlantingState, { schedule, dose, rain }: FeedingReading): void {
  const cropped = croppedAreaM2(state.bed);
  w.line("bed", "cropped land of the bed", "length × bed spacing", cropped, "m2");
  for (const m of schedule.materials) {
    w.line(
      "rate",
      `${m.material.kind} over the rest of the season`,
      "the cheapest mixture within the bounds",
      (m.kg * 10_000) / cropped,
      "kg/ha",
    );
    w.line("kg", "of that on this bed", "rate × cropped land", m.kg, "kg");
  }
  if (!dose) return;
  for (const p of dose.parts) {
    w.line(
      "kg",
      `${p.material.kind} given at once from ${dose.on}, weeks covered: ${dose.weeks}`,
      "Σ of its weeks on this bed",
      p.kg,
      "kg",
      dose.weeks > 1 ? CP : null,
    );
  }
  const strip = treatedShare(state);
  const salt = dose.parts.map((p) => p.kg * (contentsOf(p.material).salt ?? 0)).reduce((a, b) => a + b, 0);
  w.line(
    "s",
    "share of the cropped land that is treated",
    "band or wet strip by row / bed spacing",
    strip,
    "fraction",
    CP,
  );
  w.line(
    "salt",
    "salt of this dose on the treated strip, as sodium nitrate",
    "Σ kg × salt index / 100 / strip",
    (salt * 10_000) / (cropped * strip),
    "kg/ha",
    {
      key: "salt-index-mortvedt",
      locator: "SN-721",
    },
  );
  if (!rain) return;
  w.line("room", "rain the fed soil holds", "(FC - WP) × 0.3 m, half empty", roomMm(state), "mm", CP);
  w.line(
    "leach",
    "nitrate-N that the rain ahead can take out",
    "20 to 30 lb/A for each inch in excess",
    `${rain.lossKgPerHa.low.toFixed(0)} to ${rain.lossKgPerHa.high.toFixed(0)}`,
    "kg/ha",
    LEACHING_SOURCE,
  );
}

function writeTanks(w: Working, state: PlantingState, { tanks, water }: FeedingReading): void {
  const fertigation = injectorOf(state);
  if (!fertigation || !water || tanks?.kind !== "week") return;
  const { week } = tanks;
  w.line(
    "W",
    "water that carries the feed",
    { season: "season's water / weeks", pace: "water given so far / weeks" }[water.how],
    week.waterL,
    "L",
    CP,
  );
  w.line("R", "injector ratio", "1 part of stock in R parts of final solution", week.ratio, "", {
    key: "umass-fertigation",
    locator: "SN-811",
  });
  for (const mix of week.mixes) {
    for (const p of mix.parts) {
      w.line("c", `${p.material.kind} in tank ${mix.tank}`, "g / (W / R)", p.gPerL, "g/L", {
        key: "umass-fertigation",
        locator: "injector calculations",
      });
      w.line(
        "cmax",
        "dissolves at most",
        p.dissolves.atC === null ? "a label's stop" : `at ${p.dissolves.atC} °C`,
        p.dissolves.gPerL,
        "g/L",
        p.dissolves.source,
      );
    }
  }
  w.line("ppm", "nitrogen in the water", "g N × 1000 / W", week.nMgPerL, "mg/L");
  for (const source of week.feedEc ? FEED_EC_SOURCES : []) {
    w.line(
      "EC",
      "conductivity of feeds above clear water",
      "0.0041 to 0.0076 dS/m for each mg/L N",
      `${week.feedEc?.low.toFixed(2)} to ${week.feedEc?.high.toFixed(2)}`,
      "dS/m",
      source,
    );
  }
}

function writeEstimates(w: Working, state: PlantingState, { plan, tanks }: FeedingReading): void {
  const FAO = { key: "fao56", locator: "Table 11, p. 104" };
  if (!plan.dates.seen.buds) w.estimate("buds-visible", "not noted: 30 days after setting out", FAO);
  if (!plan.dates.seen.set) w.estimate("fruit-set", "not noted: 35 days after visible buds", FAO);
  if (plan.credits.some((c) => c.kind === "soil-nitrate" && c.how === "computed")) {
    w.estimate("soil nitrate", "half to all of what the test found is counted", CP);
    if (state.bed.soil.bulkDensityKgPerM3 === undefined)
      w.estimate("bulkDensityKgPerM3", "1300 kg/m3 taken", CP);
  }
  if (tanks && state.feeding.fertigation?.tankC === undefined) {
    w.estimate("coldest of the stock tank", "5 °C taken, the coldest of the table", {
      key: "solubility-notes-2015",
      locator: "SN-726",
    });
  }
}
