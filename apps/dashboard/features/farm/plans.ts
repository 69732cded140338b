import { type FarmDetail, farmRoutes } from "@pith/contract";
import type { FormUnit } from "../../format/units.ts";
import type { Choice, Plan } from "../forms/plan.ts";

/** What the forms of a farm and of what belongs to it ask. */

export const THINGS = ["sites", "valves", "beds", "structures", "plantings", "materials"] as const;
export type Thing = (typeof THINGS)[number];
export const isThing = (word: string): word is Thing => (THINGS as readonly string[]).includes(word);

const withoutId = { id: true } as const;
export const schemas = {
  farms: farmRoutes.FarmSchema.pick({ name: true, contactName: true, phone: true, email: true, units: true }),
  sites: farmRoutes.SiteSchema.omit({ id: true, weather: true, forecast: true, sourceState: true }),
  valves: farmRoutes.ValveSchema.omit(withoutId),
  beds: farmRoutes.BedSchema.omit(withoutId),
  structures: farmRoutes.StructureSchema.omit(withoutId),
  plantings: farmRoutes.PlantingSchema.omit(withoutId),
  materials: farmRoutes.MaterialSchema.omit(withoutId),
};

export const farmPlan: Plan = {
  labels: "farms",
  sections: [{ fields: ["name", "contactName", "phone", "email", "units"] }],
};

export const named = (things: { id: string; name: string }[]): Choice[] =>
  things.map(({ id, name }) => ({ value: id, label: name }));

/** The plan of a form, with the farm's own things as choices. */
export function planOf(thing: Thing, farm: FarmDetail): Plan {
  const choices = {
    siteId: named(farm.sites),
    valveId: named(farm.valves),
    bedId: named(farm.beds),
    "feeding.materialId": named(farm.materials),
  };
  return { labels: thing, choices, ...plans[thing] };
}

/** A fuel's price is of a litre or a kilogram (US: gallon or pound), or of a kilowatt-hour everywhere. */
const FUEL_UNITS: Record<string, FormUnit> = {
  propane: "per-L",
  "fuel-oil": "per-L",
  firewood: "per-mass",
  "wood-pellets": "per-mass",
};

const plans: Record<Thing, Pick<Plan, "sections" | "unitOf">> = {
  sites: {
    sections: [
      {
        fields: [
          "name",
          "latitudeDeg",
          "longitudeDeg",
          "elevationM",
          "timeZone",
          "coastal",
          "stationId",
          "forecastSource",
        ],
      },
      {
        title: "offset",
        fields: ["stationOffset.minC", "stationOffset.sdC", "stationOffset.nights"],
      },
    ],
  },
  valves: {
    sections: [{ fields: ["name", "siteId", "method", "flowLPerH", "efficiency", "wettedFraction"] }],
  },
  structures: {
    sections: [
      { fields: ["name", "siteId", "glazing", "innerLayer"] },
      {
        title: "size",
        fields: ["floorAreaM2", "coverAreaM2", "volumeM3", "uWPerM2K", "airChangesPerH"],
      },
      { title: "nights", fields: ["nightC", "heatedFrom", "heatedTo"] },
      {
        title: "heaters",
        each: {
          path: "heaters",
          fields: ["fuel", "outputW", "pricePerUnit", "efficiency"],
          add: "addHeater",
        },
      },
      { title: "trays", fields: ["trays.count", "trays.areaM2"] },
    ],
    unitOf: (path, raw) => {
      const heater = /^heaters\.\d+\.(?=pricePerUnit$)/.exec(path)?.[0];
      return heater === undefined ? undefined : FUEL_UNITS[raw(`${heater}fuel`)];
    },
  },
  beds: {
    sections: [
      { fields: ["name", "siteId", "valveId", "kind"] },
      { title: "size", fields: ["lengthM", "widthM", "spacingM"] },
      {
        title: "soil",
        fields: ["soil.texture", "soil.fieldCapacity", "soil.wiltingPoint", "soil.bulkDensityKgPerM3"],
      },
      { title: "covers", each: { path: "covers", fields: ["cover", "from", "to"], add: "addCover" } },
      { title: "mulches", each: { path: "mulches", fields: ["mulch", "from", "to"], add: "addMulch" } },
      { title: "certification", fields: ["certification", "certifier"] },
      { title: "containers", fields: ["containers.count", "containers.volumeL", "containers.medium"] },
      {
        title: "place",
        fields: ["place.eastM", "place.northM", "place.bearingDeg", "planRows", "shadedFrom"],
      },
    ],
  },
  plantings: {
    sections: [
      { fields: ["varietyName", "bedId", "species", "marketType"] },
      { title: "days", fields: ["sownOn", "plannedSetOutOn", "setOutOn", "endedOn"] },
      {
        title: "stand",
        fields: ["plants", "rowsPerBed", "plantSpacingM", "staked", "grafted", "overwintered"],
      },
      {
        title: "growth",
        fields: ["pickAt", "heightCm", "pungent", "saveSeed", "baseTemperatureC", "baseTemperatureFrom"],
      },
      {
        title: "goal",
        fields: [
          "yieldGoalTPerHa",
          "expectedPricePerKg",
          "daysToMaturity.days",
          "daysToMaturity.from",
          "daysToMaturity.to",
        ],
      },
      {
        title: "raising",
        fields: [
          "propagation.mediumC",
          "propagation.germinationPct",
          "propagation.lossPct",
          "propagation.growingC",
        ],
      },
      { title: "deficit", fields: ["deficit.from", "deficit.to", "deficit.etShare"] },
      { title: "feeding", fields: ["feeding.materialId", "feeding.method", "feeding.organicOnly"] },
      {
        title: "fertigation",
        fields: [
          "feeding.fertigation.ratio",
          "feeding.fertigation.tanks",
          "feeding.fertigation.tankL",
          "feeding.fertigation.tankC",
        ],
      },
      {
        title: "credits",
        each: {
          path: "feeding.credits",
          fields: ["kind", "nKgPerHaLow", "nKgPerHaHigh"],
          add: "addCredit",
        },
      },
    ],
  },
  materials: {
    sections: [
      { fields: ["kind", "name"] },
      { title: "analysis", fields: ["nPct", "p2o5Pct", "k2oPct", "soluble", "bulkDensityKgPerL"] },
      { title: "shed", fields: ["stockKg", "pricePerKg", "canBuy", "bagKg", "labelMostKgPerHa"] },
      { title: "certified", fields: ["certifiedUse", "certifiedProof", "certifiedProofUntil"] },
      {
        title: "more",
        fields: [
          "analysis.caPct",
          "analysis.mgPct",
          "analysis.sPct",
          "analysis.clPct",
          "analysis.bPct",
          "analysis.ammoniumPct",
          "analysis.saltIndex",
        ],
      },
      { title: "liming", fields: ["analysis.ccePct", "analysis.finenessPct", "analysis.ashOf"] },
      {
        title: "manure",
        fields: ["analysis.manureOf", "analysis.composted", "analysis.dryMatterPct", "analysis.ammoniumNPct"],
      },
    ],
  },
};

/** What a new one starts from, where there is something sensible to start from. */
export function startOf(
  thing: Thing,
  farm: FarmDetail,
  asked: Record<string, string>,
): Record<string, unknown> {
  const site = farm.sites[0];
  switch (thing) {
    case "sites":
      return { timeZone: site?.timeZone, stationId: site?.stationId ?? null };
    case "valves":
      return { siteId: site?.id, method: "drip", efficiency: 0.9 };
    case "structures":
      return { siteId: site?.id, innerLayer: "none" };
    case "beds":
      return { siteId: site?.id, valveId: farm.valves[0]?.id ?? null, kind: "ground" };
    case "plantings": {
      const bedId = asked.bedId ?? farm.beds[0]?.id;
      const last = farm.plantings.find((p) => p.bedId === bedId) ?? farm.plantings[0];
      return {
        bedId,
        species: "annuum",
        rowsPerBed: last?.rowsPerBed,
        plantSpacingM: last?.plantSpacingM,
        feeding: { method: last?.feeding.method ?? "drip", materialId: last?.feeding.materialId ?? null },
      };
    }
    case "materials":
      return { certifiedUse: "unknown", canBuy: true };
  }
}
