import { cautionsFor } from "../../cautions/register.ts";
import { daysBetween, instantAt, localDay } from "../../core/days.ts";
import { refuse } from "../../core/errors.ts";
import type { AdviceBody, AnswerBody, NeedsMoreBody, Rule, Stakes } from "../../core/rule.ts";
import { Working } from "../../core/working.ts";
import type { PlantingState } from "../../states/states.ts";
import { type Message, measure, onDay, say } from "../../text/message.ts";
import { yieldChart } from "./chart.ts";
import { type Judged, judge } from "./judge.ts";
import { missingTexture, missingWaterEc, wouldChangeOf } from "./missing.ts";
import { type SoilSaltReading, soilSaltOf } from "./soil.ts";
import { stepsOf } from "./steps.ts";
import { readWater, type WaterReading, waterTestOf } from "./water.ts";

/** Salt moves with every wet month; an older reading is flagged (common practice). */
const READING_HOLDS_DAYS = 365;
/** Below the threshold nothing is lost; what may gather over a season is watched (common practice). */
const HARM_OF_WATCHING = 0.02;

/** Less would round to nothing. */
const LOSS_WORTH_SAYING_PCT = 0.5;

/** What do this water and this soil cost a planting? */
export const saltRule: Rule<"planting"> = {
  id: "salt",
  version: 1,
  question: "What do this water and this soil cost?",
  subject: "planting",
  needs: [
    "conductivity of the soil, with its extraction, and the soil's texture",
    "a water test: conductivity, pH, alkalinity, Ca, Mg, Na, Cl, B, nitrate",
    "yield goal and price, for what it is worth",
  ],
  run,
};

function run(state: PlantingState): AnswerBody {
  const today = localDay(state.asOf, state.site.timeZone);
  const { endedOn } = state.planting;
  if (endedOn !== undefined && endedOn <= today) return no(say("salt.not.ended"));
  const w = new Working();
  const soil = soilSaltOf(state, today, w);
  const found = waterTestOf(state.waterTests ?? [], today);
  if (soil.kind === "none" && !found) return no(say("salt.not.unmeasured"));
  if (state.bed.kind === "containers") return no(say("salt.not.containers"));
  const water = found && readWater(found, w);
  const open = unanswerable(soil, water, w);
  if (open) return open;
  const judged = judge(state, soil, water, w);
  // A conductivity comes with every soil test: where it is harmless and nobody had the water tested, nobody asked.
  if (judged.decision === "fine" && !water && soil.kind === "read") {
    return no(say("salt.not.harmless", { ece: measure(soil.eceDsPerM, "dS/m") }));
  }
  return adviceFrom(state, judged, w, today);
}

const no = (reason: Message): AnswerBody => ({ kind: "does-not-apply", reason });

/** Neither the soil nor the water can be read for its salt: what is missing; undefined where one can. */
function unanswerable(
  soil: SoilSaltReading,
  water: WaterReading | undefined,
  w: Working,
): NeedsMoreBody | undefined {
  if (soil.kind === "read" || water?.ecDsPerM !== undefined) return undefined;
  const missing: NeedsMoreBody["missing"] = water ? [missingWaterEc(water.index)] : [];
  if (soil.kind === "unread") {
    if (soil.lacks === "texture") missing.push(missingTexture(soil));
    else if (!water) {
      const message = "must be named: electrical conductivity without its extraction cannot be read";
      refuse(soil.field, message, "saturated-paste, 1:1, 1:2, 1:5");
    }
  }
  return { kind: "needs-more", missing, working: w.lines, estimated: w.estimated };
}

function adviceFrom(state: PlantingState, j: Judged, w: Working, today: string): AdviceBody {
  const steps = stepsOf(j, w);
  const measured = j.soil.kind === "read" && !j.soil.converted;
  return {
    kind: "advice",
    decision: {
      code: j.decision,
      text: say(
        j.decision === "watch" && j.lossPct < LOSS_WORTH_SAYING_PCT
          ? "salt.decision.watch-none"
          : `salt.decision.${j.decision}`,
        { loss: measure(j.lossPct, "pct") },
      ),
    },
    steps,
    window: { from: today, to: null, endsBy: say("salt.ends") },
    stakes: stakesOf(state, j, today),
    working: w.lines,
    estimated: w.estimated,
    evidence: [
      "salt.threshold",
      "salt.threshold-range",
      "salt.card",
      "salt.cultivars",
      "salt.greenhouse",
      "salt.conversion",
      "salt.water-to-soil",
      "salt.leaching",
      "salt.washing",
      "salt.water-classes",
      "salt.boron",
      "salt.boron-general",
      "salt.chloride",
      "salt.leaves",
    ],
    grade: measured ? "moderate" : "weak",
    limits: limitsOf(j, today),
    cautions: cautionsFor("salt-leaching", "nitrate-leaching", "water-too-much"),
    wouldChange: wouldChangeOf(j),
    cases: [],
    expected: null,
    amounts: {
      lossPct: j.lossPct,
      ...(j.soil.kind === "read" && { eceDsPerM: j.soil.eceDsPerM }),
      ...(j.water?.ecDsPerM !== undefined && { ecwDsPerM: j.water.ecDsPerM }),
    },
    charts: j.fromSoil || j.fromWater ? [yieldChart(j)] : [],
  };
}

/** What salt takes from this planting's yield; it presses before plants go out into it. */
function stakesOf(state: PlantingState, j: Judged, today: string): Stakes {
  const { setOutOn, plannedSetOutOn: planned } = state.planting;
  const ahead = (setOutOn === undefined || setOutOn > today) && planned !== undefined && planned > today;
  const acts = j.decision === "leach" || j.decision === "better-water";
  return {
    harm: acts ? j.lossPct / 100 : j.decision === "watch" ? HARM_OF_WATCHING : 0,
    reason: say(acts ? "salt.stakes.loses" : "salt.stakes.watch", { loss: measure(j.lossPct, "pct") }),
    actBy: acts && ahead ? instantAt(planned, 7, state.site.timeZone) : null,
  };
}

function limitsOf({ soil, water, fromWater }: Judged, today: string): Message[] {
  const limits = [say("salt.limit.cultivars"), say("salt.limit.two-tolerances")];
  if (soil.kind === "read" && soil.converted) {
    limits.push(say("salt.limit.converted", { extraction: soil.extraction }));
  }
  if (soil.kind === "unread") limits.push(say(`salt.limit.unread-${soil.lacks}`));
  if (fromWater) limits.push(say("salt.limit.rain"));
  if (water?.classes.some((c) => c.what === "boron")) limits.push(say("salt.limit.boron"));
  if (water?.classes.some((c) => c.what === "chloride")) limits.push(say("salt.limit.chloride"));
  const days = [soil.kind === "read" ? soil.test.sampledOn : undefined, water?.test.sampledOn];
  for (const day of days) {
    if (day !== undefined && daysBetween(day, today) > READING_HOLDS_DAYS) {
      limits.push(say("salt.limit.old", { day: onDay(day), year: day.slice(0, 4) }));
    }
  }
  return limits;
}
