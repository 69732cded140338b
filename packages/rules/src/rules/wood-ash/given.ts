import { addDays } from "../../core/days.ts";
import type { PlantingState } from "../../states/states.ts";
import { bedAreaM2 } from "../../water/ground.ts";

type Unanswered = PlantingState["unanswered"][number];

const DAYS_A_YEAR = 365;

/** Ash of the past year on this bed [kg], logged: where it went on more ground, this bed's share. */
export function ashOfTheYearKg(state: PlantingState, today: string): number {
  const since = addDays(today, -DAYS_A_YEAR);
  return state.applications
    .filter((a) => a.on > since && a.on <= today && isAsh(state, a))
    .reduce((sum, a) => sum + onThisBed(state, a.amountKg, a.areaM2), 0);
}

const isAsh = (state: PlantingState, a: PlantingState["applications"][number]): boolean =>
  (a.kind ?? state.shed.find((m) => m.id === a.materialId)?.kind) === "wood-ash";

const onThisBed = (state: PlantingState, kg: number, areaM2: number): number =>
  (kg * bedAreaM2(state.bed)) / Math.max(areaM2, bedAreaM2(state.bed));

/** Ash we advised that nobody answered and no logged ash covers. */
export const openAsh = (state: PlantingState, today: string): Unanswered[] =>
  state.unanswered.filter(
    (u) =>
      u.rule === "wood-ash" &&
      u.due <= today &&
      u.due > addDays(today, -DAYS_A_YEAR) &&
      !state.applications.some((a) => a.on >= u.issuedOn && isAsh(state, a)),
  );

export const openAshKg = (open: Unanswered[]): number => open.reduce((sum, u) => sum + (u.amountKg ?? 0), 0);
