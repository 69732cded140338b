import type { PlantTestReading } from "../../food/plantTests.ts";
import { PLANT_TEST_STEP } from "../../food/plantTests.ts";
import { heavyRainLately } from "../../food/rainAhead.ts";
import { NITRATE_ENOUGH_MG_PER_KG } from "../../quantities/soil/sidedressNitrogen.ts";
import type { PlantingState } from "../../states/states.ts";
import { type Message, measure, onDay, say, wordOf } from "../../text/message.ts";
import type { FeedingReading } from "./reading.ts";

/** What nitrate, leaf and sap tests do to the rest of the season, and when nitrate must be tested again. */
export function testsSaid(state: PlantingState, r: FeedingReading, today: string): Message[] {
  return [...nitrateSaid(r), ...retestSaid(state, r, today), ...plantTestsSaid(r)];
}

function nitrateSaid({ plan }: FeedingReading): Message[] {
  const { nitrate } = plan;
  if (!nitrate) return [];
  return [
    say(nitrate.pausesUntil === undefined ? "feeding.step.nitrate-short" : "feeding.step.nitrate-enough", {
      day: onDay(nitrate.on),
      found: measure(nitrate.mgPerKg, "mg/kg"),
      enough: measure(NITRATE_ENOUGH_MG_PER_KG, "mg/kg"),
      sidedress: measure(nitrate.sidedressKgPerHa, "kg/ha"),
      until: onDay(nitrate.pausesUntil ?? nitrate.on),
    }),
  ];
}

function retestSaid(state: PlantingState, { plan }: FeedingReading, today: string): Message[] {
  const heavy = plan.givenN > 0 ? heavyRainLately(state, today, plan.nitrate?.on) : undefined;
  if (!heavy) return [];
  return [
    say("feeding.step.retest", {
      day: onDay(heavy.on),
      excess: measure(heavy.excessMm, "mm"),
      low: measure(heavy.lossKgPerHa.low, "kg/ha"),
      high: measure(heavy.lossKgPerHa.high, "kg/ha"),
    }),
  ];
}

function plantTestsSaid({ plan }: FeedingReading): Message[] {
  const { moved, plantTests } = plan;
  const moving = [moved.n, moved.k];
  const used = new Set(moving.flatMap((m) => m.by));
  return [
    ...moving.flatMap((m) =>
      m.disagree ? [say("feeding.step.tests-disagree", { nutrient: nameOf(m.by[0]) })] : [],
    ),
    ...moving.flatMap((m) =>
      m.disagree ? [] : m.by.slice(0, 1).map((reading) => readingSaid(reading, "moves")),
    ),
    ...plantTests.filter((p) => !used.has(p) && p.says !== "enough").map((p) => readingSaid(p, "shown")),
  ];
}

const nameOf = (reading: PlantTestReading | undefined) =>
  wordOf(`feeding.plant-nutrient.${reading?.nutrient ?? "N"}`);

/** "moves": it moves the rest of the season. "shown": it is told, and moves nothing. */
function readingSaid(reading: PlantTestReading, does: "moves" | "shown"): Message {
  const unit = reading.unit === "%" ? "pct" : reading.unit;
  return say(`feeding.step.plant-${does}-${reading.says}`, {
    day: onDay(reading.test.sampledOn),
    what: wordOf(`feeding.tested.${reading.test.kind}`),
    nutrient: nameOf(reading),
    value: measure(reading.value, unit),
    low: measure(reading.enough.low, unit),
    high: measure(reading.enough.high, unit),
    share: measure(100 * PLANT_TEST_STEP, "pct"),
  });
}
