import { addDays } from "../core/days.ts";
import { APART_DAYS, losesAmmonia } from "../soil-acidity/ammonium.ts";
import type { Material, MaterialKind } from "../states/food.ts";
import type { PlantingState } from "../states/states.ts";

/** Alkaline in the soil: they drive ammonium and urea off as ammonia (ash: SN-525; lime the same way, common practice). */
const DRIVES_OFF_AMMONIA: ReadonlySet<MaterialKind> = new Set<MaterialKind>([
  "wood-ash",
  "hydrated-lime",
  "burnt-lime",
  "calcitic-lime",
  "dolomitic-lime",
]);

/** The day on which a dose decided today can first be given: today, or the day of setting out yet to come. */
export function doseDay({ planting }: PlantingState, today: string): string {
  const start = planting.setOutOn ?? planting.plannedSetOutOn;
  return start !== undefined && start > today ? start : today;
}

/** Ash or lime that lies less than a month back on the dose day, and the day from which ammonium may follow it. */
export function ashApart(state: PlantingState, today: string): { on: string; from: string } | undefined {
  const day = doseDay(state, today);
  const kindOf = (a: PlantingState["applications"][number]) =>
    a.kind ?? state.shed.find((m) => m.id === a.materialId)?.kind;
  const [on] = state.applications
    .filter((a) => {
      const kind = kindOf(a);
      return kind !== undefined && DRIVES_OFF_AMMONIA.has(kind) && a.amountKg > 0 && a.on <= today;
    })
    .map((a) => a.on)
    .toSorted()
    .toReversed();
  if (on === undefined) return undefined;
  const from = addDays(on, APART_DAYS);
  return day < from ? { on, from } : undefined;
}

/** Whether a material of the shed holds ammonium or urea, or cannot be known to be free of it. */
export const holdsAmmonium = (m: Material): boolean => losesAmmonia({ ...m, composted: m.manure?.composted });
