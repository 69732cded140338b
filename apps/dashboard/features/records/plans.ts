import { type FarmDetail, recordRoutes } from "@pith/contract";
import type { FormUnit } from "../../format/units.ts";
import { named } from "../farm/plans.ts";
import type { Plan } from "../forms/plan.ts";

/** What the forms ask that record what was seen and done. */

export const RECORDS = [
  "notes",
  "signs",
  "waterings",
  "applications",
  "sprays",
  "works",
  "harvests",
  "deliveries",
  "waterTests",
  "soilWater",
  "plantTests",
  "drainReadings",
  "bedHistory",
] as const;
export type RecordKind = (typeof RECORDS)[number];
export const isRecordKind = (word: string): word is RecordKind =>
  (RECORDS as readonly string[]).includes(word);

export const recordSchemas = {
  notes: recordRoutes.NoteSchema.omit({ id: true }),
  waterings: recordRoutes.WateringSchema.omit({ id: true }),
  applications: recordRoutes.ApplicationSchema.omit({ id: true, bedId: true }),
  harvests: recordRoutes.HarvestSchema.omit({ id: true }),
  works: recordRoutes.WorkSchema.omit({ id: true }),
  waterTests: recordRoutes.WaterTestSchema.omit({ id: true }),
  soilWater: recordRoutes.SoilWaterSchema.omit({ id: true }),
  deliveries: recordRoutes.DeliverySchema.omit({ id: true }),
  plantTests: recordRoutes.PlantTestSchema.omit({ id: true }),
  drainReadings: recordRoutes.DrainReadingSchema.omit({ id: true }),
  signs: recordRoutes.SignSchema.omit({ id: true }),
  sprays: recordRoutes.SpraySchema.omit({ id: true }),
  bedHistory: recordRoutes.BedHistorySchema.omit({ id: true }),
};

/** Where the signs of a farm are opened, by who opens them. */
export const signsOf = (role: "agent" | "farmer", farmId: string): string =>
  `/${role === "agent" ? "farms" : "record"}/${farmId}/signs`;

/** A note's number is in the unit of what was seen. */
export const NOTE_UNITS: Record<string, FormUnit> = {
  "height-cm": "cm",
  "stem-diameter-mm": "mm",
  "soil-temperature-10cm-c": "C",
  "ground-cover-pct": "pct",
};

const SOIL_WATER_UNITS: Record<string, FormUnit> = { "tension-kpa": "kPa" };

export function recordPlan(kind: RecordKind, farm: FarmDetail): Plan {
  return {
    labels: kind,
    zone: farm.sites[0]?.timeZone,
    startNow: ["on", "sampledOn", "receivedOn", "at"],
    choices: {
      plantingId: standing(farm).map(({ planting, bedName }) => ({
        value: planting.id,
        label: `${planting.varietyName}, ${bedName}`,
      })),
      valveId: named(farm.valves),
      materialId: named(farm.materials),
      siteId: named(farm.sites),
      bedId: named(farm.beds),
    },
    ...plans[kind],
  };
}

const plans: Record<RecordKind, Pick<Plan, "sections" | "unitOf" | "unitsByWord" | "unchosen" | "long">> = {
  notes: {
    sections: [{ fields: ["plantingId", "on", "kind", "value", "text"] }],
    unitOf: (path, raw) => (path === "value" ? NOTE_UNITS[raw("kind")] : undefined),
    unitsByWord: { kind: NOTE_UNITS },
    unchosen: ["kind"],
    long: ["text"],
  },
  waterings: { sections: [{ fields: ["valveId", "on", "minutes", "litres", "minutesOfLabour"] }] },
  applications: {
    sections: [
      { fields: ["plantingId", "on", "materialId", "amountKg", "areaM2", "lot", "minutesOfLabour"] },
    ],
  },
  waterTests: {
    sections: [
      { fields: ["sampledOn", "siteId", "valveId", "labName", "sampleRef"] },
      { title: "salts", fields: ["ecDSPerM", "waterPh", "alkalinityMgCaCO3PerL"] },
      {
        title: "ions",
        fields: ["caMgPerL", "mgMgPerL", "naMgPerL", "clMgPerL", "bMgPerL", "nitrateNMgPerL"],
      },
    ],
  },
  soilWater: {
    sections: [{ fields: ["bedId", "at", "kind", "depthCm", "value"] }],
    unitOf: (path, raw) => (path === "value" ? SOIL_WATER_UNITS[raw("kind")] : undefined),
    unitsByWord: { kind: SOIL_WATER_UNITS },
  },
  deliveries: {
    sections: [{ fields: ["materialId", "receivedOn", "kg", "pricePerKg", "lot", "bestBefore"] }],
  },
  plantTests: {
    sections: [
      { fields: ["plantingId", "sampledOn", "kind", "stage", "labName"] },
      { title: "values", each: { path: "values", fields: ["nutrient", "value", "unit"], add: "addValue" } },
    ],
  },
  drainReadings: { sections: [{ fields: ["plantingId", "on", "ecDSPerM", "ph", "drainedPct"] }] },
  signs: {
    sections: [{ fields: ["plantingId", "on", "sign", "part", "pattern", "speed", "plantsPct", "text"] }],
    unchosen: ["sign"],
    long: ["text"],
  },
  sprays: {
    sections: [
      { fields: ["bedId", "at", "target", "minutesOfLabour"] },
      { title: "label", fields: ["product", "registration", "reEntryHours", "preHarvestDays"] },
    ],
  },
  works: { sections: [{ fields: ["bedId", "on", "task", "minutesOfLabour"] }], unchosen: ["task"] },
  bedHistory: { sections: [{ fields: ["bedId", "season", "crop", "disease"] }], unchosen: ["crop"] },
  harvests: {
    sections: [
      { fields: ["plantingId", "on", "kg", "marketableKg", "lot", "hours", "pricePerKg"] },
      { title: "culls", each: { path: "culls", fields: ["cause", "kg"], add: "addCull" } },
    ],
  },
};

/** The plantings that stand now, with the name of their bed. */
const standing = (farm: FarmDetail) =>
  farm.plantings
    .filter((planting) => planting.endedOn === null)
    .map((planting) => ({
      planting,
      bedName: farm.beds.find((bed) => bed.id === planting.bedId)?.name ?? "",
    }));
