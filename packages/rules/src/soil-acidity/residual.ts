import { daysBetween } from "../core/days.ts";
import { limeCredit } from "../quantities/soil/limeCredit.ts";
import type { Application, Material, MaterialKind } from "../states/food.ts";
import { isLime } from "../tables/limeMaterials.ts";
import { qualityOf } from "./quality.ts";
import type { AcidSoil } from "./soil.ts";

const DAYS_PER_MONTH = 365.25 / 12;
/**
 * Calcium carbonate of earlier limings that the sample's pH does not show yet [kg/ha]. What was given after sampling
 * counts whole. The material's own analysis where the shed still holds it, else that of its kind.
 */
export function stillWorkingKgPerHa(
  applications: readonly Application[],
  shed: readonly Material[],
  soil: AcidSoil,
  today: string,
): number {
  return applications
    .filter((a) => isLime(a.kind ?? kindIn(shed, a.materialId)) && a.on <= today)
    .reduce((sum, a) => {
      const held = shed.find((m) => m.id === a.materialId);
      const kind = a.kind ?? held?.kind;
      if (!isLime(kind)) return sum;
      const caco3 = ((a.amountKg * 10_000) / a.areaM2) * (qualityOf(kind, held).effectivePct / 100);
      const months = Math.max(0, daysBetween(a.on, soil.test.sampledOn) / DAYS_PER_MONTH);
      const { creditKgPerHa } = limeCredit({
        limeKgPerHa: caco3,
        months,
        soil: soil.organic ? "organic" : "mineral",
      });
      return sum + creditKgPerHa;
    }, 0);
}

const kindIn = (shed: readonly Material[], id: string): MaterialKind | undefined =>
  shed.find((m) => m.id === id)?.kind;
