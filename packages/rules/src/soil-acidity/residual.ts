import { daysBetween } from "../core/days.ts";
import { limeCredit } from "../quantities/soil/limeCredit.ts";
import type { Application, Material, MaterialKind } from "../states/food.ts";
import type { Bed } from "../states/parts.ts";
import { isLime } from "../tables/limeMaterials.ts";
import { ASH_RANGE } from "../tables/woodAsh.ts";
import { bedAreaM2 } from "../water/ground.ts";
import { qualityOf } from "./quality.ts";
import type { AcidSoil } from "./soil.ts";

const DAYS_PER_MONTH = 365.25 / 12;

/** A bed, what was given on it and what the shed holds. */
interface Limed {
  bed: Bed;
  applications?: readonly Application[] | undefined;
  shed?: readonly Material[] | undefined;
}

/** Ash that nobody analysed is worth this end of what is published: the low one where too little lime is the harm. */
type AshEnd = "low" | "high";

/**
 * Calcium carbonate of earlier lime and ash that the sample's pH does not show yet [kg/ha]. What was given after
 * sampling counts whole. The material's own analysis where the shed still holds it, else that of its kind.
 */
export function stillWorkingKgPerHa(limed: Limed, soil: AcidSoil, today: string, ashEnd: AshEnd): number {
  const ash = ashSince(limed, soil, today).reduce((sum, a) => {
    const cce = heldOf(limed, a)?.ccePct;
    const ccePct = cce !== undefined && cce > 0 ? cce : ASH_RANGE.ccePct[ashEnd];
    return sum + (kgPerHa(limed.bed, a) * ccePct) / 100;
  }, 0);
  const applications = limed.applications ?? [];
  return applications.reduce((sum, a) => {
    const kind = kindOf(limed, a);
    if (!isLime(kind) || a.on > today) return sum;
    const caco3 = kgPerHa(limed.bed, a) * (qualityOf(kind, heldOf(limed, a)).effectivePct / 100);
    const months = Math.max(0, daysBetween(a.on, soil.test.sampledOn) / DAYS_PER_MONTH);
    const { creditKgPerHa } = limeCredit({
      limeKgPerHa: caco3,
      months,
      soil: soil.organic ? "organic" : "mineral",
    });
    return sum + creditKgPerHa;
  }, ash);
}

/** Wood ash given after the sample; older ash shows in its pH, because ash acts within weeks. */
export function ashSince(limed: Limed, soil: AcidSoil, today: string): Application[] {
  const applications = limed.applications ?? [];
  return applications.filter(
    (a) => kindOf(limed, a) === "wood-ash" && a.on > soil.test.sampledOn && a.on <= today,
  );
}

/** Days on which lime was given after the sample, in order. */
export const limedSince = (limed: Limed, soil: AcidSoil, today: string): string[] =>
  (limed.applications ?? [])
    .filter((a) => isLime(kindOf(limed, a)) && a.on > soil.test.sampledOn && a.on <= today)
    .map((a) => a.on)
    .toSorted();

/** Where it went on less than the bed all of it is this bed's, over the whole bed; where on more, the bed has its share. */
const kgPerHa = (bed: Bed, a: Application): number =>
  (a.amountKg * 10_000) / Math.max(a.areaM2, bedAreaM2(bed));

const heldOf = ({ shed }: Limed, a: Application): Material | undefined =>
  shed?.find((m) => m.id === a.materialId);

const kindOf = (limed: Limed, a: Application): MaterialKind | undefined => a.kind ?? heldOf(limed, a)?.kind;
