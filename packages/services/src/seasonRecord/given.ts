import type { SeasonRow } from "@pith/contract";
import { convertNutrient, givenTo, type Language, renderWord } from "@pith/rules";
import { bedPart } from "../states/parts.ts";
import type { SeasonFacts } from "./gather.ts";
import type { Places } from "./place.ts";
import { isIn } from "./season.ts";

const M2_PER_HA = 10_000;
export const materialWord = (kind: string | null, language: Language) =>
  kind === null ? null : renderWord(`material.${kind}`, { language, units: "metric" });

/** What was applied, with what of it lies on each bed's cropped land and the nutrients in it. */
export function applicationRows(facts: SeasonFacts, at: Places): SeasonRow<"applications">[] {
  return facts.applications
    .filter((a) => isIn(facts.season, a.onDay))
    .map((a) => applicationRow(facts, at, a));
}

function applicationRow(
  facts: SeasonFacts,
  at: Places,
  a: SeasonFacts["applications"][number],
): SeasonRow<"applications"> {
  const material = at.material(a.materialId);
  const bed = bedPart(at.bed(a.bedId));
  const croppedM2 = at.croppedM2(a.bedId);
  const rate = givenTo(bed, { ...a, on: a.onDay });
  const onBed = (kgPerHa: number) => (kgPerHa * croppedM2) / M2_PER_HA;
  const price = priceOf(facts, a);
  return {
    on: a.onDay,
    bed: at.bedName(a.bedId),
    planting: at.plantingName(a.plantingId),
    material: material.name,
    kind: materialWord(a.kind ?? material.kind, facts.language),
    lot: a.lot,
    amountKg: a.amountKg,
    areaM2: a.areaM2,
    onBedKg: a.amountKg * Math.min(1, croppedM2 / a.areaM2),
    nKg: onBed(rate.nKgPerHa),
    p2o5Kg: onBed(rate.p2o5KgPerHa),
    k2oKg: onBed(rate.k2oKgPerHa),
    nKgPerHa: rate.nKgPerHa,
    p2o5KgPerHa: rate.p2o5KgPerHa,
    k2oKgPerHa: rate.k2oKgPerHa,
    pKgPerHa: convertNutrient("P2O5", "P", rate.p2o5KgPerHa).amount,
    kKgPerHa: convertNutrient("K2O", "K", rate.k2oKgPerHa).amount,
    certifiedUse: material.certifiedUse,
    proof: material.certifiedProof,
    proofUntil: material.certifiedProofUntil,
    labourMinutes: a.minutesOfLabour,
    costMoney: price === null ? null : a.amountKg * price,
    writtenBy: at.person(a.recordedBy),
    bedId: a.bedId,
    id: a.id,
  };
}

/** What its lot was bought for; else what the material costs. */
function priceOf(
  facts: SeasonFacts,
  { materialId, lot }: SeasonFacts["applications"][number],
): number | null {
  const bought = facts.deliveries.find((d) => lot !== null && d.materialId === materialId && d.lot === lot);
  return bought?.pricePerKg ?? facts.materials.find((m) => m.id === materialId)?.pricePerKg ?? null;
}

/** Litres of a whole watering: as metered, else minutes times the valve's flow. */
export const litresOf = (
  { litres, minutes }: { litres: number | null; minutes: number | null },
  flowLPerH: number,
): number | null => litres ?? (minutes === null ? null : (minutes / 60) * flowLPerH);

/** Waterings by bed: a valve's litres and its labour are shared over its beds by their cropped ground. */
export function wateringRows(facts: SeasonFacts, at: Places): SeasonRow<"waterings">[] {
  return facts.waterings
    .filter((w) => isIn(facts.season, w.onDay))
    .flatMap((w) => {
      const valve = at.valve(w.valveId);
      const litres = litresOf(w, valve.flowLPerH);
      const beds = at.bedsOf(w.valveId);
      const allM2 = beds.reduce((sum, bed) => sum + at.croppedM2(bed.id), 0);
      const nitrateMgPerL = nitrateOf(facts, valve, w.onDay);
      return beds.map((bed) => {
        const share = at.croppedM2(bed.id) / allM2;
        const bedLitres = litres === null ? null : litres * share;
        return {
          on: w.onDay,
          bed: bed.name,
          valve: valve.name,
          valveMinutes: w.minutes,
          valveLitres: litres,
          from: w.metered ? ("meter" as const) : ("minutes-and-flow" as const),
          bedLitres,
          bedMm: bedLitres === null ? null : bedLitres / at.croppedM2(bed.id),
          // Milligrams to kilograms.
          nKg: bedLitres === null || nitrateMgPerL === null ? null : (bedLitres * nitrateMgPerL) / 1e6,
          labourMinutes: w.minutesOfLabour === null ? null : w.minutesOfLabour * share,
          writtenBy: at.person(w.recordedBy),
          bedId: bed.id,
          id: w.id,
        };
      });
    });
}

/** Nitrate nitrogen of a valve's water on a day: its own newest test, else the site's; null where neither says. */
function nitrateOf(facts: SeasonFacts, valve: SeasonFacts["valves"][number], day: string): number | null {
  const known = facts.waterTests
    .filter((t) => t.siteId === valve.siteId && t.sampledOn <= day)
    .flatMap((t) => {
      const { nitrateNMgPerL } = t.result as { nitrateNMgPerL?: number };
      return nitrateNMgPerL === undefined ? [] : [{ valveId: t.valveId, nitrateNMgPerL }];
    });
  const newest = (valveId: string | null) =>
    known.filter((t) => t.valveId === valveId).at(-1)?.nitrateNMgPerL;
  return newest(valve.id) ?? newest(null) ?? null;
}
