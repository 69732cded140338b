import { localDay } from "../../core/days.ts";
import { refuse } from "../../core/errors.ts";
import type { AnswerBody, NeedsMoreBody } from "../../core/rule.ts";
import type { PlantingState } from "../../states/states.ts";
import { measure, say } from "../../text/message.ts";
import { climatologyYears } from "../../warmth/climatologyYears.ts";
import {
  refuseFahrenheit,
  refuseFahrenheitReadings,
  refuseFahrenheitYears,
} from "../../warmth/plausibleTemperatures.ts";
import { hoursAtPlants, recordStart } from "./hours.ts";
import { type Judged, judge, recordOf, watchedRecord } from "./judge.ts";
import { FORTNIGHT_DAYS } from "./record.ts";
import { signsOf } from "./signs.ts";
import { type Thresholds, thresholdsOf } from "./thresholds.ts";

/** Share of the last fortnight's hours that must be known before a planting is called unharmed (cp). */
const ENOUGH_KNOWN = 0.8;
/** Everything an answer is made of, or what is said instead where the cold cannot or need not be judged. */
export function readCold(state: PlantingState): Judged | AnswerBody {
  const today = localDay(state.asOf, state.site.timeZone);
  const { planting } = state;
  if (planting.endedOn !== undefined && planting.endedOn <= today) return no("cold-record.not.ended");
  if (planting.sownOn > today) return no("cold-record.not.unsown");
  const thresholds = thresholdsOf(state, today);
  // Plants kept over winter that were never set out stand where only a thermometer tells.
  const indoors =
    thresholds.phase === "indoors" ||
    (thresholds.phase === "overwintered" && (planting.setOutOn ?? "9999") > today);
  if (!indoors && Math.abs(state.site.latitudeDeg) > 65) {
    refuse(
      "site.latitudeDeg",
      "the course of a day is only reconstructed where the sun sets each day of the year",
      "-65 to 65",
      state.site.latitudeDeg,
    );
  }
  refuseFahrenheitReadings(state.plantTemperatures);
  if (state.climatology) refuseFahrenheitYears(state.climatology);
  refuseFahrenheit(state.weather, "weather", state.climatology && climatologyYears(state.climatology));
  const firstDay = recordStart(state, thresholds.phase, today);
  if (firstDay === null) {
    const [field, where] = indoors
      ? (["plantTemperatures", "indoors"] as const)
      : (["weather", "outdoors"] as const);
    return missing(field, where, FORTNIGHT_DAYS * 24, thresholds);
  }
  const hours = hoursAtPlants(state, firstDay, indoors);
  const known = recordOf(hours, thresholds);
  const signs = signsOf(state, hours, known.whole, today);
  const records = { ...known, watched: watchedRecord(hours, thresholds, known.latest, signs) };
  const decision = judge(records, signs, thresholds);
  const span = records.latest.knownHours + records.latest.missingHours;
  if (
    records.whole.knownHours === 0 ||
    (decision === "carry-on" && records.latest.knownHours < ENOUGH_KNOWN * span)
  ) {
    const where = indoors ? "indoors" : hours.unknownCover ? "house" : "outdoors";
    const field = where === "outdoors" ? "weather" : "plantTemperatures";
    return missing(field, where, records.latest.missingHours, thresholds);
  }
  return { today, thresholds, hours, records, signs, decision };
}

const no = (key: string): AnswerBody => ({ kind: "does-not-apply", reason: say(key) });

/** What the missing hours could hide: each of them down to freezing. */
function missing(
  field: string,
  where: "indoors" | "outdoors" | "house",
  hours: number,
  thresholds: Thresholds,
): NeedsMoreBody {
  const hidden = hours * Math.max(0, thresholds.floorC);
  return {
    kind: "needs-more",
    missing: [
      {
        field,
        measure: say(`cold-record.missing.${where}`),
        couldMove: say("cold-record.missing.move", {
          hours: measure(hours, "hours"),
          degreeHours: measure(hidden, "C-hours"),
          allowed: measure(thresholds.allowedDegreeHours, "C-hours"),
        }),
      },
    ],
    working: [
      {
        symbol: "D_hidden",
        meaning: "degree-hours that the missing hours could hide, each down to freezing",
        expression: `${hours} h × (${thresholds.floorC} - 0) C`,
        value: hidden,
        unit: "C h",
        source: null,
      },
    ],
    estimated: [],
  };
}
