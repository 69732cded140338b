import type { Material } from "../states/food.ts";
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

/** What each would have brought, if it was done, with all that went alongside. Phosphate and potash only of known amounts. */
export function givenIfDone(open: Unanswered[], state: PlantingState): GivenNutrients[] {
  const areaM2 = croppedAreaM2(state.bed);
  return open.map((u) => {
    const parts = [{ materialId: u.materialId, amountKg: u.amountKg ?? 0 }, ...(u.alongside ?? [])].flatMap(
      ({ materialId, amountKg }) => {
        const material = state.shed.find((m) => m.id === materialId);
        return material ? [{ material, amountKg }] : [];
      },
    );
    const kgPerHa = (pct: (m: Material) => number) =>
      parts.reduce((sum, p) => sum + (p.amountKg * pct(p.material) * 100) / areaM2, 0);
    return {
      on: u.due,
      nKgPerHa: u.nKgPerHa ?? kgPerHa(countedNPct),
      p2o5KgPerHa: kgPerHa((m) => m.p2o5Pct),
      k2oKgPerHa: kgPerHa((m) => m.k2oPct),
    };
  });
}
