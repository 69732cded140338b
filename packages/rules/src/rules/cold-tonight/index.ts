import { localDay } from "../../core/days.ts";
import type { AnswerBody, Rule } from "../../core/rule.ts";
import type { PlantingState } from "../../states/states.ts";
import { measure, say, wordOf } from "../../text/message.ts";
import { nightAt } from "../../warmth/nightOf.ts";
import { adviceFrom } from "./advice.ts";
import { atPlants } from "./atPlants.ts";
import { courseOf } from "./course.ts";
import { missing, missingForecast, refuseUnweighable, whyNot } from "./door.ts";
import { below, decide, protectionsFor, type Stand } from "./judge.ts";
import { outsideTonight } from "./outside.ts";
import { nightFloorOf, type Phase } from "./thresholds.ts";

/** Will tonight hurt? */
export const coldTonightRule: Rule<"planting"> = {
  id: "cold-tonight",
  version: 1,
  question: "Will tonight hurt?",
  subject: "planting",
  needs: [
    "forecast at most six hours old, by the hour where there is one",
    "cloud, wind and dew point of the night",
    "temperatures measured at the plants",
    "paired nights at the site and its station",
    "covers with dates",
    "notes on buds, flowers and fruit",
  ],
  run: runColdTonight,
};

function runColdTonight(state: PlantingState): AnswerBody {
  const today = localDay(state.asOf, state.site.timeZone);
  const notNow = whyNot(state, today);
  if (notNow) return notNow;
  refuseUnweighable(state);
  const stale = missingForecast(state);
  if (stale) return stale;
  const night = nightAt(state.asOf, state.site);
  const outside = outsideTonight(state, night);
  if (!outside) return missing("forecast.days", say("cold-tonight.missing.night"));
  const floor = nightFloorOf(state, today);
  const stand = standOf(state, floor.phase, today);
  const plants = atPlants(state, night, outside, stand);
  if (!plants) return missing("plantTemperatures", say("cold-tonight.missing.inside"));
  const lowC = plants.minimumC - plants.plusMinusC;
  const decision = decide(plants, floor, lowC, stand);
  if (decision === "none") {
    return {
      kind: "does-not-apply",
      reason: say("cold-tonight.not.harmless", {
        minimum: measure(plants.minimumC, "C"),
        floor: measure(floor.floorC, "C"),
        phase: wordOf(`cold-tonight.phase.${floor.phase}`),
      }),
    };
  }
  const now = Date.parse(state.asOf);
  const course = courseOf(night, outside, plants);
  return adviceFrom(state, {
    now,
    night,
    floor,
    outside,
    plants,
    course,
    decision,
    lowC,
    stand,
    ...below(course, floor.floorC, now),
    protections: stand === "bed" ? protectionsFor(plants, floor.floorC) : [],
  });
}

/** Where the plants spend the night: plants kept over winter that were not set out stand inside like seedlings. */
function standOf({ planting }: PlantingState, phase: Phase, today: string): Stand {
  if (phase === "hardening") return "trays";
  return planting.setOutOn === undefined || planting.setOutOn > today ? "inside" : "bed";
}
