import type { Model, RowMeaning } from "./model.ts";
import type { Condition } from "./plan.ts";

/** A row of the programme as people know it: whose it is and its limit in its own unit. */
export function conditionOf(model: Model, means: RowMeaning): Condition {
  if (means.kind === "stock") {
    const { materialId } = means;
    return { kind: "stock", materialId, limit: model.sources.get(materialId)?.stockKg ?? 0 };
  }
  const group = model.groups[means.group];
  const plantingIds = group?.demands.map((d) => d.plantingId) ?? [];
  if (means.kind === "label") {
    const { materialId } = means;
    const limit = model.sources.get(materialId)?.material.labelMostKgPerHa ?? 0;
    return { kind: "label", plantingIds, materialId, limit };
  }
  if (means.kind === "bound") {
    const { bound } = means;
    const limits = {
      chloride: group?.bounds.chlorideMostKgPerHa,
      ammonium: group?.bounds.ammoniumMostPct,
      salt: group?.bounds.saltMostKgPerHa,
      "ca-mg": group?.bounds.caToMgLeast,
      "ca-k": group?.bounds.caToKLeast,
    };
    return { kind: "bound", plantingIds, bound, limit: limits[bound] ?? 0 };
  }
  const { kind, nutrient } = means;
  const need = group?.needs.find((n) => n.nutrient === nutrient);
  return { kind, plantingIds, nutrient, limit: (kind === "floor" ? need?.least : need?.most) ?? 0 };
}
