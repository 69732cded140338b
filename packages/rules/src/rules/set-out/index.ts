import { localDay } from "../../core/days.ts";
import type { AnswerBody, Rule } from "../../core/rule.ts";
import type { PlantingState } from "../../states/states.ts";
import { climatologyYears } from "../../warmth/climatologyYears.ts";
import { adviceFrom } from "./advice.ts";
import { assessmentOf } from "./day.ts";
import { refuseUnweighable, whyNot } from "./door.ts";
import { missingHeat, missingYears } from "./missing.ts";
import { weigh } from "./weigh.ts";

/** When may these seedlings go out? */
export const setOutRule: Rule<"planting"> = {
  id: "set-out",
  version: 5,
  question: "When may these seedlings go out?",
  subject: "planting",
  needs: [
    "at least eight years of daily minima and maxima",
    "forecast at most a day old, where there is one",
    "paired nights at the site and its station",
    "soil temperature at 10 cm",
    "leaf count and hardening",
    "covers and mulches with dates",
    "days to maturity, yield goal, price, wage and the farm's own hours for covers, to weigh waiting against protecting",
  ],
  run: runSetOut,
};

function runSetOut(state: PlantingState): AnswerBody {
  const today = localDay(state.asOf, state.site.timeZone);
  const notNow = whyNot(state, today);
  if (notNow) return notNow;
  const years = state.climatology ? climatologyYears(state.climatology) : undefined;
  refuseUnweighable(state, years);
  if (!years || !state.climatology) return missingYears(0);
  const a = assessmentOf(state, state.climatology);
  const wantedDate = a.asItStands.curve[a.wanted];
  if (!wantedDate?.beyond) return missingYears(wantedDate?.n ?? 0);
  if (a.cover.covers.includes("heated-house")) return missingHeat();
  return adviceFrom(state, a, years, weigh(state, a, years));
}
