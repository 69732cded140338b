import { daysBetween } from "../../core/days.ts";
import type { Table } from "../../core/rule.ts";
import type { FeedingDates } from "../../food/curve.ts";
import { inWater, latestWaterTest } from "../../food/fertigation.ts";
import { tankFills } from "../../food/tanks.ts";
import type { PlantingState } from "../../states/states.ts";
import { say, wordOf } from "../../text/message.ts";
import { type FeedingReading, injectorOf } from "./reading.ts";

const stageOn = ({ buds, set }: FeedingDates, day: string) =>
  say(`feeding.stage.${day < buds ? "early" : day < set ? "mid" : "fruit-set"}`);

/**
 * The season that is left, week by week: stage, nutrients on cropped land, each material on this bed, and through an injector
 * which tank, what the water holds and what the meter reads.
 */
export function weeklyTable(state: PlantingState, r: FeedingReading, today: string): Table[] {
  const { plan, schedule, water } = r;
  if (schedule.materials.length === 0) return [];
  const fertigation = injectorOf(state);
  const materials = schedule.materials.map((m) => m.material);
  const fills = fertigation ? tankFills(materials, fertigation.tanks) : [];
  const waterEc = latestWaterTest(state.waterTests, today)?.ecDSPerM;
  // The clear water's own is not zero where nobody measured it: then what the feed adds is said.
  const meter = waterEc === undefined ? "ec-feed" : "ec";
  const p2o5 = (i: number) =>
    schedule.materials.reduce((sum, m) => sum + ((m.weeksKg[i] ?? 0) * m.material.p2o5Pct) / 100, 0) /
    (r.demand.areaM2 / 10_000);
  return [
    {
      id: "feeding-weeks",
      title: say("feeding.table.title"),
      columns: [
        { name: say("feeding.table.week") },
        { name: say("feeding.table.stage") },
        { name: say("feeding.table.n"), unit: "kg/ha" },
        { name: say("feeding.table.p2o5"), unit: "kg/ha" },
        { name: say("feeding.table.k2o"), unit: "kg/ha" },
        ...materials.map((m) => {
          const tank = fills.find((f) => f.materials.includes(m))?.tank;
          const material = wordOf(`material.${m.kind}`);
          return {
            name: tank
              ? say("feeding.table.material-tank", { material, tank })
              : say("feeding.table.material", { material }),
            unit: "kg" as const,
            materialId: m.id,
            ...(tank && { tank }),
          };
        }),
        ...(water
          ? [
              { name: say("feeding.table.ppm"), unit: "mg/L" as const },
              { name: say(`feeding.table.${meter}-low`), unit: "dS/m" as const },
              { name: say(`feeding.table.${meter}-high`), unit: "dS/m" as const },
            ]
          : []),
      ],
      rows: plan.weeksN
        .map(({ from }, i) => [
          from,
          stageOn(plan.dates, from),
          schedule.weeksN[i] ?? 0,
          p2o5(i),
          schedule.weeksK2o[i] ?? 0,
          ...schedule.materials.map((m) => m.weeksKg[i] ?? 0),
          ...injected(i),
          // A week that is held back gives nothing.
        ])
        .slice(r.code === "hold-back" ? 1 : 0),
    },
  ];

  function injected(i: number): (number | null)[] {
    if (!water) return [];
    const parts = schedule.materials.map((m) => ({ material: m.material, kg: m.weeksKg[i] ?? 0 }));
    // The last week may be short, and less water then carries its feed.
    const days = Math.min(7, daysBetween(plan.weeksN[i]?.from ?? plan.from, plan.dates.end));
    const { nMgPerL, feedEc } = inWater(parts, (water.litres * days) / 7);
    return [
      nMgPerL,
      feedEc ? feedEc.low + (waterEc ?? 0) : null,
      feedEc ? feedEc.high + (waterEc ?? 0) : null,
    ];
  }
}
