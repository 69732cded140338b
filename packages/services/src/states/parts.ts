import type {
  applications,
  beds,
  drainReadings,
  forecasts,
  materials,
  plantings,
  plantTests,
  signs,
  sites,
  soilTests,
  soilWaterReadings,
  sprays,
  structures,
  waterTests,
  weatherDays,
} from "@pith/db";
import type {
  Application,
  Bed,
  DrainReading,
  FieldNote,
  Forecast,
  Material,
  Planting,
  PlantingState,
  PlantTest,
  Sign,
  Site,
  SoilTest,
  SoilWaterReading,
  Spray,
  Structure,
  WaterTest,
  WeatherDay,
} from "@pith/rules";

/**
 * From rows to the parts of a state. Names, free text, people and whatever the rules do not read stay behind, and what
 * is null is left out: missing is missing.
 */

type Row<T extends { $inferSelect: object }> = Omit<T["$inferSelect"], "officeId" | "farmId">;

/** A value without what is null or undefined, at its first level. */
export function present<T extends object>(value: T): { [K in keyof T]: Exclude<T[K], null> } {
  return Object.fromEntries(Object.entries(value).filter(([, v]) => v !== null && v !== undefined)) as {
    [K in keyof T]: Exclude<T[K], null>;
  };
}

export const sitePart = (
  row: Omit<Row<typeof sites>, "id" | "name" | "stationId" | "forecastSource">,
): Site =>
  present({
    latitudeDeg: row.latitudeDeg,
    longitudeDeg: row.longitudeDeg,
    elevationM: row.elevationM,
    timeZone: row.timeZone,
    coastal: row.coastal,
    stationOffset: row.stationOffset,
  }) as Site;

type BedRow = Pick<
  Row<typeof beds>,
  "id" | "kind" | "lengthM" | "widthM" | "spacingM" | "soil" | "certification" | "containers"
>;
interface Periods {
  covers: { cover: Bed["covers"][number]["cover"]; from: string; to: string | null }[];
  mulches: { mulch: Bed["mulches"][number]["mulch"]; from: string; to: string | null }[];
}

export const bedPart = (row: BedRow & Periods): Bed =>
  present({
    id: row.id,
    kind: row.kind,
    lengthM: row.lengthM,
    widthM: row.widthM,
    spacingM: row.spacingM,
    soil: present(row.soil),
    covers: row.covers.map(({ cover, from, to }) => present({ cover, from, to })),
    mulches: row.mulches.map(({ mulch, from, to }) => present({ mulch, from, to })),
    certification: row.certification,
    containers: row.containers && present(row.containers),
  }) as Bed;

/** What a request may leave out. */
type Lately =
  | "expectedPricePerKg"
  | "propagation"
  | "deficit"
  | "baseTemperatureC"
  | "baseTemperatureFrom"
  | "pickAt"
  | "heightCm"
  | "pungent"
  | "saveSeed";

export const plantingPart = (
  row: Omit<Row<typeof plantings>, "bedId" | "varietyName" | "feeding" | "whatIf" | Lately> & {
    [K in Lately]?: Row<typeof plantings>[K] | undefined;
  },
): Planting =>
  present({
    id: row.id,
    species: row.species,
    marketType: row.marketType,
    sownOn: row.sownOn,
    setOutOn: row.setOutOn,
    plannedSetOutOn: row.plannedSetOutOn,
    endedOn: row.endedOn,
    plants: row.plants,
    rowsPerBed: row.rowsPerBed,
    plantSpacingM: row.plantSpacingM,
    staked: row.staked,
    grafted: row.grafted,
    overwintered: row.overwintered,
    yieldGoalTPerHa: row.yieldGoalTPerHa,
    daysToMaturity: row.daysToMaturity,
    baseTemperatureC: row.baseTemperatureC,
    baseTemperatureFrom: row.baseTemperatureFrom,
    pickAt: row.pickAt,
    heightCm: row.heightCm,
    pungent: row.pungent,
    saveSeed: row.saveSeed,
    expectedPricePerKg: row.expectedPricePerKg,
    propagation: row.propagation && present(row.propagation),
    deficit: row.deficit && present(row.deficit),
  }) as Planting;

export const structurePart = (row: Omit<Row<typeof structures>, "siteId" | "name">): Structure =>
  present({
    id: row.id,
    glazing: row.glazing,
    uWPerM2K: row.uWPerM2K,
    innerLayer: row.innerLayer,
    floorAreaM2: row.floorAreaM2,
    coverAreaM2: row.coverAreaM2,
    volumeM3: row.volumeM3,
    airChangesPerH: row.airChangesPerH,
    heaters: row.heaters.map((heater) => present(heater)),
    trays: row.trays,
    nightC: row.nightC,
    heatedFrom: row.heatedFrom,
    heatedTo: row.heatedTo,
  }) as Structure;

export const feedingPart = ({
  materialId,
  method,
  credits,
  organicOnly,
  fertigation,
}: Row<typeof plantings>["feeding"]) =>
  present({
    materialId,
    method,
    credits,
    organicOnly,
    fertigation: fertigation && present(fertigation),
  }) as PlantingState["feeding"];

/** What a request may leave out. */
type MaterialDetail =
  | "analysis"
  | "certifiedProof"
  | "certifiedProofUntil"
  | "labelMostKgPerHa"
  | "canBuy"
  | "bagKg";

export function materialPart({
  analysis = {},
  ...row
}: Omit<Row<typeof materials>, "name" | MaterialDetail> & {
  [K in MaterialDetail]?: Row<typeof materials>[K] | undefined;
}): Material {
  const { manureOf, composted, dryMatterPct, ammoniumNPct, ...contents } = analysis;
  return present({
    id: row.id,
    kind: row.kind,
    nPct: row.nPct,
    p2o5Pct: row.p2o5Pct,
    k2oPct: row.k2oPct,
    ...contents,
    manure: manureOf
      ? present({ animal: manureOf, composted: composted ?? false, dryMatterPct, ammoniumNPct })
      : undefined,
    soluble: row.soluble,
    bulkDensityKgPerL: row.bulkDensityKgPerL,
    certifiedUse: row.certifiedUse,
    certifiedProofUntil: row.certifiedProofUntil,
    labelMostKgPerHa: row.labelMostKgPerHa,
    stockKg: row.stockKg,
    pricePerKg: row.pricePerKg,
    canBuy: row.canBuy,
    bagKg: row.bagKg,
  }) as Material;
}

export const applicationPart = (row: typeof applications.$inferSelect): Application =>
  present({
    on: row.onDay,
    materialId: row.materialId,
    kind: row.kind,
    composted: row.composted,
    nPct: row.nPct,
    p2o5Pct: row.p2o5Pct,
    k2oPct: row.k2oPct,
    amountKg: row.amountKg,
    areaM2: row.areaM2,
  }) as Application;

export const plantTestPart = ({
  id,
  sampledOn,
  kind,
  stage,
  values,
}: typeof plantTests.$inferSelect): PlantTest => ({ id, sampledOn, kind, stage, values }) as PlantTest;

export const drainReadingPart = (row: typeof drainReadings.$inferSelect): DrainReading =>
  present({ on: row.onDay, ecDSPerM: row.ecDSPerM, ph: row.ph, drainedPct: row.drainedPct }) as DrainReading;

export const notePart = ({ onDay, kind, value }: { onDay: string; kind: string; value: number | null }) =>
  present({ on: onDay, kind, value }) as FieldNote;

export const signPart = (row: typeof signs.$inferSelect, photos: number): Sign =>
  present({
    on: row.onDay,
    sign: row.sign,
    part: row.part,
    pattern: row.pattern,
    speed: row.speed,
    plantsPct: row.plantsPct,
    photos: photos > 0 ? photos : undefined,
  }) as Sign;

export const sprayPart = ({
  at,
  target,
  reEntryHours,
  preHarvestDays,
}: typeof sprays.$inferSelect): Spray => ({ at, target, reEntryHours, preHarvestDays });

type WeatherRow = Omit<Row<typeof weatherDays>, "siteId" | "importId">;

export const weatherPart = (row: WeatherRow): WeatherDay =>
  present({
    date: row.date,
    tMaxC: row.tMaxC,
    tMinC: row.tMinC,
    rainMm: row.rainMm,
    rhMaxPct: row.rhMaxPct,
    rhMinPct: row.rhMinPct,
    rhMeanPct: row.rhMeanPct,
    dewPointC: row.dewPointC,
    windMPerS: row.windMPerS,
    windHeightM: row.windHeightM,
    rsMjPerM2Day: row.rsMjPerM2Day,
    sunshineH: row.sunshineH,
    cloudPct: row.cloudPct,
  }) as WeatherDay;

export const forecastPart = ({
  issuedAt,
  days,
  hours,
}: Pick<typeof forecasts.$inferSelect, "issuedAt" | "days" | "hours">) =>
  present({
    issuedAt,
    days: days.map((day) => present(day)),
    hours: hours?.map((hour) => present(hour)),
  }) as unknown as Forecast;

/** The result column holds what was measured, as the rules read it. */
export const waterTestPart = (
  row: Pick<typeof waterTests.$inferSelect, "id" | "sampledOn" | "result">,
): WaterTest => ({ id: row.id, sampledOn: row.sampledOn, ...row.result });

export const soilWaterPart = ({
  at,
  kind,
  depthCm,
  value,
}: Pick<typeof soilWaterReadings.$inferSelect, "at" | "kind" | "depthCm" | "value">): SoilWaterReading => ({
  at,
  kind,
  depthCm,
  value,
});

/** The result column holds the measured part as the rules read it; laboratory and reference are not read. */
export const soilTestPart = (row: Row<typeof soilTests>): SoilTest => {
  const { waterPh, bufferPh, organicMatterPct, cecCmolPerKg, acidityCmolPerKg, freeLime, ec, values } =
    row.result as Partial<SoilTest>;
  return present({
    id: row.id,
    sampledOn: row.sampledOn,
    depthCm: row.depthCm,
    medium: row.medium,
    waterPh,
    bufferPh,
    organicMatterPct,
    cecCmolPerKg,
    acidityCmolPerKg,
    freeLime,
    ec: ec && present(ec),
    values: (values ?? []).map((v) => present(v)),
  }) as SoilTest;
};
