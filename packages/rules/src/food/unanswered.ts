import type { PlantingState } from "../states/states.ts";
import { croppedAreaM2 } from "../water/ground.ts";
import { countedNPct } from "./available.ts";
import type { GivenNutrients } from "./given.ts";

type Unanswered = PlantingState["unanswered"][number];

/** Feedings we advised that nobody answered and no logged application covers. */
export const openFeedings = (state: PlantingState, today: string): Unanswered[] =>
  state.unanswered.filter(
    (u) =>
      u.rule === "feeding" &&
      u.due <= today &&
      !state.applications.some(
        (a) => a.on >= u.issuedOn && (u.materialId === undefined || a.materialId === u.materialId),
      ),
  );

/** What each would have brought, if it was done. Phosphate and potash only where material and amount are known. */
export function givenIfDone(open: Unanswered[], state: PlantingState): GivenNutrients[] {
  return open.map((u) => {
    const material = state.shed.find((m) => m.id === u.materialId);
    const kgPerHa = (pct: number | undefined) =>
      ((u.amountKg ?? 0) * (pct ?? 0) * 100) / croppedAreaM2(state.bed);
    return {
      on: u.due,
      nKgPerHa: u.nKgPerHa ?? kgPerHa(material && countedNPct(material)),
      p2o5KgPerHa: kgPerHa(material?.p2o5Pct),
      k2oKgPerHa: kgPerHa(material?.k2oPct),
    };
  });
}
