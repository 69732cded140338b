import { type Estimated, type SourceRef, Working, type WorkingLine } from "../../core/working.ts";
import type { Rest } from "../../layout/rest.ts";
import { mulchOn } from "../../states/standing.ts";
import type { PlantingState } from "../../states/states.ts";
import { MULCH_WARMTH } from "../../tables/mulchWarmth.ts";
import { forecastSkill } from "../../warmth/blend.ts";
import { type ClimatologyYears, NORMAL_YEARS } from "../../warmth/climatologyYears.ts";
import { soilModelSource } from "../../warmth/soilTemperature.ts";
import { estimateSoil } from "../../warmth/soilWorking.ts";
import { COOL_CROP_VENT_C, INSIDE_LIMIT_C } from "../../warmth/ventMark.ts";
import type { Assessment } from "./assess.ts";
import { keptOutLine } from "./keptOut.ts";
import { ESTABLISHMENT_DAYS, SOIL_FLOOR_C, STEADY_DAYS } from "./line.ts";
import type { Weighed } from "./weigh.ts";
import { weighLines } from "./weighWords.ts";

const PRACTICE: SourceRef = { key: "common-practice" };
const WILSON: SourceRef = { key: "wilson-1927", locator: "score interval, 80 %" };

/** The calculation line by line, and what in it was estimated. */
export function setOutWorking(
  state: PlantingState,
  a: Assessment,
  years: ClimatologyYears,
  weighed: Weighed | null,
  kept: Rest | undefined,
): { working: WorkingLine[]; estimated: Estimated[] } {
  const w = new Working();
  lineLines(w, state, a);
  weatherLines(w, state, a, years);
  coverLines(w, a);
  soilLines(w, state, a);
  dateLines(w, a);
  weighLines(w, weighed, state.planting.baseTemperatureC !== undefined);
  keptOutLine(w, kept);
  return { working: w.lines, estimated: w.estimated };
}

function lineLines(w: Working, state: PlantingState, a: Assessment): void {
  const allowed = a.line.allowedOn(a.wanted);
  const office = (set: unknown): string => (set === undefined ? "default" : "as the office set it");
  const { settings } = state;
  w.line("floor", "air below this counts as cold", office(settings.coldFloorC), a.line.floorC, "C", PRACTICE);
  w.line("stage", "how much cold the plant can take", stageWords(a), allowed.stage, "", PRACTICE);
  w.line(
    "N_allowed",
    "nights below the floor that this stage is allowed",
    office(settings.setOutAllowedNights),
    allowed.nights,
    "nights",
    PRACTICE,
  );
  w.line(
    "D_allowed",
    "degree-hours below the floor that this stage is allowed",
    office(settings.setOutAllowedDegreeHours),
    allowed.degreeHours,
    "C h",
    PRACTICE,
  );
  w.line("W", "nights after setting out that are weighed", "default", ESTABLISHMENT_DAYS, "days", PRACTICE);
  const risk = office(settings.setOutAcceptedRisk);
  w.line("p_accepted", "accepted risk of more than that", risk, a.line.acceptedRisk, "fraction", PRACTICE);
  w.line(
    "p_frost_accepted",
    "accepted risk of frost",
    office(settings.setOutFrostRisk),
    a.line.frostRisk,
    "fraction",
    PRACTICE,
  );
}

const stageWords = (a: Assessment): string =>
  `${a.line.hardened ? "hardened" : "not noted as hardened"}, ${
    a.line.leaves === null ? "leaves not counted" : `${a.line.leaves} true leaves`
  }`;

function weatherLines(w: Working, state: PlantingState, a: Assessment, years: ClimatologyYears): void {
  const wanted = a.asItStands.curve[a.wanted];
  w.line(
    "n",
    "years with that window whole",
    `latest ${NORMAL_YEARS} at most, ${years.years.at(0)} to ${years.years.at(-1)}`,
    wanted?.n ?? 0,
    "years",
    { key: "wmo-1203", locator: "length of a climatological normal" },
  );
  w.line(
    "r",
    "skill of a forecast by lead k, blended as N + r (F - N) + √(1 - r²) (Ty - N)",
    `max(0, 0.95 - 0.07 k); ${a.members.forecastDays} forecast days; at k = 5`,
    forecastSkill(5),
    "",
    PRACTICE,
  );
  w.line(
    "Δsite",
    "site's nights less its station's",
    a.site.pairedNights > 0 ? `mean of ${a.site.pairedNights} paired nights` : "no paired nights: taken as 0",
    a.site.shiftC,
    "C",
    a.site.pairedNights > 0 ? null : PRACTICE,
  );
  w.line(
    "±site",
    "how far that may be wrong over the window",
    a.site.pairedNights > 0
      ? `1.28 sd √(1/n + 1/W), sd ${state.site.stationOffset?.sdC} C, n ${a.site.pairedNights}, W ${ESTABLISHMENT_DAYS}`
      : "unknown site",
    a.site.plusMinusC,
    "C",
    a.site.pairedNights > 0 ? { key: "wilks-2011", locator: "prediction interval" } : PRACTICE,
  );
  if (a.site.pairedNights === 0) {
    w.estimate(
      "site.stationOffset",
      "site taken as its station, with 2 C either way in the interval",
      PRACTICE,
    );
  }
  w.estimate("hourly temperatures", "course of the day from its extremes", {
    key: "parton-logan-1981",
    locator: "air at 150 cm",
  });
}

function coverLines(w: Working, a: Assessment): void {
  if (a.cover.covers.length > 0) {
    const range = a.cover.highC === a.cover.offsetC ? "" : `, published up to ${a.cover.highC} C`;
    w.line(
      "Δcover",
      "night minimum under the cover that stands, less outside",
      `${a.cover.covers.join(" + ")}${range}; the low end is taken`,
      a.cover.offsetC,
      "C",
      a.cover.source,
    );
    w.estimate(
      "temperature under the cover",
      "outside minimum plus the cover's published offset",
      a.cover.source ?? PRACTICE,
    );
  }
  const protection = a.protection ?? a.laterProtection;
  if (protection) {
    const { kind } = protection;
    w.line(
      "Δprotect",
      `night minimum with ${kind.id} put up, less outside`,
      "published offset",
      kind.offsetC,
      "C",
      kind.source,
    );
  }
  if (a.cover.covers.length > 0 || a.decision === "protect") {
    w.line(
      "T_vent",
      "air inside at which a cover must be open",
      "top of the range for growth by day",
      INSIDE_LIMIT_C,
      "C",
      {
        key: "ucanr-7217",
        locator: "day 24-30 C",
      },
    );
    w.line("T_vent,cool", "published mark for cool crops, for comparison", "60 F", COOL_CROP_VENT_C, "C", {
      key: "psu-row-covers-2020",
      locator: "vent or remove above 60 F",
    });
  }
}

function soilLines(w: Working, state: PlantingState, a: Assessment): void {
  const soilC = a.soilC[a.wanted] ?? Number.NaN;
  const how =
    a.soil?.how === "measured" && a.wanted === 0 ? `mean of ${a.soil.days} mornings measured` : "modelled";
  w.line(
    "Ts",
    "soil at 10 cm in the morning on the wanted day",
    how === "modelled" ? "Ts += 0.202 (surface - Ts) each day, less the morning's dip, plus mulch" : how,
    Number.isNaN(soilC) ? null : soilC,
    "C",
    how === "modelled" ? soilModelSource : null,
  );
  w.line("Ts_floor", "soil below which roots stand still", "from memory, 16 to 18 C", SOIL_FLOOR_C, "C", {
    key: "transplanting-guides",
    locator: "soil at 4 in at least 60-65 F",
  });
  if (how !== "modelled") return;
  estimateSoil(w, a.soil);
  const mulch = mulchOn(state.bed, a.today);
  const row = MULCH_WARMTH[mulch];
  if (row)
    w.line(
      "Δmulch",
      `warming of the soil by ${mulch} mulch`,
      "published offset",
      row.offsetC,
      "C",
      row.source,
    );
  else if (mulch !== "none")
    w.estimate("mulch", `no published soil warming for ${mulch} mulch: taken as bare soil`, PRACTICE);
}

function dateLines(w: Working, a: Assessment): void {
  const date = a.asItStands.curve[a.wanted];
  if (!date?.beyond || !date.frost || !date.oneNight || !date.degreeHours || !date.nights) return;
  const on = ` when set out on ${date.day}`;
  w.line("N50", `nights below the floor${on}, the middle year`, "median", date.nights.p50, "nights");
  w.line(
    "N90",
    `nights below the floor${on}, the coldest tenth of years`,
    "90th percentile",
    date.nights.p90,
    "nights",
  );
  w.line(
    "D50",
    `degree-hours${on}, the middle year`,
    "median of Σ max(0, floor - T)",
    date.degreeHours.p50,
    "C h",
  );
  w.line(
    "D90",
    `degree-hours${on}, the coldest tenth of years`,
    "90th percentile",
    date.degreeHours.p90,
    "C h",
  );
  const share = (s: { hits: number; n: number; low: number; high: number }) =>
    `x = ${s.hits} of n = ${s.n} years; (x + z²/2) / (n + z²), z 1.28; interval, site included, ${s.low.toFixed(2)} to ${s.high.toFixed(2)}`;
  w.line(
    "p",
    `risk of a dose above the line${on}`,
    share(date.beyond),
    date.beyond.estimate,
    "fraction",
    WILSON,
  );
  w.line(
    "p_frost",
    `risk of frost${on}`,
    `the larger of ${date.frost.hits} of ${date.frost.n} years and Student's t of the window's lowest minima`,
    date.frost.estimate,
    "fraction",
    { key: "wilks-2011", locator: "prediction from a normal sample" },
  );
  w.line(
    "p_one",
    `one night below the floor${on}; shown, never decides`,
    share(date.oneNight),
    date.oneNight.estimate,
    "fraction",
    WILSON,
  );
  const dayAt = (lead: number | null) => (lead === null ? null : (a.asItStands.curve[lead]?.day ?? null));
  w.line(
    "earliest",
    "earliest date within the accepted risk from the wanted day on",
    `first of ${STEADY_DAYS} days in a row within both risks, soil at least ${SOIL_FLOOR_C} C`,
    dayAt(a.asItStands.earliest),
    "date",
    PRACTICE,
  );
  const soilLead = a.soilC.findIndex((c) => c >= SOIL_FLOOR_C);
  w.line(
    "earliest_soil",
    "first day with soil warm enough",
    `Ts at least ${SOIL_FLOOR_C} C`,
    soilLead < 0 ? null : dayAt(soilLead),
    "date",
  );
  w.line(
    "earliest_warm",
    "the same date at the warm end of the interval",
    "low end of the risk",
    dayAt(a.earliestIfWarmer),
    "date",
  );
  w.line(
    "earliest_cold",
    "the same date at the cold end of the interval",
    "high end of the risk",
    dayAt(a.earliestIfColder),
    "date",
  );
}
