import type { farmRoutes, recordRoutes } from "@pith/contract";
import type { z } from "zod";

/**
 * The demo's invented county: farms, beds and plantings in the shape of a season, by days from today. Names, people
 * and places are invented; their numbers are plausible and nothing more.
 */

type Planting = z.infer<typeof farmRoutes.PlantingSchema>;
type Bed = z.infer<typeof farmRoutes.BedSchema>;
type Material = z.infer<typeof farmRoutes.MaterialSchema>;
type Structure = z.infer<typeof farmRoutes.StructureSchema>;
type WaterTest = z.infer<typeof recordRoutes.WaterTestSchema>;
type PlantTest = z.infer<typeof recordRoutes.PlantTestSchema>;
type DrainReading = z.infer<typeof recordRoutes.DrainReadingSchema>;

/** Days before today (negative) or after it. */
type DaysFromToday = number;

export interface DemoPlanting {
  variety: string;
  marketType: Planting["marketType"];
  species?: Planting["species"];
  sown: DaysFromToday;
  setOut?: DaysFromToday;
  plannedSetOut?: DaysFromToday;
  plants: number;
  yieldGoal?: number;
  pricePerKg?: number;
  raising?: Planting["propagation"];
  /** First day of a dry spell on purpose. */
  dryFrom?: DaysFromToday;
  staked?: boolean;
  grafted?: boolean;
  material?: string;
  method?: Planting["feeding"]["method"];
  credits?: Planting["feeding"]["credits"];
  fertigation?: Planting["feeding"]["fertigation"];
  organicOnly?: boolean;
  notes?: [kind: string, on: DaysFromToday, value?: number][];
  /** What was given, by the material's name in the shed [kg]. */
  given?: [material: string, on: DaysFromToday, kg: number][];
  plantTests?: (Pick<PlantTest, "kind" | "stage" | "values"> & { on: DaysFromToday })[];
  drained?: (Pick<DrainReading, "ecDSPerM" | "ph" | "drainedPct"> & { on: DaysFromToday })[];
}

export interface DemoBed {
  name: string;
  kind?: Bed["kind"];
  lengthM: number;
  texture?: Bed["soil"]["texture"];
  cover?: [Bed["covers"][number]["cover"], DaysFromToday];
  mulch?: [Bed["mulches"][number]["mulch"], DaysFromToday];
  certification?: Bed["certification"];
  containers?: Bed["containers"];
  valve?: string;
  /** What a tensiometer at 20 cm showed at seven in the morning [kPa], the last day last. */
  tensionKpa?: number[];
  plantings: DemoPlanting[];
}

export interface DemoFarm {
  name: string;
  contact: string;
  units: "metric" | "us";
  site: {
    name: string;
    elevationM: number;
    offset?: [minC: number, sdC: number, nights: number];
    station: keyof typeof STATIONS;
  };
  valves: { name: string; method: "drip" | "sprinkler" | "hand"; flowLPerH: number; efficiency: number }[];
  beds: DemoBed[];
  structures?: (Omit<
    Structure,
    "id" | "siteId" | "heatedFrom" | "heatedTo" | "uWPerM2K" | "airChangesPerH" | "nightC"
  > & {
    heated: [from: DaysFromToday, to: DaysFromToday];
  })[];
  waterTests?: (Partial<WaterTest> & { valve?: string; on: DaysFromToday })[];
  /** Columns as some laboratory prints them. */
  soilCsv?: string[];
  shed: [
    Material["kind"],
    string,
    number,
    number,
    number,
    boolean,
    Material["certifiedUse"],
    number | null,
    number | null,
    more?: Partial<Material>,
  ][];
  deliveries?: [material: string, on: DaysFromToday, kg: number, pricePerKg: number, lot: string][];
  waterings?: [valve: string, on: DaysFromToday, minutes: number][];
}

/** Stations of the county; one of them is too young for its tails. */
export const STATIONS = {
  "ALD-01": { seed: 11, years: 24, offsetC: 0 },
  "ALD-02": { seed: 23, years: 12, offsetC: -0.8 },
  "ALD-03": { seed: 37, years: 4, offsetC: 0.6 },
} as const;

const leaves = (n: number, on = -2): NonNullable<DemoPlanting["notes"]> => [["true-leaves", on, n]];
const hardened: NonNullable<DemoPlanting["notes"]>[number] = ["hardened", -2];

/** Lab columns of two invented laboratories. */
const NORTH_LAB =
  "Date sampled,Bed,Sample ID,Depth (in),pH,Buffer pH (SMP),OM %,Mehlich-3 P ppm,Mehlich-3 K ppm,Mehlich-3 Ca ppm,Mehlich-3 Mg ppm,EC 1:2 (mmhos/cm)";
const SHORE_LAB = "sampled on;bed;sample;depth cm;pH;organic matter %;Olsen P mg/kg;K ammonium acetate mg/kg";

export const FARMS: DemoFarm[] = [
  {
    name: "Low Fell",
    contact: "Ines Tarvold",
    units: "us",
    site: { name: "Home field", elevationM: 212, offset: [-1.1, 1.4, 210], station: "ALD-01" },
    valves: [
      { name: "Tunnel drip", method: "drip", flowLPerH: 900, efficiency: 0.9 },
      { name: "Field drip", method: "drip", flowLPerH: 1400, efficiency: 0.88 },
    ],
    structures: [
      {
        name: "Seed house",
        glazing: "double-poly",
        innerLayer: "none",
        floorAreaM2: 72,
        coverAreaM2: 150,
        volumeM3: 180,
        heaters: [{ fuel: "propane", efficiency: 0.8, outputW: 12_000, pricePerUnit: 0.9 }],
        trays: { count: 36, areaM2: 0.15 },
        heated: [-50, 12],
      },
    ],
    waterTests: [
      {
        on: -30,
        ecDSPerM: 0.6,
        waterPh: 7.3,
        alkalinityMgCaCO3PerL: 160,
        caMgPerL: 52,
        mgMgPerL: 14,
        naMgPerL: 12,
        clMgPerL: 18,
        bMgPerL: 0.05,
        nitrateNMgPerL: 6,
      },
    ],
    beds: [
      {
        name: "Tunnel A",
        lengthM: 30,
        texture: "loam",
        cover: ["high-tunnel", -60],
        mulch: ["black", -40],
        valve: "Tunnel drip",
        tensionKpa: [14, 16, 19, 23, 15, 18, 22, 27],
        plantings: [
          {
            variety: "Marrow Bell",
            marketType: "bell",
            sown: -96,
            setOut: -33,
            plants: 120,
            yieldGoal: 40,
            staked: true,
            method: "drip",
            fertigation: { ratio: 100, tanks: 2, tankL: 60, tankC: 10 },
            notes: [
              ["buds-visible", -6],
              ["true-leaves", -8, 11],
            ],
            plantTests: [
              {
                on: -5,
                kind: "petiole-sap",
                stage: "first-buds",
                values: [
                  { nutrient: "NO3-N", unit: "mg/L", value: 1150 },
                  { nutrient: "K", unit: "mg/L", value: 3300 },
                ],
              },
            ],
          },
          {
            variety: "Little Lantern",
            marketType: "mini-sweet",
            sown: -94,
            setOut: -31,
            plants: 60,
            yieldGoal: 30,
            method: "drip",
            fertigation: { ratio: 100, tanks: 2, tankL: 60, tankC: 10 },
          },
        ],
      },
      {
        name: "Field 1",
        lengthM: 45,
        texture: "sandy-loam",
        mulch: ["black", -10],
        valve: "Field drip",
        plantings: [
          {
            variety: "Harrow Jalapeno",
            marketType: "jalapeno-type",
            sown: -60,
            plannedSetOut: 6,
            plants: 220,
            yieldGoal: 25,
            method: "drip",
            notes: [
              ...leaves(7),
              hardened,
              ["soil-temperature-10cm-c", -2, 14.5],
              ["soil-temperature-10cm-c", -1, 15],
              ["stem-green", -2],
              ["leggy", -2],
            ],
          },
          {
            variety: "Ember Cayenne",
            marketType: "cayenne-type",
            sown: -58,
            plannedSetOut: 8,
            plants: 160,
            yieldGoal: 18,
            material: "Calcium nitrate",
            method: "drip",
            notes: [...leaves(6), ["stem-woody", -3]],
          },
        ],
      },
    ],
    soilCsv: [
      NORTH_LAB,
      "%-40%,Tunnel A,LF-1,6,6.6,6.8,3.4,62,118,1340,142,0.6",
      "%-40%,Field 1,LF-2,6,5.7,6.4,2.1,24,71,820,66,0.3",
    ],
    shed: [
      ["calcium-nitrate", "Calcium nitrate", 15.5, 0, 0, true, "prohibited", 125, 0.9, { bagKg: 25 }],
      ["potassium-sulfate", "Sulfate of potash", 0, 0, 50, true, "restricted", 50, 1.3, { bagKg: 25 }],
      ["potassium-nitrate", "Potassium nitrate", 13, 0, 44, true, "prohibited", 0, 1.7, { bagKg: 25 }],
      [
        "monopotassium-phosphate",
        "Monopotassium phosphate",
        0,
        52,
        34,
        true,
        "prohibited",
        10,
        2.6,
        { bagKg: 25 },
      ],
      [
        "magnesium-sulfate",
        "Epsom salt",
        0,
        0,
        0,
        true,
        "allowed",
        40,
        0.7,
        { analysis: { mgPct: 9.8, sPct: 13 } },
      ],
      ["urea", "Urea", 46, 0, 0, true, "prohibited", 0, 0.8, { bagKg: 25 }],
      [
        "dolomitic-lime",
        "Dolomitic limestone",
        0,
        0,
        0,
        false,
        "allowed",
        75,
        0.2,
        { bagKg: 25, analysis: { ccePct: 102, finenessPct: 78, caPct: 21, mgPct: 12 } },
      ],
      [
        "wood-ash",
        "Stove ash",
        0,
        1.5,
        5,
        false,
        "restricted",
        80,
        null,
        { canBuy: false, analysis: { ccePct: 55, ashOf: "clean-wood" } },
      ],
    ],
    deliveries: [
      ["Calcium nitrate", -70, 75, 0.85, "CN-0311"],
      ["Calcium nitrate", -12, 50, 0.9, "CN-0427"],
    ],
    waterings: [
      ["Tunnel drip", -6, 55],
      ["Tunnel drip", -3, 60],
    ],
  },
  {
    name: "Heron Bottom",
    contact: "Piet Aldgrove",
    units: "metric",
    site: { name: "River flat", elevationM: 148, offset: [-2.6, 1.9, 150], station: "ALD-01" },
    valves: [{ name: "West", method: "drip", flowLPerH: 1100, efficiency: 0.9 }],
    beds: [
      {
        name: "West 1",
        lengthM: 40,
        texture: "silt-loam",
        cover: ["low-tunnel", -12],
        valve: "West",
        plantings: [
          {
            variety: "Frostpocket Sweet",
            marketType: "sweet-long",
            sown: -72,
            setOut: -9,
            plants: 150,
            yieldGoal: 28,
            material: "Poultry manure pellets",
            method: "banded",
            notes: [["no-new-leaf", -1]],
          },
          {
            variety: "Old Pimento",
            marketType: "pimiento",
            sown: -70,
            setOut: -8,
            plants: 90,
            yieldGoal: 26,
            material: "Poultry manure pellets",
            method: "banded",
          },
        ],
      },
      {
        name: "West 2",
        lengthM: 40,
        texture: "silt-loam",
        valve: "West",
        plantings: [
          {
            variety: "Ditchside Padron",
            marketType: "padron-type",
            sown: -70,
            setOut: -6,
            plants: 180,
            yieldGoal: 20,
            material: "Poultry manure pellets",
            method: "banded",
            given: [["Farmyard manure", -24, 150]],
            notes: [["growing-point-dead", -1]],
          },
          {
            variety: "Thornless Serrano",
            marketType: "serrano-type",
            sown: -56,
            plannedSetOut: 12,
            plants: 140,
            yieldGoal: 18,
            notes: leaves(5),
          },
        ],
      },
    ],
    soilCsv: [SHORE_LAB, "%-55%;West 1;1;15;6.9;4,2;34;155", "%-55%;West 2;2;15;7.1;3,9;17;92"],
    shed: [
      [
        "poultry-manure",
        "Poultry manure pellets",
        4,
        3,
        3,
        false,
        "allowed",
        400,
        0.5,
        { bagKg: 20, analysis: { manureOf: "poultry", composted: true, dryMatterPct: 88 } },
      ],
      [
        "manure",
        "Farmyard manure",
        0.5,
        0.3,
        0.6,
        false,
        "allowed",
        3000,
        null,
        { canBuy: false, analysis: { manureOf: "cattle", composted: false, dryMatterPct: 24 } },
      ],
    ],
    waterings: [["West", -5, 40]],
  },
  {
    name: "Three Larches",
    contact: "Oda Kestrelson",
    units: "metric",
    site: { name: "Upper terrace", elevationM: 341, station: "ALD-02" },
    valves: [
      { name: "House benches", method: "hand", flowLPerH: 300, efficiency: 0.8 },
      { name: "Terrace", method: "drip", flowLPerH: 700, efficiency: 0.9 },
    ],
    beds: [
      {
        name: "Heated house",
        lengthM: 18,
        texture: "loam",
        cover: ["heated-house", -150],
        valve: "House benches",
        plantings: [
          {
            variety: "Sun Habanero",
            marketType: "habanero-type",
            species: "chinense",
            sown: -118,
            setOut: -52,
            plants: 70,
            yieldGoal: 22,
            staked: true,
            material: "Blood meal",
            method: "banded",
            notes: [
              ["first-flower", -12],
              ["fruit-set", -3],
            ],
          },
          {
            variety: "Lemon Aji",
            marketType: "aji-type",
            species: "baccatum",
            sown: -115,
            setOut: -50,
            plants: 40,
            yieldGoal: 20,
            staked: true,
            material: "Blood meal",
            method: "banded",
          },
        ],
      },
      {
        name: "Terrace bed",
        lengthM: 25,
        texture: "sandy-loam",
        certification: "certified",
        valve: "Terrace",
        plantings: [
          {
            variety: "Hill Anaheim",
            marketType: "anaheim-type",
            sown: -58,
            plannedSetOut: 10,
            plants: 110,
            yieldGoal: 24,
            material: "Calcium nitrate",
            method: "drip",
            notes: [...leaves(6), hardened],
          },
          {
            variety: "Terrace Paprika",
            marketType: "paprika",
            sown: -57,
            plannedSetOut: 10,
            plants: 130,
            yieldGoal: 15,
            material: "Blood meal",
            method: "banded",
            notes: leaves(6),
          },
        ],
      },
      {
        name: "Pots by the wall",
        kind: "containers",
        lengthM: 8,
        containers: { count: 48, volumeL: 12, medium: "peat" },
        valve: "House benches",
        plantings: [
          {
            variety: "Window Thai",
            marketType: "thai-type",
            sown: -90,
            setOut: -28,
            plants: 48,
            yieldGoal: 10,
            material: "Blood meal",
            method: "watered-in",
            notes: [["container-drains", -4]],
            drained: [
              { on: -9, ecDSPerM: 2.1, ph: 6.3, drainedPct: 8 },
              { on: -2, ecDSPerM: 3.4, ph: 6.8, drainedPct: 5 },
            ],
          },
        ],
      },
    ],
    soilCsv: [NORTH_LAB, "%-30%,Terrace bed,TL-7,6,6.2,6.7,3.0,41,96,1010,88,0.4"],
    shed: [
      [
        "blood-meal",
        "Blood meal",
        12,
        0,
        0,
        false,
        "allowed",
        25,
        2.4,
        { bagKg: 12.5, certifiedProof: "Inputs list, entry 114", certifiedProofUntil: "2031-12-31" },
      ],
      [
        "langbeinite",
        "Langbeinite",
        0,
        0,
        22,
        false,
        "restricted",
        25,
        1.1,
        { bagKg: 25, certifiedProof: "Inputs list, entry 87", certifiedProofUntil: "2031-12-31" },
      ],
      [
        "wood-ash",
        "Ash of burnt litter",
        0,
        8,
        7,
        false,
        "prohibited",
        40,
        null,
        { canBuy: false, analysis: { ashOf: "manure" } },
      ],
      ["calcium-nitrate", "Calcium nitrate", 15.5, 0, 0, true, "prohibited", 50, 0.95],
    ],
    waterings: [["House benches", -2, 45]],
  },
  {
    name: "Quarry Lane",
    contact: "Bram Ollerby",
    units: "us",
    site: { name: "Quarry floor", elevationM: 260, offset: [0.4, 1.1, 320], station: "ALD-01" },
    valves: [{ name: "Long line", method: "drip", flowLPerH: 2200, efficiency: 0.86 }],
    beds: [
      {
        name: "South 1",
        lengthM: 60,
        texture: "loamy-sand",
        mulch: ["black", -30],
        valve: "Long line",
        plantings: [
          {
            variety: "Quarry Bell",
            marketType: "bell",
            sown: -84,
            setOut: -20,
            plants: 280,
            yieldGoal: 35,
            material: "Soluble 20-20-20",
            method: "drip",
          },
          {
            variety: "Flint Anaheim",
            marketType: "anaheim-type",
            sown: -82,
            setOut: -19,
            plants: 90,
            yieldGoal: 24,
          },
          {
            variety: "Slate Poblano",
            marketType: "poblano-type",
            sown: -82,
            setOut: -19,
            plants: 120,
            yieldGoal: 25,
            material: "Soluble 20-20-20",
            method: "drip",
          },
        ],
      },
      {
        name: "South 2",
        lengthM: 60,
        texture: "loamy-sand",
        cover: ["fleece", -20],
        valve: "Long line",
        plantings: [
          {
            variety: "Chalk Jalapeno",
            marketType: "jalapeno-type",
            sown: -80,
            setOut: -18,
            plants: 260,
            yieldGoal: 26,
            material: "Soluble 20-20-20",
            method: "drip",
          },
          {
            variety: "Pebble Sweet",
            marketType: "mini-sweet",
            sown: -55,
            plannedSetOut: 4,
            plants: 100,
            yieldGoal: 22,
            grafted: true,
            notes: [...leaves(8), hardened, ["leggy", -1], ["stem-green", -1]],
          },
        ],
      },
    ],
    soilCsv: [
      NORTH_LAB,
      "%-25%,South 1,Q1,8,7.2,7.0,1.4,96,158,1720,210,0.5",
      "%-25%,South 2,Q2,8,7.0,7.0,1.6,88,52,1500,190,0.4",
    ],
    shed: [["compound", "Soluble 20-20-20", 20, 20, 20, true, "prohibited", 75, 2.1]],
    waterings: [
      ["Long line", -4, 75],
      ["Long line", -2, 50],
    ],
  },
  {
    name: "Windle Top",
    contact: "Sunniva Crake",
    units: "metric",
    site: { name: "Hill top", elevationM: 402, offset: [-0.3, 1.2, 95], station: "ALD-02" },
    valves: [{ name: "Tank", method: "drip", flowLPerH: 420, efficiency: 0.9 }],
    beds: [
      {
        name: "Ridge",
        lengthM: 22,
        valve: "Tank",
        plantings: [
          {
            variety: "Windle Cayenne",
            marketType: "cayenne-type",
            sown: -76,
            setOut: -12,
            plants: 90,
            yieldGoal: 14,
            material: "Urea",
            method: "banded",
          },
          { variety: "Windle Thai", marketType: "thai-type", sown: -74, setOut: -12, plants: 60 },
          {
            variety: "Top Serrano",
            marketType: "serrano-type",
            sown: -54,
            plannedSetOut: 14,
            plants: 90,
            yieldGoal: 14,
            notes: leaves(4),
          },
        ],
      },
      {
        name: "Lee side",
        lengthM: 22,
        texture: "clay",
        valve: "Tank",
        plantings: [
          {
            variety: "Late Lantern",
            marketType: "mini-sweet",
            sown: 4,
            plannedSetOut: 66,
            plants: 90,
            yieldGoal: 20,
            pricePerKg: 3.5,
            raising: { mediumC: 22, germinationPct: 85, lossPct: 10, growingC: 20 },
          },
          {
            variety: "Lee Padron",
            marketType: "padron-type",
            sown: -62,
            plannedSetOut: 7,
            plants: 100,
            yieldGoal: 18,
            notes: [...leaves(7), hardened],
          },
          {
            variety: "Lee Sweet",
            marketType: "sweet-long",
            sown: -62,
            plannedSetOut: 7,
            plants: 80,
            notes: leaves(7),
          },
        ],
      },
    ],
    soilCsv: ["sampled on,bed,sample,depth cm,pH,P ppm,K ppm", "%-70%,Lee side,W4,15,5.4,19,84"],
    shed: [["urea", "Urea", 46, 0, 0, true, "prohibited", 50, 0.8]],
  },
  {
    name: "Saltmarsh End",
    contact: "Teo Varnell",
    units: "metric",
    site: { name: "Sea wall", elevationM: 6, station: "ALD-03" },
    valves: [{ name: "Pond", method: "drip", flowLPerH: 1500, efficiency: 0.88 }],
    waterTests: [
      {
        valve: "Pond",
        on: -18,
        ecDSPerM: 2.4,
        waterPh: 8.1,
        alkalinityMgCaCO3PerL: 240,
        caMgPerL: 70,
        mgMgPerL: 48,
        naMgPerL: 310,
        clMgPerL: 480,
        bMgPerL: 0.8,
        nitrateNMgPerL: 1,
      },
    ],
    beds: [
      {
        name: "Wall bed",
        lengthM: 35,
        texture: "silty-clay-loam",
        mulch: ["white", -25],
        valve: "Pond",
        plantings: [
          {
            variety: "Samphire Bell",
            marketType: "bell",
            sown: -88,
            setOut: -24,
            plants: 140,
            yieldGoal: 30,
            material: "Potassium nitrate",
            method: "drip",
          },
          {
            variety: "Dyke Cayenne",
            marketType: "cayenne-type",
            sown: -88,
            setOut: -24,
            plants: 80,
            yieldGoal: 15,
          },
          {
            variety: "Brine Pimiento",
            marketType: "pimiento",
            sown: -60,
            plannedSetOut: 5,
            plants: 110,
            yieldGoal: 24,
            notes: [...leaves(7), hardened],
          },
        ],
      },
      {
        name: "Marsh bed",
        lengthM: 35,
        texture: "silty-clay",
        valve: "Pond",
        plantings: [
          {
            variety: "Marsh Jalapeno",
            marketType: "jalapeno-type",
            sown: -86,
            setOut: -22,
            plants: 150,
            yieldGoal: 22,
            material: "Potassium nitrate",
            method: "drip",
            notes: [["wilting-at-dawn", -1]],
          },
          {
            variety: "Marsh Rocoto",
            marketType: "rocoto-type",
            species: "pubescens",
            sown: -100,
            setOut: -22,
            plants: 30,
            notes: [["buds-visible", -2]],
          },
        ],
      },
    ],
    soilCsv: [
      "sampled on,bed,sample,depth cm,pH,EC dS/m,Mehlich-3 P mg/kg,Mehlich-3 K mg/kg",
      "%-20%,Wall bed,S1,15,7.6,2.9,44,310",
      "%-20%,Marsh bed,S2,15,7.8,4.1,39,350",
    ],
    shed: [["potassium-nitrate", "Potassium nitrate", 13, 0, 44, true, "prohibited", 100, 1.7]],
    waterings: [
      ["Pond", -7, 60],
      ["Pond", -1, 45],
    ],
  },
  {
    name: "Old Creamery",
    contact: "Juno Falk",
    units: "us",
    site: { name: "Behind the dairy", elevationM: 190, offset: [-0.8, 1.3, 400], station: "ALD-01" },
    valves: [
      { name: "Yard tap", method: "hand", flowLPerH: 600, efficiency: 0.75 },
      { name: "Bench drip", method: "drip", flowLPerH: 240, efficiency: 0.9 },
    ],
    structures: [
      {
        name: "Old glasshouse",
        glazing: "single-glass",
        innerLayer: "thermal-screen",
        floorAreaM2: 90,
        coverAreaM2: 210,
        volumeM3: 260,
        heaters: [
          { fuel: "firewood", efficiency: 0.6, outputW: 9_000, pricePerUnit: 0.18 },
          { fuel: "electricity", efficiency: 1, outputW: 6_000, pricePerUnit: 0.17 },
        ],
        trays: null,
        heated: [-60, 20],
      },
    ],
    beds: [
      {
        name: "South bench",
        lengthM: 12,
        texture: "sandy-loam",
        cover: ["heated-house", -200],
        valve: "Bench drip",
        tensionKpa: [12, 17, 24, 31, 14, 19, 26],
        plantings: [
          {
            variety: "Cinder Habanero",
            marketType: "habanero-type",
            species: "chinense",
            sown: -132,
            setOut: -68,
            plants: 40,
            yieldGoal: 14,
            pricePerKg: 9,
            staked: true,
            dryFrom: -3,
            notes: [
              ["first-flower", -30],
              ["fruit-set", -18],
            ],
          },
        ],
      },
      {
        name: "Glasshouse",
        lengthM: 20,
        texture: "loam",
        cover: ["heated-house", -200],
        valve: "Yard tap",
        plantings: [
          {
            variety: "Creamery Ghost",
            marketType: "habanero-type",
            species: "chinense",
            sown: -130,
            setOut: -66,
            plants: 60,
            yieldGoal: 16,
            staked: true,
            notes: [
              ["first-flower", -25],
              ["fruit-set", -14],
              ["end-rot", -2],
            ],
          },
          {
            variety: "Butter Sweet",
            marketType: "sweet-long",
            sown: -125,
            setOut: -64,
            plants: 80,
            yieldGoal: 45,
            staked: true,
            material: "Feather meal",
            method: "banded",
            credits: [{ kind: "manure", nKgPerHaLow: 40, nKgPerHaHigh: 90 }],
          },
        ],
      },
      {
        name: "Old lawn",
        lengthM: 28,
        texture: "loam",
        certification: "transition",
        valve: "Yard tap",
        plantings: [
          {
            variety: "Lawn Bell",
            marketType: "bell",
            sown: -59,
            plannedSetOut: 9,
            plants: 100,
            yieldGoal: 25,
            material: "Feather meal",
            method: "banded",
            credits: [{ kind: "legume", nKgPerHaLow: 45, nKgPerHaHigh: 80 }],
            notes: leaves(6),
          },
          { variety: "Lawn Ornamental", marketType: "ornamental", sown: -59, plannedSetOut: 9, plants: 60 },
        ],
      },
    ],
    soilCsv: [
      NORTH_LAB,
      "%-18%,Glasshouse,OC-1,6,6.8,6.9,5.2,140,240,2100,260,1.4",
      "%-18%,Old lawn,OC-2,6,6.0,6.6,4.4,33,90,980,102,0.3",
    ],
    shed: [
      [
        "feather-meal",
        "Feather meal",
        13,
        0,
        0,
        false,
        "allowed",
        60,
        1.9,
        { certifiedProof: "Inputs list, entry 52", certifiedProofUntil: "2031-12-31" },
      ],
    ],
    waterings: [
      ["Yard tap", -3, 90],
      ["Bench drip", -62, 60],
      ["Bench drip", -56, 60],
      ["Bench drip", -50, 60],
      ["Bench drip", -44, 60],
      ["Bench drip", -38, 60],
      ["Bench drip", -32, 60],
      ["Bench drip", -27, 60],
      ["Bench drip", -22, 60],
      ["Bench drip", -18, 60],
      ["Bench drip", -14, 60],
      ["Bench drip", -10, 60],
      ["Bench drip", -6, 60],
    ],
  },
  {
    name: "Bracken Yard",
    contact: "Vera Holmquill",
    units: "metric",
    site: { name: "Cleared bracken", elevationM: 275, station: "ALD-02" },
    valves: [{ name: "Spring line", method: "drip", flowLPerH: 520, efficiency: 0.9 }],
    beds: [
      {
        name: "New ground",
        lengthM: 26,
        texture: "sandy-loam",
        mulch: ["organic", -5],
        valve: "Spring line",
        plantings: [
          {
            variety: "Bracken Thai",
            marketType: "thai-type",
            sown: -66,
            plannedSetOut: 11,
            plants: 120,
            yieldGoal: 10,
            notes: [...leaves(8), hardened, ["disease-signs", -2]],
          },
          {
            variety: "Fern Paprika",
            marketType: "paprika",
            sown: -63,
            plannedSetOut: 11,
            plants: 140,
            yieldGoal: 12,
            notes: leaves(7),
          },
        ],
      },
      {
        name: "Fleeced",
        lengthM: 26,
        texture: "sandy-loam",
        cover: ["fleece", -16],
        valve: "Spring line",
        plantings: [
          {
            variety: "Yard Jalapeno",
            marketType: "jalapeno-type",
            sown: -78,
            setOut: -14,
            plants: 120,
            yieldGoal: 20,
            material: "Compost",
            method: "broadcast",
          },
          {
            variety: "Yard Poblano",
            marketType: "poblano-type",
            sown: -78,
            setOut: -14,
            plants: 90,
            yieldGoal: 20,
            material: "Compost",
            method: "broadcast",
          },
          {
            variety: "Gate Padron",
            marketType: "padron-type",
            sown: -77,
            setOut: -13,
            plants: 70,
            yieldGoal: 16,
          },
        ],
      },
      {
        name: "Pots at the gate",
        kind: "containers",
        lengthM: 6,
        containers: { count: 20, volumeL: 15, medium: "compost-mix" },
        plantings: [
          {
            variety: "Gate Habanero",
            marketType: "habanero-type",
            species: "chinense",
            sown: -85,
            plannedSetOut: 15,
            plants: 20,
            notes: leaves(9),
          },
          {
            variety: "Gate Mini",
            marketType: "mini-sweet",
            sown: -70,
            plannedSetOut: 15,
            plants: 20,
            notes: leaves(8),
          },
        ],
      },
    ],
    shed: [["compost", "Compost", 1, 0.6, 0.8, false, "allowed", 2000, 0.05]],
  },
];
