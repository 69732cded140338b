import { isHardWater, latestWaterTest, type TankMix } from "../../food/fertigation.ts";
import type { PlantingState } from "../../states/states.ts";
import { COLDEST_COLUMN_C, SOLUBILITY } from "../../tables/solubility.ts";
import { type Message, measure, onDay, say, wordOf } from "../../text/message.ts";
import { amount } from "./amount.ts";
import { type FeedingReading, injectorOf } from "./reading.ts";

/** What goes into which stock tank for the dose, what the water then holds, and what the meter should read. */
export function tankSaid(state: PlantingState, r: FeedingReading, today: string): Message[] {
  const fertigation = injectorOf(state);
  const { tanks, water, dose } = r;
  if (!fertigation || !tanks || !water || !dose) return [];
  if (tanks.kind !== "week") {
    const { kind } = tanks.material;
    return [
      say(`feeding.step.tank-${tanks.kind}`, {
        material: wordOf(`material.${kind}`),
        tank: measure(fertigation.tankC ?? COLDEST_COLUMN_C, "C"),
        coldest: measure(SOLUBILITY[kind]?.atC[0]?.[0] ?? COLDEST_COLUMN_C, "C"),
      }),
    ];
  }
  const { week } = tanks;
  const test = latestWaterTest(state.waterTests, today);
  const ec = test?.ecDSPerM;
  return [
    ...(week.ratio < fertigation.ratio
      ? [
          say("feeding.step.tank-weaker", {
            times: week.load.toFixed(1),
            set: fertigation.ratio,
            ratio: week.ratio,
            tank: measure(fertigation.tankC ?? COLDEST_COLUMN_C, "C"),
          }),
        ]
      : []),
    ...week.mixes.flatMap((mix) => mixSaid(mix, week.mixes)),
    say(`feeding.step.injector-${water.how}`, {
      ratio: week.ratio,
      water: measure(week.waterL, "L"),
      n: measure(week.nMgPerL, "mg/L"),
      k2o: measure(week.k2oMgPerL, "mg/L"),
    }),
    ...(week.feedEc
      ? [
          say(ec === undefined ? "feeding.step.ec-feed" : "feeding.step.ec", {
            low: measure(week.feedEc.low + (ec ?? 0), "dS/m"),
            high: measure(week.feedEc.high + (ec ?? 0), "dS/m"),
            water: measure(ec ?? 0, "dS/m"),
          }),
        ]
      : []),
    ...(isHardWater(test) ? [say("feeding.step.hard-water", { day: onDay(test?.sampledOn ?? today) })] : []),
  ];
}

function mixSaid(mix: TankMix, all: readonly TankMix[]): Message[] {
  const later = mix.turn > 0 && all.find((m) => m.turn === mix.turn) === mix;
  return [
    ...(later ? [say("feeding.step.next-turn")] : []),
    ...mix.parts.map((part) =>
      say("feeding.step.tank", {
        tank: mix.tank,
        material: wordOf(`material.${part.material.kind}`),
        grams: amount(part.gramsPerFill / 1000),
        litres: measure(mix.fillL, "L"),
        fills: mix.fills,
      }),
    ),
  ];
}
