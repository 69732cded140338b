import type { Chart, Table } from "../../core/rule.ts";
import { inOrder } from "../../food/blend/contents.ts";
import type { ShedPlan } from "../../food/blend/plan.ts";
import { say } from "../../text/message.ts";
import { whyMessage } from "./steps.ts";
import type { Words } from "./words.ts";

/** What each planting gets of each material. */
export function sharesTable(plan: ShedPlan, words: Words): Table {
  return {
    id: "shares",
    title: say("shed.table.shares"),
    columns: [
      { name: say("shed.table.planting") },
      { name: say("shed.table.material") },
      { name: say("shed.table.amount"), unit: "kg" },
      { name: say("shed.table.rate"), unit: "kg/ha" },
      { name: say("shed.table.from-stock"), unit: "kg" },
    ],
    rows: plan.plantings.flatMap((p) =>
      p.allotment.materials.map((m) => [
        say("shed.planting", { planting: words.planting(p.plantingId) }),
        say("shed.material", words.material(m.materialId)),
        m.kg,
        (m.kg / p.areaM2) * 10_000,
        m.fromStockKg,
      ]),
    ),
  };
}

/** Every material of the shed and why it is in or out. */
export function whyTable(plan: ShedPlan, words: Words): Table {
  return {
    id: "why",
    title: say("shed.table.why-title"),
    columns: [
      { name: say("shed.table.material") },
      { name: say("shed.table.amount"), unit: "kg" },
      { name: say("shed.table.why") },
    ],
    rows: plan.materials.flatMap((use) =>
      use.why
        .flatMap((why) => whyMessage(why, words))
        .map((text, i) => [
          i === 0 ? say("shed.material", words.material(use.materialId)) : null,
          i === 0 ? use.usedKg : null,
          text,
        ]),
    ),
  };
}

/** What each planting gets of each nutrient against what it asks for. */
export function suppliedTable(plan: ShedPlan, words: Words): Table {
  return {
    id: "supplied",
    title: say("shed.table.supplied"),
    columns: [
      { name: say("shed.table.planting") },
      { name: say("shed.table.nutrient") },
      { name: say("shed.table.least"), unit: "kg/ha" },
      { name: say("shed.table.most"), unit: "kg/ha" },
      { name: say("shed.table.given"), unit: "kg/ha" },
    ],
    rows: plan.plantings.flatMap((p) =>
      p.supplied.map((s) => [
        say("shed.planting", { planting: words.planting(p.plantingId) }),
        say("shed.nutrient", { nutrient: s.nutrient }),
        s.leastKgPerHa,
        s.mostKgPerHa,
        s.kgPerHa,
      ]),
    ),
  };
}

/** A nutrient's bars over the plantings by their number; and the materials' over theirs. */
export function chartsOf(plan: ShedPlan): Chart[] {
  const nutrients = inOrder(plan.plantings.flatMap((p) => p.supplied.map((s) => s.nutrient)));
  const perNutrient = nutrients.map((nutrient): Chart => {
    const at = plan.plantings.map((p, i) => ({
      x: i + 1,
      s: p.supplied.find((s) => s.nutrient === nutrient),
    }));
    return {
      id: `supplied-${nutrient}`,
      title: say("shed.chart.supplied", { nutrient }),
      x: { name: say("shed.chart.planting"), kind: "number" },
      y: { name: say("shed.chart.rate"), unit: "kg/ha" },
      series: [
        {
          id: "given",
          name: say("shed.chart.given"),
          style: "bars",
          points: at.map(({ x, s }) => [x, s?.kgPerHa ?? null]),
        },
        {
          id: "least",
          name: say("shed.chart.least"),
          style: "limit",
          points: at.map(({ x, s }) => [x, s?.leastKgPerHa ?? null]),
        },
      ],
    };
  });
  const used = plan.materials.filter((m) => m.usedKg > 0 || m.boughtKg > 0);
  const materials: Chart = {
    id: "materials",
    title: say("shed.chart.materials"),
    x: { name: say("shed.chart.material"), kind: "number" },
    y: { name: say("shed.chart.amount"), unit: "kg" },
    series: [
      {
        id: "from-stock",
        name: say("shed.chart.from-stock"),
        style: "bars",
        points: used.map((m, i) => [i + 1, m.fromStockKg]),
      },
      {
        id: "bought",
        name: say("shed.chart.bought"),
        style: "bars",
        points: used.map((m, i) => [i + 1, m.boughtKg]),
      },
    ],
  };
  return used.length > 0 ? [materials, ...perNutrient] : perNutrient;
}
