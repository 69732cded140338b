import { z } from "zod";
import { num, word } from "../core/fields.ts";
import { EXTRACTANTS, NUTRIENTS } from "../states/parts.ts";

/** The classes' names as the guides print them. */
export const SOIL_TEST_CLASSES = [
  "very-low",
  "low",
  "medium",
  "high",
  "very-high",
  "below-optimum",
  "optimum",
  "above-optimum",
  "below-normal",
  "normal",
  "above-normal",
  "deficient",
  "adequate",
  "warning",
  "responds",
  "may-respond",
  "unlikely-to-respond",
] as const;

/** `office`: an office's own, with the source it states; the others say how we read a published one. */
const GUIDE_STATUSES = ["seen", "secondary", "memory", "office"] as const;
export const GUIDE_UNITS = ["mg/kg", "lb/A", "kg/ha"] as const;
export const GUIDE_MEDIA = ["mineral-soil", "organic-soil"] as const;
export const RATE_UNITS = ["lb/A", "kg/ha"] as const;
/** What a guide says a crop does on a soil of a class. */
export const GUIDE_RESPONSES = ["responds", "may-respond", "unlikely"] as const;
export const RATE_FORMS = ["P2O5", "K2O", "P", "K", "Ca", "Mg", "S", "Zn", "Cu", "Mn", "Fe", "B"] as const;

const bound = (meaning: string) => num(meaning, "as the guide's unit says", 0, 1_000_000);
const said = (max: number) => z.string().trim().min(3).max(max);

/** One class: bounds as printed, both ends included, in the guide's unit. */
const GuideClassSchema = z.strictObject({
  class: word("class, in the guide's word", SOIL_TEST_CLASSES),
  low: bound("lowest printed content of the class"),
  /** Null in the topmost class, which is open. */
  high: bound("highest printed content of the class").nullable(),
  /** Whether a crop on such a soil can be expected to answer to the nutrient. */
  response: word("what the guide says of the crop's response", GUIDE_RESPONSES),
  /** Where the guide itself places the class against its optimum. */
  optimum: word("against the guide's optimum", ["below", "at", "above"]).optional(),
  /** The sheet prints its top as the start of the next class too; it is read as this one. */
  topIsShared: z.literal(true).optional(),
});

/** How one nutrient is read. */
const GuideReadingSchema = z.strictObject({
  extractant: word("extractant it was calibrated with", EXTRACTANTS),
  /** Of the printed bounds. A value is rounded to them before it is compared. */
  decimals: z.int().min(0).max(3),
  /** Lowest first, without gaps at that precision. */
  classes: z.array(GuideClassSchema).min(2).max(10),
  /** Where not the content is compared, but an index of content and pH. */
  index: z
    .strictObject({
      name: said(40),
      intercept: z.number(),
      perMgPerKg: z.number().positive(),
      perPh: z.number(),
    })
    .optional(),
  /** Where the bound of two classes moves with the exchange capacity: content below which crops respond. */
  boundByCec: z
    .array(
      z.strictObject({
        cecCmolPerKg: num("exchange capacity", "cmol/kg", 0, 200),
        below: bound("content below which crops respond"),
      }),
    )
    .min(2)
    .max(20)
    .optional(),
  note: said(500).optional(),
});

const amount = {
  low: num("lowest printed rate", "as its unit says", 0, 20_000),
  high: num("highest printed rate; the same where one number is printed", "as its unit says", 0, 20_000),
};
const rate = z.strictObject({ ...amount, unit: word("unit of the rate", RATE_UNITS) });

/** What the guide recommends from its classes. */
const RecommendationsSchema = z.strictObject({
  /** The crop and how it is grown, as the guide names it. */
  crop: said(120),
  targetPh: z
    .strictObject({
      low: num("lowest target pH", "pH", 3, 9),
      high: num("highest target pH", "pH", 3, 9),
    })
    .optional(),
  nitrogen: rate.optional(),
  /** Later, while the crop stands. */
  nitrogenSidedress: rate.optional(),
  /** Rates by class, one nutrient a row. A class that the guide leaves out has no rate here. */
  grid: z
    .array(
      z.strictObject({
        nutrient: word("nutrient", NUTRIENTS),
        form: word("form the rate is printed in", RATE_FORMS),
        unit: word("unit of the rates", RATE_UNITS),
        rates: z
          .array(z.strictObject({ class: word("class", SOIL_TEST_CLASSES), ...amount }))
          .min(1)
          .max(10),
      }),
    )
    .max(12)
    .optional(),
  /** Magnesium in a class: dolomitic lime where lime is due anyway, else a rate. */
  magnesium: z.strictObject({ class: word("class", SOIL_TEST_CLASSES), withoutLime: rate }).optional(),
  /** Gypsum where calcium is short and no lime is due. */
  gypsum: z
    .strictObject({
      caBelow: bound("calcium below which gypsum is given"),
      phAtLeast: num("pH from which it is given", "pH", 3, 9),
      rate,
    })
    .optional(),
});

/** The fields of a published or an office's own table that puts a soil test's numbers into classes, with its rates. */
export const GuideShape = z.strictObject({
  id: z.string().regex(/^[a-z0-9][a-z0-9-]{1,62}$/, "must be 2 to 63 of a-z, 0-9 and hyphens"),
  title: said(160),
  region: said(120),
  /** `key` of the evidence register; an office's own has the key `office-guide`, and its source as the locator. */
  source: z.strictObject({
    key: z.string().min(1).max(64),
    locator: said(300).optional(),
  }),
  status: word("how it is known", GUIDE_STATUSES),
  unit: word("unit of the printed bounds", GUIDE_UNITS),
  medium: word("what it is made for", GUIDE_MEDIA),
  nutrients: z.partialRecord(z.enum(NUTRIENTS), GuideReadingSchema),
  recommendations: RecommendationsSchema.optional(),
  /** What a reader of the result must be told, such as an extractant that the sheet does not name. */
  note: said(500).optional(),
});

export type Guide = z.infer<typeof GuideShape>;
export type GuideReading = z.infer<typeof GuideReadingSchema>;
export type GuideClass = z.infer<typeof GuideClassSchema>;
export type GuideRate = z.infer<typeof rate>;
export type SoilTestClass = (typeof SOIL_TEST_CLASSES)[number];
export type Response = GuideClass["response"];
