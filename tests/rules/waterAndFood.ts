import {
  addDays,
  type BedState,
  type FarmSeasonState,
  type PlantingState,
  type ValveState,
} from "@pith/rules";

/** States for the water, soil and food rules: plain, whole, and easy to reckon with. */

const SITE: ValveState["site"] = {
  latitudeDeg: 45,
  longitudeDeg: -93,
  elevationM: 250,
  timeZone: "America/Chicago",
};

export const bed = (over: Partial<BedState["bed"]> = {}): BedState["bed"] => ({
  id: "bed-a",
  kind: "ground",
  lengthM: 50,
  widthM: 0.8,
  spacingM: 1.6,
  soil: { fieldCapacity: 0.25, wiltingPoint: 0.12 },
  covers: [],
  mulches: [],
  certification: "none",
  ...over,
});

export const planting = (over: Partial<PlantingState["planting"]> = {}): PlantingState["planting"] => ({
  id: "planting-a",
  species: "annuum",
  marketType: "bell",
  sownOn: "2025-03-20",
  setOutOn: "2025-06-01",
  plants: 250,
  rowsPerBed: 2,
  plantSpacingM: 0.4,
  yieldGoalTPerHa: 30,
  ...over,
});

/** Steady summer days: every input measured, so nothing hides in an estimate. */
export const weather = (from: string, days: number, over: Partial<ValveState["weather"][number]> = {}) =>
  Array.from({ length: days }, (_, i) => ({
    date: addDays(from, i),
    tMaxC: 27,
    tMinC: 15,
    rhMaxPct: 90,
    rhMinPct: 45,
    windMPerS: 2,
    windHeightM: 2,
    rsMjPerM2Day: 22,
    rainMm: 0,
    ...over,
  }));

export const valve = (over: Partial<ValveState> = {}): ValveState => ({
  kind: "valve",
  version: 1,
  asOf: "2025-07-11T11:00:00Z",
  settings: {},
  id: "valve-a",
  site: SITE,
  valve: { method: "drip", flowLPerH: 400, efficiency: 0.9 },
  zones: [{ bed: bed(), planting: planting(), notes: [] }],
  weather: weather("2025-06-01", 40),
  waterings: [],
  unanswered: [],
  ...over,
});

export const soilTest = (
  over: Partial<BedState["soilTests"][number]> = {},
): BedState["soilTests"][number] => ({
  id: "test-a",
  sampledOn: "2025-04-10",
  depthCm: 17,
  medium: "mineral-soil",
  waterPh: 6.5,
  values: [
    { nutrient: "P", extractant: "mehlich-3", mgPerKg: 80 },
    { nutrient: "K", extractant: "mehlich-3", mgPerKg: 50 },
    { nutrient: "Ca", extractant: "mehlich-3", mgPerKg: 900 },
    { nutrient: "Mg", extractant: "mehlich-3", mgPerKg: 90 },
  ],
  ...over,
});

export const bedState = (over: Partial<BedState> = {}): BedState => ({
  kind: "bed",
  version: 1,
  asOf: "2025-06-15T12:00:00Z",
  settings: {},
  site: SITE,
  bed: bed(),
  soilTests: [soilTest()],
  ...over,
});

export const urea: PlantingState["shed"][number] = {
  id: "urea",
  kind: "urea",
  nPct: 46,
  p2o5Pct: 0,
  k2oPct: 0,
  soluble: true,
  certifiedUse: "prohibited",
  stockKg: 25,
};

export const feedingState = (over: Partial<PlantingState> = {}): PlantingState => ({
  kind: "planting",
  version: 1,
  asOf: "2025-06-01T12:00:00Z",
  settings: {},
  site: SITE,
  bed: bed(),
  planting: planting(),
  notes: [],
  weather: [],
  plantTemperatures: [],
  soilTests: [soilTest()],
  feeding: { materialId: "urea", method: "drip", credits: [] },
  shed: [urea],
  applications: [],
  unanswered: [],
  water: undefined,
  ...over,
});

export const farmSeason = (plantings: PlantingState[], shed: PlantingState["shed"]): FarmSeasonState => ({
  kind: "farm-season",
  version: 1,
  asOf: "2025-06-01T12:00:00Z",
  settings: {},
  id: "farm-a",
  season: 2025,
  shed,
  plantings: plantings.map((p) => ({ ...p, shed: [] })),
});
