import { isHardWater, latestWaterTest, type TankMix } from "../../food/fertigation.ts";
import type { Dose } from "../../food/schedule.ts";
import { type TankFill, tankFills } from "../../food/tanks.ts";
import type { PlantingState } from "../../states/states.ts";
import { COLDEST_COLUMN_C, SOLUBILITY } from "../../tables/solubility.ts";
import { type Message, measure, onDay, say, wordOf } from "../../text/message.ts";
import { amount } from "./amount.ts";
import { type FeedingReading, injectorOf } from "./reading.ts";

/** What goes into which stock tank for the dose, what the water then holds, and what the meter should read. */
export function tankSaid(state: PlantingState, r: FeedingReading, today: string): Message[] {
  const fertigation = injectorOf(state);
  const { tanks, water, dose } = r;
  if (!fertigation || !dose) return [];
  const test = latestWaterTest(state.waterTests, today);
  const hard = isHardWater(test)
    ? [say("feeding.step.hard-water", { day: onDay(test?.sampledOn ?? today) })]
    : [];
  if (!tanks || !water)
    return [...gramsSaid(dose, fertigation.tanks), say("feeding.step.tank-no-water"), ...hard];
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
    ...hard,
  ];
}

/** Which tank, and how much; how strong it may be made nobody can say without the water that carries it. */
function gramsSaid(dose: Dose, tanks: number): Message[] {
  const fills = tankFills(
    dose.parts.map((p) => p.material),
    tanks,
  );
  return fills.flatMap((fill) => [
    ...startsTurn(fill, fills),
    ...fill.materials.map((material) =>
      say("feeding.step.tank-grams", {
        tank: fill.tank,
        material: wordOf(`material.${material.kind}`),
        grams: amount(dose.parts.find((p) => p.material === material)?.kg ?? 0),
      }),
    ),
  ]);
}

/** Between two turns the tanks are rinsed. */
const startsTurn = (fill: TankFill, all: readonly TankFill[]): Message[] =>
  fill.turn > 0 && all.find((m) => m.turn === fill.turn) === fill ? [say("feeding.step.next-turn")] : [];

function mixSaid(mix: TankMix, all: readonly TankMix[]): Message[] {
  return [
    ...startsTurn(mix, all),
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
