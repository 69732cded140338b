import { cautionsFor } from "../../cautions/register.ts";
import { addDays, daysBetween, instantAt, localDay } from "../../core/days.ts";
import { refuse } from "../../core/errors.ts";
import type { AdviceBody, AnswerBody, Rule, Stakes } from "../../core/rule.ts";
import { Working } from "../../core/working.ts";
import { greenhouseHeat } from "../../quantities/climate/greenhouseHeat.ts";
import type { StructureState } from "../../states/states.ts";
import { type Message, measure, onDay, say } from "../../text/message.ts";
import { refuseFahrenheit } from "../../warmth/plausibleTemperatures.ts";
import { checkForecastAge } from "../irrigate/checks.ts";
import { loadChart, nightsChart } from "./chart.ts";
import { designC, type Season, seasonOf } from "./demand.ts";
import { type House, readHouse } from "./house.ts";
import { type Nights, readNights, shortOf } from "./nights.ts";
import { type Heating, stepsOf } from "./steps.ts";

/** Night floor for plants raised indoors (common practice). */
const NIGHT_FLOOR_C = 16;
/** Where nobody said how long it is heated: eight weeks, the longest that seedlings are usually raised (TR-14, memory). */
const USUAL_NIGHTS = 56;
/** Earlier than this nobody has to think of it (common practice). */
const AHEAD_DAYS = 60;
/** The diurnal model hangs on a sunset. */
const FURTHEST_DEG = 65;

/** Share of the plants at risk where the heater cannot hold the coldest nights, where nobody knows, and where it can (cp). */
const HARM_OF_SHORT = 0.3;
const HARM_OF_UNKNOWN = 0.1;
const HARM_OF_HEATING = 0.02;

/** What does it take to keep the night temperature in there? */
export const nightHeatRule: Rule<"structure"> = {
  id: "night-heat",
  version: 2,
  question: "What does it take to keep the night temperature in this house?",
  subject: "structure",
  needs: [
    "glazing, cover area, floor and volume of the house",
    "the first and last heated night",
    "eight years of daily extremes, or a forecast",
    "what it is heated with, its rated output and the price of the fuel",
  ],
  run,
};

function run(state: StructureState): AnswerBody {
  const { structure, site, settings } = state;
  const today = localDay(state.asOf, site.timeZone);
  if (Math.abs(site.latitudeDeg) > FURTHEST_DEG) {
    refuse("site.latitudeDeg", "is where some days have no sunset", "-65 to 65", site.latitudeDeg);
  }
  checkForecastAge(state.forecast, state.asOf);
  refuseFahrenheit(state.weather, "weather");
  refuseShape(state);
  const { heatedFrom = today, heatedTo = addDays(later(heatedFrom, today), USUAL_NIGHTS - 1) } = structure;
  if (heatedTo < heatedFrom) {
    refuse("structure.heatedTo", "must not be before heatedFrom", `${heatedFrom} or later`, heatedTo);
  }
  if (heatedTo < today) return no(say("night-heat.not.over", { day: onDay(heatedTo) }));
  if (daysBetween(today, heatedFrom) > AHEAD_DAYS) {
    return no(say("night-heat.not.yet", { day: onDay(heatedFrom) }));
  }
  const from = later(heatedFrom, today);
  const w = new Working();
  if (structure.heatedTo === undefined) {
    w.estimate("heatedTo", `not stated: ${USUAL_NIGHTS} nights, to ${heatedTo}`, {
      key: "transplanting-guides",
      locator: "eight weeks (TR-14)",
    });
  }
  const nights = readNights(state, from, heatedTo);
  if (nights.climate.length === 0 && nights.forecast.length === 0) return missingNights();
  const plantsC = structure.nightC ?? settings.indoorNightFloorC ?? NIGHT_FLOOR_C;
  w.line(
    "Ti",
    "night temperature at the plants",
    structure.nightC === undefined ? "floor" : "stated",
    plantsC,
    "C",
    {
      key: "common-practice",
    },
  );
  const house = readHouse(structure, plantsC, w);
  const season = nights.climate.length > 0 ? seasonOf(nights, house) : null;
  const ahead = nights.forecast.map(({ day, hours }) => ({
    day,
    coldestC: Math.min(...hours),
    kWh: (house.lossWPerK * shortOf(hours, house.airC)) / 1000,
  }));
  if ((season?.highKWh ?? 0) === 0 && ahead.every((n) => n.kWh === 0)) {
    return no(say("night-heat.not.warm", { floor: measure(house.airC, "C") }));
  }
  return adviceFrom(state, { from, to: heatedTo, today }, house, nights, season, ahead, w);
}

const later = (a: string, b: string): string => (daysBetween(a, b) > 0 ? b : a);

const no = (reason: Message): AnswerBody => ({ kind: "does-not-apply", reason });

const missingNights = (): AnswerBody => ({
  kind: "needs-more",
  missing: [
    {
      field: "climatology",
      measure: say("night-heat.missing.nights"),
      couldMove: say("night-heat.missing.nights-moves"),
    },
  ],
  working: [],
  estimated: [],
});

/** A cover smaller than the floor, or a volume no roof could hold, is a slip of the pen. */
function refuseShape({ structure: s }: StructureState): void {
  if (s.coverAreaM2 < s.floorAreaM2) {
    const message = "must not be smaller than the floor: it is the outer surface, roof, walls and ends";
    refuse("structure.coverAreaM2", message, `${s.floorAreaM2} m2 or more`, s.coverAreaM2);
  }
  const heightM = s.volumeM3 / s.floorAreaM2;
  if (heightM < 0.3 || heightM > 12) {
    refuse(
      "structure.volumeM3",
      "makes the house 0.3 m low or 12 m high on its floor",
      `${(0.3 * s.floorAreaM2).toFixed(1)} to ${(12 * s.floorAreaM2).toFixed(0)} m3`,
      s.volumeM3,
    );
  }
}

interface Window {
  from: string;
  to: string;
  today: string;
}

function adviceFrom(
  state: StructureState,
  window: Window,
  house: House,
  nights: Nights,
  season: Season | null,
  ahead: Heating["ahead"],
  w: Working,
): AdviceBody {
  const { structure } = state;
  const design = designC(nights);
  const coldest = design?.outsideC ?? Math.min(...ahead.map((n) => n.coldestC));
  w.line(
    "To",
    "design night",
    design
      ? `one in a hundred of ${design.of} nights of ${nights.years} years is colder`
      : "coldest of the forecast",
    coldest,
    "C",
    { key: "common-practice" },
  );
  const load = greenhouseHeat.compute({
    coverAreaM2: structure.coverAreaM2,
    uWPerM2K: house.uWPerM2K,
    volumeM3: structure.volumeM3,
    airChangesPerH: house.airChangesPerH,
    insideC: house.airC,
    outsideC: coldest,
  });
  w.include(load);
  if (season) {
    w.line(
      "E",
      "energy of the heated nights ahead, mean of the years",
      "Σ H (Ti - T) over night hours",
      season.meanKWh,
      "kWh",
      {
        key: "parton-logan-1981",
        locator: "hours between the extremes",
      },
    );
  }
  if (nights.pairedNights === 0) {
    w.estimate(
      "site.stationOffset",
      `no paired nights: the site's nights may differ by ${nights.plusMinusC} C from its station's`,
    );
  }
  const rated = structure.heaters.map((h) => h.outputW).filter((v) => v !== undefined);
  const ratedW =
    rated.length === structure.heaters.length && rated.length > 0 ? rated.reduce((a, b) => a + b, 0) : null;
  const code =
    structure.heaters.length === 0
      ? "no-heater"
      : ratedW === null
        ? "unrated"
        : ratedW < load.value.totalW
          ? "short"
          : "heat";
  const heating: Heating = {
    house,
    nights,
    season,
    ahead,
    design,
    coldest,
    loadW: load.value.totalW,
    ratedW,
    code,
  };
  return {
    kind: "advice",
    decision: {
      code,
      text: say(`night-heat.decision.${code}`, {
        load: measure(load.value.totalW, "W"),
        rated: measure(ratedW ?? 0, "W"),
        plants: measure(house.plantsC, "C"),
        outside: measure(coldest, "C"),
      }),
    },
    steps: stepsOf(state, heating, w),
    window: { from: window.from, to: window.to, endsBy: say("night-heat.ends") },
    stakes: stakesOf(state, window, code),
    working: w.lines,
    estimated: w.estimated,
    evidence: [
      "night-heat.floor",
      "night-heat.heat-loss",
      "night-heat.u-values",
      "night-heat.second-layer",
      "night-heat.screen",
      "night-heat.infrared-film",
      "night-heat.by-night",
      "night-heat.hours",
      "night-heat.fuels",
      "night-heat.mats",
      "night-heat.fleece",
    ],
    grade: "weak",
    limits: limitsOf(nights, season),
    cautions: cautionsFor("night-heat-fire", "heater-fumes", "heater-fitting", "cover-overheats"),
    wouldChange: [
      say("night-heat.change.meter"),
      ...(structure.uWPerM2K === undefined ? [say("night-heat.change.u")] : []),
      ...(nights.pairedNights === 0
        ? [say("night-heat.change.offset", { c: measure(nights.plusMinusC, "C-difference") })]
        : []),
    ],
    cases: [],
    expected: null,
    amounts: { loadW: load.value.totalW, ...(season && { seasonKWh: season.meanKWh }) },
    charts: [nightsChart(heating), loadChart(heating)],
  };
}

function limitsOf(nights: Nights, season: Season | null): Message[] {
  return [
    say("night-heat.limit.sun"),
    say("night-heat.limit.wind"),
    say("night-heat.limit.hours"),
    say("night-heat.limit.labour"),
    ...(season ? [say("night-heat.limit.years", { n: nights.years })] : [say("night-heat.limit.no-climate")]),
  ];
}

function stakesOf({ site }: StructureState, { from }: Window, code: Heating["code"]): Stakes {
  if (code === "unrated") {
    return {
      harm: HARM_OF_UNKNOWN,
      reason: say("night-heat.stakes.unrated"),
      actBy: instantAt(from, 17, site.timeZone),
    };
  }
  if (code === "heat") return { harm: HARM_OF_HEATING, reason: say("night-heat.stakes.heat"), actBy: null };
  return {
    harm: HARM_OF_SHORT,
    reason: say("night-heat.stakes.short"),
    actBy: instantAt(from, 17, site.timeZone),
  };
}
