import { addDays, localDay } from "../../core/days.ts";
import { lineOf, READY_LEAVES } from "../../rules/set-out/line.ts";
import type { FieldNote, Forecast } from "../../states/parts.ts";
import type { PlantingState } from "../../states/states.ts";
import { climatologyYears, sameDayIn } from "../../warmth/climatologyYears.ts";
import { siteShift } from "../../warmth/siteShift.ts";
import { soilAhead, soilNow } from "../../warmth/soilTemperature.ts";
import { CP } from "../published.ts";
import type { Spread, UncertainInput } from "../types.ts";
import { leafCount } from "./leafCount.ts";

type Input = UncertainInput<PlantingState>;

/** Half width of eight in ten, in standard deviations of the normal distribution. */
const EIGHT_IN_TEN = 1.2815515655446004;
/** A soil modelled from the air, on one morning of one bed; and one of which only the season is known (common practice). */
const SOIL_SD_C = { modelled: 1.5, normal: 2.5 } as const;
/** A forecast's week as a whole may be so much too warm or too cold (common practice). */
const FORECAST_WEEK_SD_C = 1.5;
const FORECAST_DAYS = 7;

/** What a day of setting out rests on that is not known for sure. */
export function setOutInputs(state: PlantingState): Input[] {
  const today = localDay(state.asOf, state.site.timeZone);
  const line = lineOf(state.settings, state.notes, today);
  const inputs: Input[] = [siteOffset(state)];
  const soil = soilTemperature(state, today);
  if (soil) inputs.push(soil);
  if (line.leaves === null) {
    const leaves = leafCount(state, today);
    if (leaves) inputs.push(leaves);
  }
  if (!line.hardened && (line.leaves ?? READY_LEAVES) >= READY_LEAVES) {
    inputs.push({
      id: "hardened",
      spread: { shape: "one-of", unit: "count", values: [0, 1], source: CP },
      cost: "free",
      apply: (s, value) => (value === 1 ? noted(s, { on: today, kind: "hardened" }) : s),
    });
  }
  return [...inputs, ...forecast(state, today)];
}

const noted = (s: PlantingState, note: FieldNote): PlantingState => ({ ...s, notes: [...s.notes, note] });

/**
 * How much colder the site's nights are than its station's. What more paired nights can tell is their mean, whose standard
 * error is sd / √n; without any, the rule's own ± 2 C.
 */
function siteOffset({ site }: PlantingState): Input {
  const paired = site.stationOffset;
  const common = { unit: "C-difference", least: -15, most: 15, source: CP } as const;
  const spread: Spread =
    paired && paired.nights > 1
      ? {
          shape: "student-t",
          mean: paired.minC,
          scale: paired.sdC / Math.sqrt(paired.nights),
          degrees: paired.nights - 1,
          ...common,
        }
      : {
          shape: "normal",
          mean: paired?.minC ?? 0,
          sd: siteShift({ ...site, stationOffset: undefined }, 1).plusMinusC / EIGHT_IN_TEN,
          ...common,
        };
  return {
    id: paired ? "more-paired-nights" : "paired-nights",
    spread,
    cost: "cheap",
    apply: (s, minC) => ({
      ...s,
      site: {
        ...s.site,
        stationOffset: { minC, sdC: paired?.sdC ?? 0, nights: paired?.nights ?? 1 },
      },
    }),
  };
}

/** This morning's soil where nobody put a thermometer in. */
function soilTemperature(state: PlantingState, today: string): Input | undefined {
  if (!state.climatology) return undefined;
  const now = soilNow(state, today);
  if (now?.how === "measured") return undefined;
  const [mean = Number.NaN] = soilAhead(climatologyYears(state.climatology), state.bed, now, today, 1);
  if (Number.isNaN(mean)) return undefined;
  const { calibration } = now ?? {};
  const sd = calibration
    ? calibration.standardErrorC * Math.sqrt(calibration.pairs + 1)
    : now
      ? SOIL_SD_C.modelled
      : SOIL_SD_C.normal;
  const source = calibration ? CP : { key: "zhao-2021", locator: "abstract; the figure taken is (cp)" };
  return {
    id: "soil-temperature",
    spread: { shape: "normal", unit: "C", mean, sd, least: 0, most: 35, source },
    cost: "cheap",
    apply: (s, value) => noted(s, { on: today, kind: "soil-temperature-10cm-c", value }),
  };
}

/** The week ahead: nothing to measure where a forecast is there; where none is, any of the station's years may come. */
function forecast(state: PlantingState, today: string): Input[] {
  const { climatology } = state;
  if (state.forecast) {
    return [
      {
        id: "forecast-error",
        spread: {
          shape: "normal",
          unit: "C-difference",
          mean: 0,
          sd: FORECAST_WEEK_SD_C,
          least: -5,
          most: 5,
          source: CP,
        },
        apply: (s, value) => (s.forecast ? { ...s, forecast: warmer(s.forecast, value) } : s),
      },
    ];
  }
  if (!climatology) return [];
  const years = climatologyYears(climatology);
  return [
    {
      id: "forecast",
      spread: { shape: "one-of", unit: "count", values: years.years, source: CP },
      cost: "free",
      apply: (s, year) => {
        const first = sameDayIn(year, today);
        const days = Array.from({ length: FORECAST_DAYS }, (_, lead) => {
          const { tMinC, tMaxC } = years.at(first + lead);
          return { date: addDays(today, lead), tMinC, tMaxC };
        }).filter((d) => !Number.isNaN(d.tMinC + d.tMaxC));
        return { ...s, forecast: { issuedAt: s.asOf, days } };
      },
    },
  ];
}

const shifted = (t: number | undefined, by: number) =>
  t === undefined ? undefined : Math.min(60, Math.max(-70, t + by));

function warmer(forecast: Forecast, by: number): Forecast {
  return {
    ...forecast,
    days: forecast.days.map((d) => ({ ...d, tMinC: shifted(d.tMinC, by), tMaxC: shifted(d.tMaxC, by) })),
    ...(forecast.hours && {
      hours: forecast.hours.map((h) => ({
        ...h,
        temperatureC: Math.min(60, Math.max(-70, h.temperatureC + by)),
      })),
    }),
  };
}
