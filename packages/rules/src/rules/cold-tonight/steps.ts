import type { Step } from "../../core/rule.ts";
import type { PlantingState } from "../../states/states.ts";
import { type Message, measure, say, wordOf } from "../../text/message.ts";
import { clockAt, HOUR_MS } from "../../warmth/nightOf.ts";
import { COOL_CROP_VENT_C } from "../../warmth/ventMark.ts";
import { actBy, type Judged } from "./judge.ts";
import { FROST_C } from "./thresholds.ts";

/** A moment is said to the five minutes before it: nobody covers to the minute. */
const FIVE_MINUTES_MS = 300_000;
/** Hours after sunrise in which a covered bed gets too warm on a day that is to be mild. */
const MORNING_H = 8;

/** What to do, by when, and what to undo in the morning. */
export function stepsOf(state: PlantingState, j: Judged): Step[] {
  const said = { inside: insideSteps, trays: traySteps, bed: bedSteps }[j.stand](state, j);
  return said.map((text) => ({ text }));
}

/** "By when", and how far off that is; "now" where the moment has passed. */
export function byWhen(state: PlantingState, j: Judged): Record<string, string | ReturnType<typeof measure>> {
  const ms = Math.floor(actBy(j) / FIVE_MINUTES_MS) * FIVE_MINUTES_MS;
  return {
    time: clockAt(Math.max(ms, j.now), state.site.timeZone),
    ahead: measure(Math.max(0, (ms - j.now) / HOUR_MS), "hours"),
  };
}

const isPast = (j: Judged): boolean => actBy(j) - j.now < FIVE_MINUTES_MS;

function bedSteps(state: PlantingState, j: Judged): Message[] {
  const { plants, floor, protections } = j;
  const by = byWhen(state, j);
  const stands = plants.cover.covers.length > 0;
  const frost = j.lowC <= FROST_C;
  const act = stands ? "close" : "cover";
  return [
    isPast(j) ? say(`cold-tonight.step.${act}-now`) : say(`cold-tonight.step.${act}`, by),
    ...protections.map((p) =>
      say(`cold-tonight.step.holds-${p.holds}`, {
        cover: wordOf(`cold-tonight.cover.${p.id}`),
        inside: measure(p.insideC, "C"),
        floor: measure(floor.floorC, "C"),
      }),
    ),
    ...(stands && protections.length === 0 ? [say("cold-tonight.step.nothing-heavier")] : []),
    ...(plants.minimumC <= FROST_C && protections.every((p) => p.holds === "nothing")
      ? [say("cold-tonight.step.none-enough")]
      : []),
    ...(state.bed.kind === "containers" ? [say("cold-tonight.step.pots")] : []),
    ...(floor.phase === "fruit" ? [say("cold-tonight.step.pick", by)] : []),
    uncover(state, j),
    say(frost ? "cold-tonight.step.look-frost" : "cold-tonight.step.look"),
  ];
}

function traySteps(state: PlantingState, j: Judged): Message[] {
  return [
    isPast(j) ? say("cold-tonight.step.bring-in-now") : say("cold-tonight.step.bring-in", byWhen(state, j)),
    say("cold-tonight.step.bring-out", { floor: measure(j.floor.floorC, "C") }),
  ];
}

function insideSteps(state: PlantingState, j: Judged): Message[] {
  return [
    say(isPast(j) ? "cold-tonight.step.heat-now" : "cold-tonight.step.heat", {
      ...byWhen(state, j),
      floor: measure(j.floor.floorC, "C"),
      lift: measure(Math.max(0, j.floor.floorC - j.plants.minimumC), "C-difference"),
    }),
    say("cold-tonight.step.layer"),
    say("cold-tonight.step.alarm", { floor: measure(j.floor.floorC, "C") }),
  ];
}

/** When a cover must be open again: when the open air reaches the published vent mark, else with the first sun. */
export function uncover(state: PlantingState, j: Judged): Message {
  const { night, outside, plants } = j;
  for (let ms = night.sunrise; ms <= night.sunrise + MORNING_H * HOUR_MS; ms += HOUR_MS / 2) {
    const airC = outside.airC(ms);
    // The shift is of nights; by day only one that warms is on the safe side.
    if (airC === null || airC + Math.max(0, plants.shiftC) < COOL_CROP_VENT_C) continue;
    const time = clockAt(Math.floor(ms / FIVE_MINUTES_MS) * FIVE_MINUTES_MS, state.site.timeZone);
    return say("cold-tonight.step.uncover", { time, mark: measure(COOL_CROP_VENT_C, "C") });
  }
  return say("cold-tonight.step.uncover-sun");
}
