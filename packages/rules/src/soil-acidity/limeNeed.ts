import { DomainError } from "../core/errors.ts";
import type { Working } from "../core/working.ts";
import {
  type LimeMethod,
  METHOD_BASE,
  PH_AFTER_METHODS,
  type PhAfterMethod,
  phAfterLime,
} from "../quantities/soil/limeMethods.ts";
import { limeRequirement, limeRequirementQuantity } from "../quantities/soil/limeRequirement.ts";
import type { AcidSoil } from "./soil.ts";

/** Calcium carbonate a soil needs, by the one relation that fits what its laboratory measured. All rates for ground limed. */
export interface LimeNeed {
  method: LimeMethod;
  wantedPh: number;
  /** The pH reckoned with; another than wanted where the method has no figure for that. */
  targetPh: number;
  /** For the depth worked [kg/ha]. */
  callKgPerHa: number;
  /** Of earlier limings, still to act [kg/ha]. */
  creditKgPerHa: number;
  needKgPerHa: number;
}

/** Why no relation fits: nothing was measured, or with a buffer whose coefficients were not found published. */
export type NoRelation = { lacks: "buffer" } | { lacks: "coefficients"; method: string };

type Relation = { method: LimeMethod; bufferPh?: number; acidityCmolPerKg?: number };

const WITH_FIGURES = ["mehlich", "adams-evans", "smp"] as const;

/** The relation for what was measured: the buffer of its own laboratory first, else exchangeable acidity. */
export function relationOf({ test }: AcidSoil): Relation | NoRelation {
  const buffer = test.bufferPh;
  const method = WITH_FIGURES.find((m) => m === buffer?.method);
  if (buffer && method) return { method, bufferPh: buffer.value };
  if (test.acidityCmolPerKg !== undefined) {
    return { method: "exchangeable-acidity", acidityCmolPerKg: test.acidityCmolPerKg };
  }
  return buffer ? { lacks: "coefficients", method: buffer.method } : { lacks: "buffer" };
}

/** The nearest pH for which a method has figures; exchangeable acidity has two, the next above is taken. */
export function methodTarget(method: LimeMethod, wantedPh: number): number {
  switch (method) {
    case "mehlich":
      return Math.min(wantedPh, 6.6);
    case "smp":
    case "tri-state":
      return Math.min(Math.max(wantedPh, 6), 7);
    case "exchangeable-acidity":
      return wantedPh <= 6.5 ? 6.5 : 7;
    case "adams-evans":
      return wantedPh;
  }
}

/** What is needed to come from this soil to that pH. Writes its steps into `w`. Refuses a buffer pH beyond its relation. */
export function limeNeedOf(
  soil: AcidSoil,
  wantedPh: number,
  stillWorkingKgPerHa: number,
  w: Working,
): LimeNeed | NoRelation {
  const relation = relationOf(soil);
  if ("lacks" in relation) return relation;
  const { method } = relation;
  const targetPh = methodTarget(method, wantedPh);
  const callKgPerHa = named(soil, () => callFor(soil, relation, targetPh, w));
  const needKgPerHa = Math.max(0, callKgPerHa - stillWorkingKgPerHa);
  if (stillWorkingKgPerHa > 0) {
    w.line(
      "credit",
      "calcium carbonate given earlier and still to act",
      "8 % of it is used up each month in mineral soil, 16 % in organic soil",
      stillWorkingKgPerHa,
      "kg/ha",
      { key: "mehlich-buffer-ncda", locator: "residual credit (SN-602)" },
    );
  }
  w.line("need", "calcium carbonate to give", "LR - credit, not below 0", needKgPerHa, "kg/ha");
  return { method, wantedPh, targetPh, callKgPerHa, creditKgPerHa: stillWorkingKgPerHa, needKgPerHa };
}

function callFor(soil: AcidSoil, relation: Relation, targetPh: number, w: Working): number {
  const input = { ...relation, waterPh: soil.waterPh, depthCm: soil.depthCm };
  const answer = limeRequirementQuantity.compute({ ...input, targetPh });
  w.include({ working: answer.working.slice(0, 2), estimated: [] });
  const call = answer.value.caco3KgPerHa;
  if (relation.method === "smp" && (targetPh === 6 || targetPh === 6.5)) {
    w.line(
      "LR beside",
      "the same by the Tri-State equation",
      `lime test index ${(10 * (relation.bufferPh ?? 0)).toFixed(0)}, target ${targetPh}`,
      limeRequirement({ ...input, method: "tri-state", targetPh }).caco3KgPerHa,
      "kg/ha",
      METHOD_BASE["tri-state"].source,
    );
  }
  if (relation.method !== "exchangeable-acidity" || targetPh !== 7) return call;
  // Its least rate for pH 6.5 is above its rate for 7.0 where acidity is small; more target never takes less lime.
  return w.line(
    "LR",
    "not less than the same method gives for pH 6.5",
    "max(LR to 7.0, LR to 6.5)",
    Math.max(call, limeRequirement({ ...input, targetPh: 6.5 }).caco3KgPerHa),
    "kg/ha",
    METHOD_BASE["exchangeable-acidity"].source,
  );
}

/** A refusal of the quantity, said in the state's own field. */
function named<T>(soil: AcidSoil, compute: () => T): T {
  try {
    return compute();
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    const at: Record<string, string> = {
      bufferPh: `${soil.path}.bufferPh.value`,
      waterPh: `${soil.path}.waterPh`,
      acidityCmolPerKg: `${soil.path}.acidityCmolPerKg`,
      targetPh: "settings.limeTargetPh",
    };
    throw new DomainError(error.problems.map((p) => ({ ...p, field: at[p.field] ?? p.field })));
  }
}

/** The buffer whose relation can be turned round; undefined for exchangeable acidity and for none. */
function predictorOf(soil: AcidSoil): { method: PhAfterMethod; bufferPh: number } | undefined {
  const buffer = soil.test.bufferPh;
  const method = PH_AFTER_METHODS.find((m) => m === buffer?.method);
  return buffer && method ? { method, bufferPh: buffer.value } : undefined;
}

/** The pH that fully effective calcium carbonate on this ground would leave; null where no relation can say. */
export function phAfter(soil: AcidSoil, caco3KgPerHa: number): number | null {
  const by = predictorOf(soil);
  if (!by) return null;
  const atBase = (caco3KgPerHa * METHOD_BASE[by.method].depthCm) / soil.depthCm;
  return named(soil, () => phAfterLime(by.method, by.bufferPh, soil.waterPh, atBase));
}
