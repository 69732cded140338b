import type { SeasonRow } from "@pith/contract";
import { addDays } from "@pith/rules";
import { present, soilTestPart, waterTestPart } from "../states/parts.ts";
import type { SeasonFacts } from "./gather.ts";
import type { Places } from "./place.ts";
import { isIn } from "./season.ts";

/** Rows that repeat what was written down, in words. */

export const bedRows = (facts: SeasonFacts, at: Places): SeasonRow<"beds">[] =>
  facts.beds.map((bed) => ({
    bed: bed.name,
    site: at.site(bed.siteId).name,
    certification: bed.certification,
    certifier: bed.certifier,
    croppedM2: at.croppedM2(bed.id),
    bedId: bed.id,
  }));

/** Plantings that stood on some day of the season, from their sowing on. */
export const plantingRows = (facts: SeasonFacts, at: Places): SeasonRow<"plantings">[] =>
  facts.plantings
    .filter((p) => p.sownOn <= facts.season.to && (p.endedOn === null || p.endedOn >= facts.season.from))
    .map((p) => ({
      bed: at.bedName(p.bedId),
      planting: p.varietyName,
      species: p.species,
      marketType: p.marketType,
      plants: p.plants,
      sownOn: p.sownOn,
      setOutOn: p.setOutOn,
      endedOn: p.endedOn,
      plantingId: p.id,
    }));

export const waterTestRows = (facts: SeasonFacts, at: Places): SeasonRow<"waterTests">[] =>
  facts.waterTests
    .filter((t) => isIn(facts.season, t.sampledOn))
    .map((t) => {
      const read = waterTestPart(t);
      return {
        on: t.sampledOn,
        site: at.site(t.siteId).name,
        valve: t.valveId === null ? null : at.valve(t.valveId).name,
        laboratory: t.labName,
        sample: t.sampleRef,
        ecDSPerM: read.ecDSPerM ?? null,
        ph: read.waterPh ?? null,
        nitrateNMgPerL: read.nitrateNMgPerL ?? null,
        id: t.id,
      };
    });

const MS_PER_HOUR = 3_600_000;

export const sprayRows = (facts: SeasonFacts, at: Places): SeasonRow<"sprays">[] =>
  facts.sprays
    .map((s) => ({ s, on: at.dayAtBed(s.bedId, s.at) }))
    .filter(({ on }) => isIn(facts.season, on))
    .map(({ s, on }) => ({
      on,
      at: new Date(s.at).toISOString(),
      timeZone: at.zoneAtBed(s.bedId),
      bed: at.bedName(s.bedId),
      product: s.product,
      registration: s.registration,
      target: s.target,
      reEntryHours: s.reEntryHours,
      enterFrom: new Date(Date.parse(s.at) + Math.ceil(s.reEntryHours * MS_PER_HOUR)).toISOString(),
      preHarvestDays: s.preHarvestDays,
      pickFrom: addDays(on, s.preHarvestDays),
      labourMinutes: s.minutesOfLabour,
      writtenBy: at.person(s.recordedBy),
      bedId: s.bedId,
      id: s.id,
    }));

export const soilTestRows = (facts: SeasonFacts, at: Places): SeasonRow<"soilTests">[] =>
  facts.soilTests
    .filter((t) => isIn(facts.season, t.sampledOn))
    .map((t) => {
      const read = soilTestPart(t);
      return {
        on: t.sampledOn,
        bed: at.bedName(t.bedId),
        laboratory: t.labName,
        sample: t.sampleRef,
        depthCm: t.depthCm,
        ph: read.waterPh ?? null,
        organicMatterPct: read.organicMatterPct ?? null,
        values: read.values
          .map(({ nutrient, mgPerKg, extractant }) =>
            [nutrient, String(mgPerKg), "mg/kg", ...(extractant ? [`(${extractant})`] : [])].join(" "),
          )
          .join("; "),
        bedId: t.bedId,
        id: t.id,
      };
    });

export const harvestRows = (facts: SeasonFacts, at: Places): SeasonRow<"harvests">[] =>
  facts.harvests
    .filter((h) => isIn(facts.season, h.onDay))
    .map((h) => ({
      on: h.onDay,
      bed: at.bedName(at.planting(h.plantingId).bedId),
      planting: at.planting(h.plantingId).varietyName,
      lot: h.lot,
      pickedKg: h.kg,
      marketableKg: h.marketableKg,
      culls: h.culls.map(({ cause, kg }) => present({ cause, kg })),
      labourHours: h.hours,
      pricePerKg: h.pricePerKg,
      worthMoney: h.pricePerKg === null || h.marketableKg === null ? null : h.pricePerKg * h.marketableKg,
      writtenBy: at.person(h.recordedBy),
      bedId: at.planting(h.plantingId).bedId,
      id: h.id,
    }));

export const workRows = (facts: SeasonFacts, at: Places): SeasonRow<"works">[] =>
  facts.works
    .filter((w) => isIn(facts.season, w.onDay))
    .map((w) => ({
      on: w.onDay,
      bed: at.bedName(w.bedId),
      task: w.task,
      labourMinutes: w.minutesOfLabour,
      writtenBy: at.person(w.recordedBy),
      bedId: w.bedId,
      id: w.id,
    }));
