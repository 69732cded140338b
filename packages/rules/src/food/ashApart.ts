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

interface Apart {
  on: string;
  /** The day from which ammonium may follow. */
  from: string;
  /** Logged; or else advised and never answered. */
  sure: boolean;
}

/** Ash or lime, given or advised and never answered, that lies less than a month back on the dose day. */
export function ashApart(state: PlantingState, today: string): Apart | undefined {
  const logged = liming(state, today).map((a) => ({ on: a.on, sure: true }));
  const open = openAshOrLime(state, today).map((u) => ({ on: u.due, sure: false }));
  const last = [...open, ...logged].toSorted((a, b) => (a.on < b.on ? -1 : 1)).at(-1);
  if (!last) return undefined;
  const from = addDays(last.on, APART_DAYS);
  return doseDay(state, today) < from ? { ...last, from } : undefined;
}

const isLiming = (state: PlantingState, of: { kind?: MaterialKind | undefined; materialId: string }) => {
  const kind = of.kind ?? state.shed.find((m) => m.id === of.materialId)?.kind;
  return kind !== undefined && DRIVES_OFF_AMMONIA.has(kind);
};

const liming = (state: PlantingState, today: string) =>
  state.applications.filter((a) => a.amountKg > 0 && a.on <= today && isLiming(state, a));

const ADVISED_BY: ReadonlySet<string> = new Set(["wood-ash", "lime"]);

/** Ash or lime we advised that nobody answered and none logged covers; what is not in the shed is taken for lime. */
const openAshOrLime = (state: PlantingState, today: string): PlantingState["unanswered"] =>
  state.unanswered.filter(
    ({ rule, due, issuedOn, amountKg, materialId }) =>
      ADVISED_BY.has(rule) &&
      due <= today &&
      (amountKg ?? 0) > 0 &&
      (materialId === undefined || isLiming(state, { materialId })) &&
      !liming(state, today).some((a) => a.on >= issuedOn),
  );

/** The same planting had none of it been spread. */
export function withoutOpenAsh(state: PlantingState, today: string): PlantingState {
  const open = openAshOrLime(state, today);
  return { ...state, unanswered: state.unanswered.filter((u) => !open.includes(u)) };
}

/** Whether a material of the shed holds ammonium or urea, or cannot be known to be free of it. */
export const holdsAmmonium = (m: Material): boolean => losesAmmonia({ ...m, composted: m.manure?.composted });
