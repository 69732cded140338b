import { refuse } from "../../core/errors.ts";
import { whyNot } from "../../food/mayUse.ts";
import type { Material } from "../../states/food.ts";
import type { PlantingState } from "../../states/states.ts";

/** The material somebody chose to feed from; undefined where nobody did. Refuses what may not be used here. */
export function chosenMaterial(state: PlantingState, today: string): Material | undefined {
  const { materialId, method } = state.feeding;
  if (materialId === undefined) return undefined;
  const field = "feeding.materialId";
  const material = state.shed.find((m) => m.id === materialId);
  if (!material) {
    const held = state.shed.map((m) => m.id).join(", ");
    refuse(field, "is not in the shed", held === "" ? "a material of the shed" : held, materialId);
  }
  const why = whyNot(state, material, today);
  const ground = state.bed.certification === "none" ? "organic materials only" : state.bed.certification;
  switch (why) {
    case undefined:
    // That passes within a month: the advice says from which day.
    case "ash-with-ammonium":
      return material;
    case "not-certified": {
      const message = `is ${material.certifiedUse} on this bed (${ground})`;
      return refuse(field, message, "a material allowed or restricted on certified ground", materialId);
    }
    case "proof-expired": {
      const message = `has a proof that ends on ${material.certifiedProofUntil}, before it can be given (${ground})`;
      return refuse(field, message, "a material whose proof still holds", materialId);
    }
    case "no-proof": {
      const message = `has no last day of its proof written down (${ground})`;
      return refuse(field, message, "a material whose proof holds on the day it is given", materialId);
    }
    case "raw-manure": {
      const message =
        "raw manure is spread before the plants, never dosed on a planting (7 CFR 205.203(c), taken for all ground); the rule manure-timing says when it may still be spread";
      return refuse(field, message, "composted manure, or another material", materialId);
    }
    case "not-soluble": {
      const message = "a material that does not dissolve may not go through drip lines";
      return refuse("feeding.method", message, "broadcast, banded or watered-in", method);
    }
    default: {
      const message = "moves the soil's pH and is not dosed by this rule";
      return refuse(field, message, "a fertiliser; what limes or sours is judged by soil pH", materialId);
    }
  }
}
