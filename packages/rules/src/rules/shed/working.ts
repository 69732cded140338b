import type { Working } from "../../core/working.ts";
import type { Binding, Condition, ShedPlan } from "../../food/blend/plan.ts";
import type { ShedState } from "../../states/states.ts";

const DANTZIG = { key: "dantzig-1963", locator: "chapters 5 and 6" };

/** The sum that is least, what it is made of, and each condition it stands against. */
export function workingOf(state: ShedState, plan: ShedPlan, w: Working): void {
  const byId = new Map(state.shed.map((m) => [m.id, m]));
  for (const m of plan.materials) {
    if (m.boughtKg === 0) continue;
    const price = byId.get(m.materialId)?.pricePerKg;
    const expression =
      m.bags === null
        ? `${round(m.boughtKg)} kg x ${price ?? "unknown"}`
        : `${m.bags} bags x ${byId.get(m.materialId)?.bagKg ?? ""} kg x ${price ?? "unknown"}`;
    w.line("c", `bought: ${m.materialId}`, expression, m.unpriced ? null : m.cost, "money");
  }
  w.line(
    "z",
    "least cost; what is in the shed is paid",
    "z = sum of price x bought",
    plan.cost,
    "money",
    DANTZIG,
  );
  w.line(
    "z_min",
    "no plan costs less",
    "divisible plan, or search finished",
    plan.costAtLeast,
    "money",
    DANTZIG,
  );
  for (const b of plan.binding) {
    w.line(
      "y",
      `one ${b.unit} more room would save: ${named(b)}`,
      "dual price, these bags",
      b.worth,
      "money",
      DANTZIG,
    );
    if (plan.materials.some((m) => m.bags !== null)) {
      w.line(
        "y'",
        `the same if bags could be split: ${named(b)}`,
        "dual price",
        b.worthDivisible,
        "money",
        DANTZIG,
      );
    }
  }
  for (const p of plan.plantings) {
    for (const s of p.supplied) {
      const parts = s.parts.map((part) => `${round(part.kgPerHa)} ${part.materialId}`).join(" + ");
      w.line(s.nutrient, `given to ${p.plantingId}`, parts || "nothing", s.kgPerHa, "kg/ha");
    }
  }
}

const round = (value: number): string => String(Number(value.toPrecision(4)));

function named({ condition: c }: Binding): string {
  if (c.kind === "stock") return `stock of ${c.materialId}, ${round(c.limit)} kg`;
  return `${what(c)} ${round(c.limit)}, ${c.plantingIds.join(", ")}`;
}

const what = (c: Exclude<Condition, { kind: "stock" }>): string =>
  c.kind === "label" ? `label of ${c.materialId}` : c.kind === "bound" ? c.bound : `${c.nutrient} ${c.kind}`;
