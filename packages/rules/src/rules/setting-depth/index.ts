import { cautionsFor } from "../../cautions/register.ts";
import { instantAt, localDay } from "../../core/days.ts";
import type { AdviceBody, AnswerBody, Rule, Step } from "../../core/rule.ts";
import { type Estimated, type SourceRef, Working, type WorkingLine } from "../../core/working.ts";
import type { InForce } from "../../evidence/choices.ts";
import { halfBedOf } from "../../evidence/halfBed.ts";
import type { PlantingState } from "../../states/states.ts";
import { type Message, measure, say } from "../../text/message.ts";
import { climatologyYears } from "../../warmth/climatologyYears.ts";
import { refuseFahrenheit, refuseFahrenheitSoil } from "../../warmth/plausibleTemperatures.ts";
import { soilModelSource } from "../../warmth/soilTemperature.ts";
import { estimateSoil } from "../../warmth/soilWorking.ts";
import {
  type Choice,
  chooseDepth,
  DEEPEST_STEM_CM,
  SOIL_OVER_BALL_CM,
  UNION_ABOVE_SOIL_CM,
  WARM_SOIL_C,
} from "./choose.ts";
import { bothReadings, inForceLine, inForceSaid, readingInForce } from "./reading.ts";

/** How deep should these plants be set? */
export const settingDepthRule: Rule<"planting"> = {
  id: "setting-depth",
  version: 3,
  question: "How deep should these plants be set?",
  subject: "planting",
  needs: [
    "stem green or woody",
    "whether the plants are leggy",
    "soil temperature at 10 cm",
    "whether they are grafted",
    "which reading the office follows",
  ],
  run: runSettingDepth,
};

function runSettingDepth(state: PlantingState): AnswerBody {
  const today = localDay(state.asOf, state.site.timeZone);
  const { planting } = state;
  if (planting.endedOn !== undefined && planting.endedOn <= today) return no("setting-depth.not.ended");
  if (planting.setOutOn !== undefined && planting.setOutOn <= today)
    return no("setting-depth.not.already-out");
  if (planting.sownOn > today) return no("setting-depth.not.unsown");
  refuseFahrenheitSoil(state.notes);
  refuseFahrenheit(state.weather, "weather", state.climatology && climatologyYears(state.climatology));
  const reading = readingInForce(state);
  return adviceFrom(state, chooseDepth(state, today, reading.option), reading, today);
}

const no = (key: string): AnswerBody => ({ kind: "does-not-apply", reason: say(key) });

function adviceFrom(state: PlantingState, choice: Choice, reading: InForce, today: string): AdviceBody {
  const grafted = choice.reason === "grafted";
  const stakes = needsStake(choice);
  const planned = state.planting.plannedSetOutOn;
  const { working, estimated } = workingOf(choice, reading);
  return {
    kind: "advice",
    decision: {
      code: choice.depth,
      text: say(`setting-depth.decision.${choice.depth}`, { cm: measure(DEEPEST_STEM_CM, "cm") }),
    },
    steps: stepsOf(state, choice),
    window: {
      from: planned !== undefined && planned > today ? planned : today,
      to: null,
      endsBy: say("setting-depth.ends"),
    },
    stakes: {
      // A buried union or a buried woody stem loses plants; else depth moves lodging and earliness a little (cp).
      harm: grafted || choice.stem === "woody" ? 0.15 : 0.05,
      reason: say(grafted ? "setting-depth.stakes.union" : "setting-depth.stakes.depth"),
      actBy: planned !== undefined && planned > today ? instantAt(planned, 7, state.site.timeZone) : null,
    },
    working,
    estimated,
    evidence: [
      "setting-depth.trade-rule",
      "setting-depth.lodging",
      "setting-depth.georgia",
      "setting-depth.stem-roots",
      "setting-depth.cold-soil",
      ...(grafted ? ["setting-depth.grafting"] : []),
    ],
    grade: choice.depth === "seed-leaves" ? "moderate" : "practice",
    limits: [
      say("setting-depth.limit.differ", { way: { word: `setting-depth.way.${choice.depth}` } }),
      inForceSaid(reading),
      say("setting-depth.limit.trials"),
      ...(choice.contradicted ? [say(`setting-depth.limit.contradicted-${choice.stem ?? "woody"}`)] : []),
    ],
    cautions: cautionsFor(...(grafted ? ["graft-union-above-soil"] : []), ...(stakes ? ["stake-ends"] : [])),
    wouldChange: wouldChange(choice),
    cases: [],
    expected: planned === undefined ? null : { kind: "setting-out", date: planned < today ? today : planned },
    amounts: { buriedStemCm: choice.buriedStemCm },
    charts: [],
    table: [bothReadings(reading, grafted)],
  };
}

/** Support comes from a stake wherever a weak stem is not set deeper. */
const needsStake = (choice: Choice): boolean => choice.leggy && choice.depth === "root-ball";

function stepsOf(state: PlantingState, choice: Choice): Step[] {
  const steps: Message[] = [
    choice.depth === "root-ball"
      ? say("setting-depth.step.root-ball", { cm: measure(SOIL_OVER_BALL_CM, "cm") })
      : say("setting-depth.step.seed-leaves", { cm: measure(DEEPEST_STEM_CM, "cm") }),
    say(`setting-depth.because.${choice.reason}`, {
      warm: measure(WARM_SOIL_C, "C"),
      soil: choice.soil ? measure(choice.soil.morningC, "C") : "",
      union: measure(UNION_ABOVE_SOIL_CM, "cm"),
    }),
    ...(needsStake(choice) ? [say("setting-depth.step.stake")] : []),
    say("setting-depth.step.early"),
    ...halfBedSaid(state, choice),
  ];
  return steps.map((text) => ({ text }));
}

/** Only where trade and trials part, because there neither way can do the plants harm. */
function halfBedSaid({ planting }: PlantingState, choice: Choice): Message[] {
  const half = choice.open ? halfBedOf(planting) : null;
  if (!half) return [];
  const { pairs, plantsPerStrip, plantsEachWay } = half;
  return [say("setting-depth.step.half-bed", { pairs, plantsPerStrip, plantsEachWay })];
}

function wouldChange(choice: Choice): Message[] {
  if (choice.reason === "grafted" || choice.reason === "woody") return [];
  return [
    ...(choice.stem === null ? [say("setting-depth.change.stem")] : []),
    ...(choice.leggy ? [] : [say("setting-depth.change.leggy")]),
    ...(choice.soil?.how === "measured" ? [] : [say("setting-depth.change.soil")]),
    say("setting-depth.change.trial"),
  ];
}

function workingOf(choice: Choice, reading: InForce): { working: WorkingLine[]; estimated: Estimated[] } {
  const practice: SourceRef = { key: "common-practice" };
  const w = new Working();
  const { soil } = choice;
  w.line(
    "stem",
    "stem as last noted",
    choice.contradicted ? "both noted; the later counts" : "note",
    choice.stem,
    "",
  );
  w.line("leggy", "plants noted as leggy", "note", choice.leggy, "");
  w.line(
    "Ts",
    "soil at 10 cm in the morning",
    soil === null ? "neither measured nor modelled" : `${soil.how}, ${soil.days} days`,
    soil?.morningC ?? null,
    "C",
    soil?.how === "modelled" ? soilModelSource : null,
  );
  if (soil?.how === "modelled") estimateSoil(w, soil);
  w.line(
    "Ts_warm",
    "soil warm enough to set deeper",
    "from memory, the warm end of 16 to 18 C",
    WARM_SOIL_C,
    "C",
    {
      key: "transplanting-guides",
      locator: "soil at 4 in 60-65 F",
    },
  );
  w.line("z_max", "most stem to bury", "to the first true leaf at most", DEEPEST_STEM_CM, "cm", {
    key: "depth-guides",
  });
  inForceLine(w, reading);
  w.line("z", "stem to bury", `because: ${choice.reason}`, choice.buriedStemCm, "cm", practice);
  return { working: w.lines, estimated: w.estimated };
}
