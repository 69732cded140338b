import { magnesiumOf } from "../../soil-acidity/calciumMagnesium.ts";
import type { AcidSoil } from "../../soil-acidity/soil.ts";
import { HIGHEST_PEPPER_PH } from "../../soil-acidity/target.ts";
import type { MaterialKind } from "../../states/food.ts";
import type { BedState } from "../../states/states.ts";
import { isLime } from "../../tables/limeMaterials.ts";
import { bedAreaM2 } from "../../water/ground.ts";
import { SOURING } from "./sulfur.ts";

type Unanswered = NonNullable<BedState["unanswered"]>[number];

/** Lime or sulfur we advised that nobody answered and nothing logged of the kind covers. */
export const openLimings = (state: BedState, today: string): Unanswered[] =>
  (state.unanswered ?? []).filter(
    (u) =>
      u.rule === "lime" &&
      u.due <= today &&
      (u.amountKg ?? 0) > 0 &&
      !(state.applications ?? []).some((a) => {
        const kind = a.kind ?? state.shed?.find((m) => m.id === a.materialId)?.kind;
        return a.on >= u.issuedOn && kind !== undefined && (isLime(kind) || SOURING.has(kind));
      }),
  );

/** The bed as it would be had each been done on its day. What the shed did not hold was of the kind that was to be bought. */
export function asIfDone(state: BedState, open: readonly Unanswered[], soil: AcidSoil): BedState {
  if (open.length === 0) return state;
  const bought: MaterialKind =
    soil.waterPh > HIGHEST_PEPPER_PH.ph
      ? "sulfur"
      : magnesiumOf(soil.test)?.low
        ? "dolomitic-lime"
        : "calcitic-lime";
  const done = open.map((u) => {
    const held = state.shed?.find((m) => m.id === u.materialId);
    return {
      on: u.due,
      materialId: u.materialId ?? bought,
      kind: held?.kind ?? bought,
      nPct: held?.nPct ?? 0,
      p2o5Pct: held?.p2o5Pct ?? 0,
      k2oPct: held?.k2oPct ?? 0,
      amountKg: u.amountKg ?? 0,
      areaM2: bedAreaM2(state.bed),
    };
  });
  return { ...state, applications: [...(state.applications ?? []), ...done] };
}
