import { z } from "zod";
import { isTimeZone, PLAIN_DAY } from "../core/days.ts";
import { boundsOf, day, flag, int, lookedOver, num, word } from "../core/fields.ts";
import { CHOICE_IDS } from "../evidence/choices.ts";
import { POTTING_MEDIA } from "./food.ts";
import { keepStation, knownStation } from "./knownStations.ts";

/**
 * The parts that subjects' states are made of. A state holds everything the rules read about a subject, no names and
 * no free text (the ledger stores it), SI units, and missing is missing: a field left out, never a zero.
 */

const id = z.string().min(1).max(64);

export const SiteSchema = z.strictObject({
  latitudeDeg: num("latitude, north positive", "deg", -90, 90),
  longitudeDeg: num("longitude, east positive", "deg", -180, 180),
  elevationM: num("height above sea level", "m", -430, 6000),
  timeZone: z.string().refine(isTimeZone, "must be an IANA time zone, e.g. America/Chicago"),
  coastal: flag("within reach of a large water's air").optional(),
  /** How much colder (negative) the site's nights are than its station's, from paired minima. */
  stationOffset: z
    .strictObject({
      minC: num("mean of site minus station daily minima", "C", -15, 15),
      sdC: num("standard deviation of that difference", "C", 0, 10),
      nights: int("paired nights", "nights", 1, 20_000),
    })
    .optional(),
});
export type Site = z.infer<typeof SiteSchema>;

const weatherFields = {
  date: day("local day"),
  tMaxC: num("maximum air temperature", "C", -70, 60).optional(),
  tMinC: num("minimum air temperature", "C", -70, 60).optional(),
  rainMm: num("rain", "mm", 0, 2000).optional(),
  rhMaxPct: num("maximum relative humidity", "%", 0, 100).optional(),
  rhMinPct: num("minimum relative humidity", "%", 0, 100).optional(),
  rhMeanPct: num("mean relative humidity", "%", 0, 100).optional(),
  dewPointC: num("dew point", "C", -70, 40).optional(),
  windMPerS: num("mean wind speed", "m/s", 0, 60).optional(),
  windHeightM: num("height of the anemometer", "m", 0.5, 50).optional(),
  rsMjPerM2Day: num("solar radiation", "MJ/m2/day", 0, 45).optional(),
  sunshineH: num("bright sunshine", "h", 0, 24).optional(),
  cloudPct: num("mean cloud cover", "%", 0, 100).optional(),
};
const inOrder = (d: { tMaxC?: number | undefined; tMinC?: number | undefined }) =>
  d.tMaxC === undefined || d.tMinC === undefined || d.tMaxC >= d.tMinC;
const outOfOrder = { path: ["tMaxC"], error: "must not be below tMinC" };

/** One day of weather in the open, at the site's station. A real maximum above 60 C or minimum below -70 C has never been recorded. */
export const WeatherDaySchema = z.strictObject(weatherFields).refine(inOrder, outOfOrder);
export type WeatherDay = z.infer<typeof WeatherDaySchema>;

const MOST_WEATHER_DAYS = 800;
const weatherBounds = boundsOf(weatherFields);

/** Days of weather, oldest first or not. A season of them is most of what a state holds besides its station's years. */
export const WeatherDaysSchema = lookedOver(
  z.array(WeatherDaySchema).max(MOST_WEATHER_DAYS),
  (raw) => Array.isArray(raw) && raw.length <= MOST_WEATHER_DAYS && raw.every(looksLikeADay),
);

function looksLikeADay(raw: unknown): boolean {
  if (typeof raw !== "object" || raw === null) return false;
  const fields = raw as Record<string, unknown>;
  for (const name in fields) {
    const value = fields[name];
    if (name === "date") continue;
    const bounds = weatherBounds[name];
    if (!bounds || typeof value !== "number" || !(value >= bounds.min && value <= bounds.max)) return false;
  }
  const { date } = fields;
  if (typeof date !== "string") return false;
  return (PLAIN_DAY.test(date) || weatherFields.date.safeParse(date).success) && inOrder(fields);
}

/** One hour of a forecast in the open; `at` is when the hour begins. */
export const ForecastHourSchema = z.strictObject({
  at: z.iso.datetime({ offset: true }),
  temperatureC: num("air temperature", "C", -70, 60),
  dewPointC: num("dew point", "C", -70, 40).optional(),
  rhPct: num("relative humidity", "%", 0, 100).optional(),
  windMPerS: num("wind speed", "m/s", 0, 60).optional(),
  cloudPct: num("cloud cover", "%", 0, 100).optional(),
  rainMm: num("rain in the hour", "mm", 0, 500).optional(),
});
export type ForecastHour = z.infer<typeof ForecastHourSchema>;

/** A day as a forecast says it. */
export const ForecastDaySchema = z
  .strictObject({
    ...weatherFields,
    rainChancePct: num("chance of any rain", "%", 0, 100).optional(),
  })
  .refine(inOrder, outOfOrder);
export type ForecastDay = z.infer<typeof ForecastDaySchema>;

export const ForecastSchema = z.strictObject({
  issuedAt: z.iso.datetime({ offset: true }),
  days: z.array(ForecastDaySchema).max(16),
  /** Oldest first, where the source gives hours. */
  hours: z.array(ForecastHourSchema).max(240).optional(),
});
export type Forecast = z.infer<typeof ForecastSchema>;

const EARTH_C = { min: -70, max: 60 } as const;
const YEAR_OF_TEMPERATURES = z
  .array(z.number().min(EARTH_C.min).max(EARTH_C.max).nullable())
  .min(365)
  .max(366);

/** A year of daily temperatures. Thirty years of a station are 22,000 numbers. */
const yearOfTemperatures = lookedOver(YEAR_OF_TEMPERATURES, looksLikeAYear);

function looksLikeAYear(raw: unknown): boolean {
  if (!Array.isArray(raw) || raw.length < 365 || raw.length > 366) return false;
  for (let i = 0; i < raw.length; i++) {
    const t: unknown = raw[i];
    if (t === null) continue;
    // Written so that NaN falls through.
    if (typeof t !== "number" || !(t >= EARTH_C.min && t <= EARTH_C.max)) return false;
  }
  return true;
}

/** Daily minima and maxima of whole years, index 0 = 1 January; null where the day is missing. */
const climatologyFields = z.strictObject({
  stationId: id,
  years: z
    .array(
      z.strictObject({
        year: int("calendar year", "year", 1800, 2200),
        tMinC: yearOfTemperatures,
        tMaxC: yearOfTemperatures,
      }),
    )
    .max(200),
});

/**
 * A station's years as they are known already, if they are, else looked over and kept: states come with the same years
 * again and again, and what rules have drawn from them hangs on their being one object.
 */
export const ClimatologySchema = z
  .custom<z.infer<typeof climatologyFields>>()
  .transform((raw: unknown, context): z.infer<typeof climatologyFields> => {
    const known = knownStation(raw);
    if (known) return known;
    const parsed = climatologyFields.safeParse(raw);
    if (parsed.success) return keepStation(parsed.data);
    for (const issue of parsed.error.issues) context.addIssue({ ...issue });
    return z.NEVER;
  });
export type Climatology = z.infer<typeof ClimatologySchema>;

/** A temperature measured at the plants, under whatever cover stands there. */
export const PlantTemperatureSchema = z.strictObject({
  at: z.iso.datetime({ offset: true }),
  temperatureC: num("air temperature at the plants", "C", -50, 70),
});

export const TEXTURES = [
  "sand",
  "loamy-sand",
  "sandy-loam",
  "loam",
  "silt-loam",
  "silt",
  "silty-clay-loam",
  "silty-clay",
  "clay",
] as const;

export const SoilSchema = z
  .strictObject({
    /** Classes of FAO-56 Table 19. */
    texture: word("texture class", TEXTURES).optional(),
    fieldCapacity: num("water content at field capacity", "m3/m3", 0.02, 0.7).optional(),
    wiltingPoint: num("water content at wilting point", "m3/m3", 0.01, 0.5).optional(),
    bulkDensityKgPerM3: num("dry bulk density", "kg/m3", 100, 2000).optional(),
  })
  .refine(
    (s) => s.wiltingPoint === undefined || s.fieldCapacity === undefined || s.wiltingPoint < s.fieldCapacity,
    {
      path: ["wiltingPoint"],
      error: "must be below fieldCapacity",
    },
  );
export type Soil = z.infer<typeof SoilSchema>;

export const EXTRACTANTS = [
  "mehlich-1",
  "mehlich-3",
  "olsen",
  "bray-1",
  "ammonium-acetate",
  "modified-morgan",
  "dtpa",
  "hot-water",
  "kcl",
] as const;
export const NUTRIENTS = ["P", "K", "Ca", "Mg", "S", "Zn", "Cu", "Mn", "Fe", "B", "Na", "NO3-N"] as const;
export const EC_EXTRACTIONS = ["saturated-paste", "1:1", "1:2", "1:5"] as const;
export const BUFFER_METHODS = [
  "mehlich",
  "adams-evans",
  "smp",
  "sikora",
  "modified-mehlich",
  "woodruff",
] as const;

/** What a laboratory said of the water that is given. Ions in mg/L, alkalinity as CaCO3. */
export const WaterTestSchema = z.strictObject({
  id,
  sampledOn: day("day the sample was taken"),
  ecDSPerM: num("electrical conductivity", "dS/m", 0, 50).optional(),
  waterPh: num("pH", "pH", 2, 12).optional(),
  alkalinityMgCaCO3PerL: num("alkalinity as CaCO3", "mg/L", 0, 3000).optional(),
  caMgPerL: num("calcium", "mg/L", 0, 5000).optional(),
  mgMgPerL: num("magnesium", "mg/L", 0, 5000).optional(),
  naMgPerL: num("sodium", "mg/L", 0, 20_000).optional(),
  clMgPerL: num("chloride", "mg/L", 0, 40_000).optional(),
  bMgPerL: num("boron", "mg/L", 0, 100).optional(),
  nitrateNMgPerL: num("nitrate-N", "mg/L", 0, 500).optional(),
});
export type WaterTest = z.infer<typeof WaterTestSchema>;

export const SOIL_WATER_KINDS = ["tension-kpa", "water-content"] as const;

/** What a soil sensor in the bed read: tension in kPa (positive), or volumetric water content in m3/m3. */
export const SoilWaterReadingSchema = z
  .strictObject({
    at: z.iso.datetime({ offset: true }),
    kind: word("what the sensor reads", SOIL_WATER_KINDS),
    depthCm: num("depth of the sensor", "cm", 1, 200),
    value: num("kPa or m3/m3, as the kind says", "as the kind says", 0, 1500),
  })
  .refine((r) => r.kind !== "water-content" || r.value <= 1, {
    path: ["value"],
    error: "must be a share of volume, 0 to 1 m3/m3, for water-content",
  });
export type SoilWaterReading = z.infer<typeof SoilWaterReadingSchema>;

export const SoilTestSchema = z.strictObject({
  id,
  sampledOn: day("day the sample was taken"),
  depthCm: num("sampling depth", "cm", 1, 100),
  medium: word("what was sampled", ["mineral-soil", "organic-soil", "potting-medium"]),
  waterPh: num("pH in water", "pH", 2, 12).optional(),
  bufferPh: z
    .strictObject({ method: word("buffer method", BUFFER_METHODS), value: num("buffer pH", "pH", 3, 9) })
    .optional(),
  organicMatterPct: num("organic matter", "%", 0, 100).optional(),
  cecCmolPerKg: num("cation exchange capacity as reported", "cmol/kg", 0, 200).optional(),
  acidityCmolPerKg: num("exchangeable acidity", "cmol/kg", 0, 50).optional(),
  /** It fizzes with acid: free lime, which no sulfur puts right. */
  freeLime: flag("fizzes with vinegar or acid").optional(),
  ec: z
    .strictObject({
      dSPerM: num("electrical conductivity", "dS/m", 0, 50),
      /** Left out where the report does not say; such a value is not read. */
      extraction: word("extraction", EC_EXTRACTIONS).optional(),
    })
    .optional(),
  values: z
    .array(
      z.strictObject({
        nutrient: word("nutrient", NUTRIENTS),
        /** Left out where the report does not say; such a value is refused, not guessed. */
        extractant: word("extractant", EXTRACTANTS).optional(),
        mgPerKg: num("content", "mg/kg", 0, 100_000),
        /** As the laboratory printed it, where that was another unit. */
        reported: z
          .strictObject({
            value: num("as printed", "as its unit says", 0, 1_000_000),
            unit: z.string().min(1).max(20),
          })
          .optional(),
      }),
    )
    .max(40),
});
export type SoilTest = z.infer<typeof SoilTestSchema>;

export const COVERS = ["none", "fleece", "low-tunnel", "high-tunnel", "heated-house"] as const;
export const MULCHES = ["none", "black", "clear", "white", "silver", "organic"] as const;
export type Cover = (typeof COVERS)[number];
export type Mulch = (typeof MULCHES)[number];

const period = { from: day("first day"), to: day("last day; left out while it still stands").optional() };

export const BedSchema = z.strictObject({
  id,
  kind: word("ground or containers", ["ground", "containers"]),
  lengthM: num("length of the bed", "m", 0.2, 2000),
  widthM: num("width of the bed", "m", 0.1, 200),
  /** Bed centre to bed centre, alley included; a rate per hectare refers to this ground. */
  spacingM: num("bed centre to bed centre", "m", 0.2, 200),
  soil: SoilSchema,
  covers: z.array(z.strictObject({ cover: word("cover", COVERS), ...period })).max(50),
  mulches: z.array(z.strictObject({ mulch: word("mulch", MULCHES), ...period })).max(50),
  certification: word("certification of the bed", ["none", "transition", "certified"]),
  containers: z
    .strictObject({
      count: int("containers", "containers", 1, 100_000),
      volumeL: num("volume of one", "L", 0.05, 1000),
      medium: word("what they are filled with", POTTING_MEDIA).optional(),
    })
    .optional(),
});
export type Bed = z.infer<typeof BedSchema>;

export const SPECIES = ["annuum", "chinense", "baccatum", "frutescens", "pubescens"] as const;
export const MARKET_TYPES = [
  "bell",
  "sweet-long",
  "mini-sweet",
  "pimiento",
  "padron-type",
  "poblano-type",
  "anaheim-type",
  "jalapeno-type",
  "serrano-type",
  "cayenne-type",
  "thai-type",
  "paprika",
  "habanero-type",
  "aji-type",
  "rocoto-type",
  "ornamental",
] as const;

export const BASE_TEMPERATURE_FROM = ["published", "seed-company", "own-records"] as const;

export const PlantingSchema = z
  .strictObject({
    id,
    species: word("species of Capsicum", SPECIES),
    marketType: word("market type", MARKET_TYPES),
    /** The day sown; a day still to come is the day planned. */
    sownOn: day("sowing day"),
    /** Left out until the plants stand in the bed. */
    setOutOn: day("day the plants were set out").optional(),
    plannedSetOutOn: day("day the grower has in mind").optional(),
    endedOn: day("day the planting was cleared").optional(),
    plants: int("plants", "plants", 1, 1_000_000),
    rowsPerBed: int("rows in the bed", "rows", 1, 40),
    plantSpacingM: num("plant to plant in the row", "m", 0.05, 3),
    staked: flag("on stakes or strings").optional(),
    grafted: flag("grafted").optional(),
    overwintered: flag("deliberately kept over winter").optional(),
    yieldGoalTPerHa: num("yield goal, fresh fruit", "t/ha", 0.5, 250).optional(),
    /** As the seed list prints it. */
    daysToMaturity: z
      .strictObject({
        days: int("days", "days", 30, 250),
        from: word("counted from", ["sowing", "transplanting"]),
        to: word("counted to", ["green", "colour"]),
      })
      .optional(),
    baseTemperatureC: num("base temperature for heat units", "C", 4, 20).optional(),
    /** Where that temperature comes from. */
    baseTemperatureFrom: word("source of the base temperature", BASE_TEMPERATURE_FROM).optional(),
    /** When its fruit is picked; left out: as the market type is. */
    pickAt: word("picked", ["green", "colour"]).optional(),
    heightCm: num("height when grown", "cm", 10, 300).optional(),
    /** Bears pungent fruit; left out: as the market type does. */
    pungent: flag("pungent").optional(),
    saveSeed: flag("seed kept from it").optional(),
    expectedPricePerKg: num("price the grower expects for the fruit", "money/kg", 0, 10_000).optional(),
    /** How the seedlings are raised. */
    propagation: z
      .strictObject({
        mediumC: num("temperature of the seed's medium", "C", 0, 45).optional(),
        germinationPct: num("germination on the packet or from a test", "%", 1, 100).optional(),
        lossPct: num("seedlings lost between emergence and setting out", "%", 0, 95).optional(),
        growingC: num("mean temperature where they grow on", "C", 5, 40).optional(),
      })
      .optional(),
    /** A water deficit held on purpose, for more pungency. Left out: nobody asked for one. */
    deficit: z
      .strictObject({
        etShare: num("water allowed, as a share of full demand", "fraction", 0.5, 0.98).optional(),
        from: day("first day of the deficit"),
        to: day("last day of the deficit; left out while it is open").optional(),
      })
      .optional(),
  })
  .refine((p) => p.setOutOn === undefined || p.setOutOn >= p.sownOn, {
    path: ["setOutOn"],
    error: "must not be before sownOn",
  })
  .refine((p) => p.plannedSetOutOn === undefined || p.plannedSetOutOn >= p.sownOn, {
    path: ["plannedSetOutOn"],
    error: "must not be before sownOn",
  });
export type Planting = z.infer<typeof PlantingSchema>;

export const NOTE_KINDS = [
  "true-leaves",
  "height-cm",
  "stem-diameter-mm",
  "soil-temperature-10cm-c",
  "buds-visible",
  "first-flower",
  "fruit-set",
  "first-pick",
  "stem-green",
  "stem-woody",
  "leggy",
  "hardened",
  "growing-point-dead",
  "growing-point-alive",
  "new-leaf",
  "no-new-leaf",
  "spare-plants",
  "wilting-at-dawn",
  "end-rot",
  "sunscald",
  "disease-signs",
  "container-drains",
  "emerged",
  "potted-on",
  "flower-drop",
  "mites",
  "ground-cover-pct",
  "seed-leaves-open",
  "mature-green",
  "colouring",
  "tip-taken",
  "remark",
] as const;

/** What a person saw, without the words they used for it. */
export const FieldNoteSchema = z.strictObject({
  on: day("day seen"),
  kind: word("what was seen", NOTE_KINDS),
  /** The count or measure where the kind has one. */
  value: num("value", "as the kind says", -50, 1000).optional(),
});
export type FieldNote = z.infer<typeof FieldNoteSchema>;

/** What was really watered: by minutes of the valve, or by meter. */
export const WateringSchema = z
  .strictObject({
    on: day("day"),
    minutes: num("run time", "min", 0, 2880).optional(),
    litres: num("by meter", "L", 0, 100_000_000).optional(),
  })
  .refine((w) => w.minutes !== undefined || w.litres !== undefined, {
    path: ["minutes"],
    error: "minutes or litres must be given",
  });

/** An issued advice nobody has answered: unknown whether it was done. */
export const UnansweredSchema = z.strictObject({
  rule: id,
  issuedOn: day("day it was issued"),
  due: day("day it should have been done"),
  minutes: num("advised run time", "min", 0, 2880).optional(),
  netMm: num("advised net depth", "mm", 0, 500).optional(),
  materialId: id.optional(),
  amountKg: num("advised amount", "kg", 0, 1_000_000).optional(),
  nKgPerHa: num("nitrogen in it", "kg/ha", 0, 1000).optional(),
  /** What was advised to go with it; its nitrogen is counted above. */
  alongside: z
    .array(z.strictObject({ materialId: id, amountKg: num("advised amount", "kg", 0, 1_000_000) }))
    .max(500)
    .optional(),
});

export const RAW_MANURE_RULES = ["us-certified", "office-days"] as const;

/** What the office has set; left out means the rule's stated default. */
export const SettingsSchema = z.strictObject({
  coldFloorC: num("floor below which cold counts", "C", 0, 20).optional(),
  indoorNightFloorC: num("night floor for plants raised indoors", "C", 5, 25).optional(),
  setOutAllowedDegreeHours: num("degree-hours below the floor the office accepts", "C h", 0, 1000).optional(),
  setOutAllowedNights: num("nights below the floor the office accepts", "nights", 0, 30).optional(),
  setOutAcceptedRisk: num("accepted probability of a dose above that", "fraction", 0.01, 0.5).optional(),
  setOutFrostRisk: num("accepted probability of frost", "fraction", 0.001, 0.5).optional(),
  labourPerHour: num("labour", "money/h", 0, 1000).optional(),
  irrigateRainRisk: num("accepted chance that rain waited for stays out", "fraction", 0.01, 0.9).optional(),
  hotterLeastEtShare: num("least water a deliberate deficit may leave", "fraction", 0.5, 0.98).optional(),
  soilGuide: id.optional(),
  limeTargetPh: num("pH to lime to", "pH", 5, 7.5).optional(),
  rawManureRule: word("rule for raw manure before harvest", RAW_MANURE_RULES).optional(),
  feedingChlorideMostKgPerHa: num("most chloride a season", "kg/ha", 0, 5000).optional(),
  feedingAmmoniumMostPct: num("most of the nitrogen as ammonium or urea", "% of N", 0, 100).optional(),
  feedingSaltMostKgPerHa: num(
    "most salt a season on the treated strip, as sodium nitrate",
    "kg/ha",
    0,
    10_000,
  ).optional(),
  feedingCaToMgLeast: num("least calcium to magnesium given, by equivalents", "ratio", 0, 100).optional(),
  /** Which published reading the office follows where sources conflict: choice to option. Left out: the default. */
  choices: z.partialRecord(word("choice", CHOICE_IDS), id).optional(),
  feedingCaToKLeast: num("least calcium to potassium given, by equivalents", "ratio", 0, 100).optional(),
});
export type Settings = z.infer<typeof SettingsSchema>;
