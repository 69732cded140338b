import type { Step } from "../../core/rule.ts";
import { sprayIntervals } from "../../plant/sprayIntervals.ts";
import type { PlantingState } from "../../states/states.ts";
import type { SafeStep } from "../../tables/diagnosisTypes.ts";
import { type Message, onDay, say } from "../../text/message.ts";
import { tellApart } from "./apart.ts";
import type { Ranking } from "./ranking.ts";
import { causeNamed } from "./show.ts";
import type { Picture } from "./signs.ts";

/**
 * What to look for next, what is safe to do whoever turns out to be right, and the sample. Nothing here names a product:
 * that choice belongs to people with the label and the licence.
 */
export function stepsOf(state: PlantingState, picture: Picture, ranking: Ranking): Step[] {
  const { first, second, together, kind } = ranking;
  const apart = tellApart(first.cause, second.cause, picture.signs);
  const safe = withoutClashes(together.flatMap(({ cause }) => cause.steps));
  const samples = [...new Set(together.map(({ cause }) => cause.sample))].filter((s) => s !== "none");
  const urgent = together.some(({ cause }) => cause.urgent);
  const { harvestFrom } = sprayIntervals(state.sprays ?? [], state.site.timeZone, state.asOf);
  const steps: Message[] = [
    ...(harvestFrom === null ? [] : [say("look-closer.step.no-picking", { day: onDay(harvestFrom) })]),
    ...apart.map(({ sign, speaksFor, against }) =>
      say("look-closer.step.look-for", {
        sign: { word: `look-closer.sign.${sign}` },
        cause: { word: `look-closer.cause.${speaksFor.id}` },
        other: { word: `look-closer.cause.${against.id}` },
      }),
    ),
    ...unlooked(picture),
    ...(kind === "unclear" ? [say("look-closer.safe.hands"), say("look-closer.safe.dry-plants")] : []),
    ...(kind === "unclear" ? [] : safe.map((s) => say(`look-closer.safe.${s}`))),
    say(picture.photos > 0 ? "look-closer.step.photos" : "look-closer.step.photograph", {
      photos: picture.photos,
    }),
    ...(kind === "unclear"
      ? [say("look-closer.sample.whole-plant")]
      : samples.map((s) => say(`look-closer.sample.${s}`))),
    ...(samples.length > 0 || kind === "unclear"
      ? [
          say("look-closer.step.sample-where"),
          say(
            urgent || kind === "unclear"
              ? "look-closer.step.sample-today"
              : "look-closer.step.sample-if-spreading",
            { cause: causeNamed(first) },
          ),
        ]
      : []),
  ];
  return steps.map((text) => ({ text }));
}

/**
 * What is right for one possible cause and harms under another is left out while both are open: drift's evidence, weeds
 * among it, stays where it stands, wet leaves carry bacteria, drowned roots want no water.
 */
const CLASHES: readonly (readonly [SafeStep, readonly SafeStep[]])[] = [
  ["drift", ["rogue", "pick-off", "wash-off", "weeds"]],
  ["splash", ["wash-off"]],
  ["dry-plants", ["wash-off"]],
  ["drain", ["water-even"]],
];

function withoutClashes(steps: SafeStep[]): SafeStep[] {
  const all = new Set(steps);
  const out = new Set(CLASHES.flatMap(([holds, yields]) => (all.has(holds) ? yields : [])));
  return [...all].filter((step) => !out.has(step));
}

/** Part, pattern and speed part living causes from weather and chemistry; each not noted is asked for. */
function unlooked({ parts, patterns, speeds }: Picture): Message[] {
  return [
    ...(parts.size === 0 ? [say("look-closer.step.note-part")] : []),
    ...(patterns.size === 0 ? [say("look-closer.step.note-pattern")] : []),
    ...(speeds.size === 0 ? [say("look-closer.step.note-speed")] : []),
  ];
}
