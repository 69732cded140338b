import type { Chart, Table } from "../../core/rule.ts";
import { inOrder } from "../../food/blend/contents.ts";
import type { Condition, ShedPlan } from "../../food/blend/plan.ts";
import { measure, type Param, say } from "../../text/message.ts";
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

/** What each planting asks for of each nutrient and gets; and where each material comes from. */
export function chartsOf(plan: ShedPlan, words: Words): Chart[] {
  const nutrients = inOrder(plan.plantings.flatMap((p) => p.supplied.map((s) => s.nutrient)));
  const perNutrient = nutrients.map((nutrient): Chart => {
    const asking = plan.plantings.flatMap((p) => {
      const supplied = p.supplied.find((s) => s.nutrient === nutrient);
      return supplied ? [{ plantingId: p.plantingId, supplied }] : [];
    });
    return {
      id: `supplied-${nutrient}`,
      title: say("shed.chart.supplied", { nutrient }),
      x: {
        name: say("shed.table.planting"),
        kind: "number",
        labels: asking.map((p) => say("shed.planting", { planting: words.planting(p.plantingId) })),
      },
      y: { name: say("shed.chart.rate"), unit: "kg/ha" },
      series: [
        {
          id: "given",
          name: say("shed.chart.given"),
          style: "bars",
          points: asking.map(({ supplied }, i) => [i + 1, supplied.kgPerHa]),
        },
        {
          id: "least",
          name: say("shed.chart.least"),
          style: "limit",
          points: asking.map(({ supplied }, i) => [i + 1, supplied.leastKgPerHa]),
        },
      ],
    };
  });
  const used = plan.materials.filter((m) => m.usedKg > 0 || m.boughtKg > 0);
  const materials: Chart = {
    id: "materials",
    title: say("shed.chart.materials"),
    x: {
      name: say("shed.table.material"),
      kind: "number",
      labels: used.map((m) => say("shed.material", words.material(m.materialId))),
    },
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

/** What holds the cost where it is: one unit more of room, and what it would save. Nothing where no limit is reached. */
export function bindingTable(plan: ShedPlan, words: Words): Table[] {
  const rows = plan.binding.map(({ condition, worth, worthDivisible, unit }) => [
    words.condition(condition),
    say(`shed.unit.${unit}`),
    worth,
    worthDivisible,
  ]);
  if (rows.length === 0) return [];
  return [
    {
      id: "binding",
      title: say("shed.table.binding"),
      columns: [
        { name: say("shed.table.limit") },
        { name: say("shed.table.by") },
        { name: say("shed.table.saves") },
        { name: say("shed.table.saves-split") },
      ],
      rows,
    },
  ];
}

/** Which demands cannot all hold, and the least that would have to give; each in a row that goes on below itself. */
export function conflictTables(plan: ShedPlan, words: Words): Table[] {
  const conflicts: Table = {
    id: "conflicts",
    title: say("shed.table.conflicts"),
    columns: [{ name: say("shed.table.nth") }, { name: say("shed.table.together") }],
    rows: plan.conflicts.flatMap((set, nth) =>
      set.map((condition, i) => [
        i === 0 ? say("shed.table.conflict", { nth: nth + 1, count: set.length }) : null,
        words.condition(condition),
      ]),
    ),
  };
  const relaxation: Table = {
    id: "relaxation",
    title: say("shed.table.relaxation"),
    columns: [{ name: say("shed.table.limit") }, { name: say("shed.table.change") }],
    rows: plan.relaxation.map(({ condition, by }) => [
      words.condition(condition),
      say(`shed.table.change-${isFloor(condition) ? "less" : "more"}`, { by: sizeOf(condition, by) }),
    ]),
  };
  return [conflicts, relaxation].filter(({ rows }) => rows.length > 0);
}

/** Ratios are held from below, as floors are. */
const isFloor = (c: Condition) => c.kind === "floor" || (c.kind === "bound" && RATIOS.has(c.bound));
const RATIOS: ReadonlySet<string> = new Set(["ca-mg", "ca-k"]);

function sizeOf(c: Condition, by: number): Param {
  if (c.kind === "stock") return measure(by, "kg");
  if (c.kind !== "bound" || c.bound === "chloride" || c.bound === "salt") return measure(by, "kg/ha");
  return c.bound === "ammonium" ? measure(by, "pct") : Number(by.toFixed(2));
}
