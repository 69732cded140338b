import type { SeasonTable } from "@pith/contract";

/** Which columns of a table stand on the page; the file has them all. What every row of a section shares is left out. */
export const COLUMNS = {
  plantings: ["planting", "marketType", "plants", "sownOn", "setOutOn", "endedOn"],
  applications: [
    "on",
    "planting",
    "material",
    "lot",
    "amountKg",
    "areaM2",
    "nKgPerHa",
    "p2o5KgPerHa",
    "k2oKgPerHa",
    "pKgPerHa",
    "kKgPerHa",
    "certifiedUse",
    "labourMinutes",
    "writtenBy",
  ],
  waterings: ["on", "valve", "from", "valveMinutes", "bedLitres", "bedMm", "labourMinutes", "writtenBy"],
  sprays: [
    "at",
    "product",
    "registration",
    "target",
    "reEntryHours",
    "preHarvestDays",
    "pickFrom",
    "labourMinutes",
    "writtenBy",
  ],
  soilTests: ["on", "laboratory", "sample", "depthCm", "ph", "organicMatterPct", "values"],
  harvests: ["on", "planting", "lot", "pickedKg", "marketableKg", "culls", "labourHours", "writtenBy"],
  works: ["on", "task", "labourMinutes", "writtenBy"],
  intervals: ["on", "kind", "what", "planting", "days", "pickFrom", "firstPickAfter", "kept", "source"],
  waterTests: ["on", "site", "valve", "laboratory", "sample", "ecDSPerM", "ph", "nitrateNMgPerL"],
  harvestLots: [
    "lot",
    "pickedOn",
    "planting",
    "bed",
    "pickedKg",
    "saw",
    "on",
    "what",
    "materialLot",
    "amountKg",
    "waterings",
    "waterMm",
  ],
  materialLots: ["material", "lot", "appliedOn", "appliedKg", "bed", "harvestLot", "pickedOn", "pickedKg"],
  unanswered: ["issuedOn", "due", "subject", "decision"],
} as const satisfies Partial<Record<SeasonTable, readonly string[]>>;

export type ShownTable = keyof typeof COLUMNS;

/** Tables of one bed, in the order in which a season goes. */
export const OF_BED = [
  "plantings",
  "soilTests",
  "applications",
  "waterings",
  "sprays",
  "intervals",
  "works",
  "harvests",
] as const satisfies readonly ShownTable[];

export const OF_FARM = [
  "waterTests",
  "harvestLots",
  "materialLots",
  "unanswered",
] as const satisfies readonly ShownTable[];
