import type { SeasonRecord, SeasonRow } from "@pith/contract";
import { addDays } from "@pith/rules";
import type { SeasonFacts } from "./gather.ts";
import { litresOf } from "./given.ts";
import type { Places } from "./place.ts";
import { isIn } from "./season.ts";

/** Lots traced both ways. What went onto a bed counts for all that grew there later, whichever planting it was meant for. */

type Harvest = SeasonFacts["harvests"][number];
type Seen = Pick<SeasonRow<"harvestLots">, "saw" | "on"> & Partial<SeasonRow<"harvestLots">>;

/** How far before sowing something given to the bed still counts: last autumn's manure is in this summer's fruit. */
const BEFORE_SOWING_DAYS = 366;

const NOTHING = { what: null, materialLot: null, amountKg: null, waterings: null, waterMm: null };

/** Back from each harvest of the season to bed and planting, and what they saw until it was picked. */
export function harvestLotRows(facts: SeasonFacts, at: Places): SeasonRow<"harvestLots">[] {
  return facts.harvests
    .filter((h) => isIn(facts.season, h.onDay))
    .flatMap((h) => {
      const planting = at.planting(h.plantingId);
      const head = {
        lot: h.lot,
        pickedOn: h.onDay,
        pickedKg: h.kg,
        planting: planting.varietyName,
        bed: at.bedName(planting.bedId),
      };
      return seenBefore(facts, at, h).map((seen) => ({ ...head, ...NOTHING, ...seen, harvestId: h.id }));
    });
}

function seenBefore(facts: SeasonFacts, at: Places, harvest: Harvest): Seen[] {
  const { bedId, sownOn, setOutOn } = at.planting(harvest.plantingId);
  const since = addDays(sownOn, -BEFORE_SOWING_DAYS);
  const stands = (day: string) => day >= (setOutOn ?? sownOn) && day <= harvest.onDay;
  const applied = facts.applications.filter(
    (a) => a.bedId === bedId && a.onDay >= since && a.onDay <= harvest.onDay,
  );
  const sprayed = facts.sprays
    .map((s) => ({ s, on: at.dayAtBed(s.bedId, s.at) }))
    .filter(({ s, on }) => s.bedId === bedId && on >= since && on <= harvest.onDay);
  const events: Seen[] = [
    { saw: "sown", on: sownOn },
    ...(setOutOn === null ? [] : [{ saw: "set-out" as const, on: setOutOn }]),
    ...applied.map((a) => ({
      saw: "applied" as const,
      on: a.onDay,
      what: at.material(a.materialId).name,
      materialLot: a.lot,
      amountKg: a.amountKg,
    })),
    ...sprayed.map(({ s, on }) => ({ saw: "sprayed" as const, on, what: s.product })),
  ];
  const watered = wateredUntil(facts, at, bedId, stands);
  const nothing = applied.length + sprayed.length === 0 && watered === null;
  return [
    ...events.sort((a, b) => (a.on ?? "").localeCompare(b.on ?? "")),
    ...(watered ? [watered] : []),
    ...(nothing ? [{ saw: "nothing-written-down" as const, on: null }] : []),
  ];
}

function wateredUntil(
  facts: SeasonFacts,
  at: Places,
  bedId: string,
  stands: (day: string) => boolean,
): Seen | null {
  const { valveId } = at.bed(bedId);
  if (valveId === null) return null;
  const given = facts.waterings.filter((w) => w.valveId === valveId && stands(w.onDay));
  if (given.length === 0) return null;
  const { flowLPerH } = at.valve(valveId);
  const litres = given.map((w) => litresOf(w, flowLPerH));
  const allM2 = at.bedsOf(valveId).reduce((sum, bed) => sum + at.croppedM2(bed.id), 0);
  const known = litres.every((l) => l !== null);
  return {
    saw: "watered",
    on: null,
    what: at.valve(valveId).name,
    waterings: given.length,
    waterMm: known ? litres.reduce<number>((sum, l) => sum + (l ?? 0), 0) / allM2 : null,
  };
}

/** Forward from every application of the season to what was picked from its bed after it. */
export function materialLotRows(
  facts: SeasonFacts,
  at: Places,
  applications: SeasonRecord["tables"]["applications"],
): SeasonRow<"materialLots">[] {
  return applications.flatMap((a) => {
    const head = {
      material: a.material,
      lot: a.lot,
      appliedOn: a.on,
      appliedKg: a.amountKg,
      bed: a.bed,
      planting: a.planting,
      applicationId: a.id,
    };
    const picked = facts.harvests.filter(
      (h) => at.planting(h.plantingId).bedId === a.bedId && h.onDay >= a.on && isIn(facts.season, h.onDay),
    );
    type Picked = Pick<SeasonRow<"materialLots">, "harvestLot" | "pickedOn" | "pickedKg">;
    const none: Picked = { harvestLot: null, pickedOn: null, pickedKg: null };
    const then = picked.map((h): Picked => ({ harvestLot: h.lot, pickedOn: h.onDay, pickedKg: h.kg }));
    return (then.length > 0 ? then : [none]).map((one) => ({ ...head, ...one }));
  });
}
