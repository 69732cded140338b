import { z } from "zod";
import { day, flag, int, num, word } from "../core/fields.ts";
import { MARKET_TYPES, SPECIES } from "./parts.ts";

/** A season's plantings on the beds of a farm, as a plan: what stands where, and what stood there before. */

const id = z.string().min(1).max(64);

/** Crops as rotation sees them: by which soil-borne pathogens they keep alive. */
export const CROPS = [
  "pepper",
  "tomato",
  "eggplant",
  "potato",
  "tomatillo",
  "cucumber",
  "melon",
  "squash",
  "pumpkin",
  "snap-bean",
  "lima-bean",
  "pea",
  "soybean",
  "brassica",
  "lettuce",
  "spinach-beet",
  "onion-garlic",
  "carrot-parsley",
  "sweet-corn",
  "small-grain",
  "grass-clover",
  "mustard-cover",
  "buckwheat",
  "strawberry",
  "sweet-potato",
  "fallow",
  "other",
] as const;
export type Crop = (typeof CROPS)[number];

/** Diseases that stay in the ground. */
export const SOIL_DISEASES = [
  "phytophthora-blight",
  "verticillium-wilt",
  "bacterial-leaf-spot",
  "southern-blight",
  "root-knot",
  "sclerotinia",
] as const;
export type SoilDisease = (typeof SOIL_DISEASES)[number];

/** What stood in a bed in one season. */
export const BedHistorySchema = z.strictObject({
  season: int("calendar year", "year", 1900, 2200),
  crop: word("crop", CROPS),
  disease: word("disease that was found in it", SOIL_DISEASES).optional(),
});
export type BedHistory = z.infer<typeof BedHistorySchema>;

/** Where a bed lies on the farm's plan: one corner, and which way its length runs. */
export const BedPlaceSchema = z.strictObject({
  eastM: num("first corner, metres east of the plan's origin", "m", -100_000, 100_000),
  northM: num("first corner, metres north of the plan's origin", "m", -100_000, 100_000),
  bearingDeg: num(
    "bearing of the bed's length from that corner, clockwise from north; its width lies to the right",
    "deg",
    0,
    360,
  ),
});
export type BedPlace = z.infer<typeof BedPlaceSchema>;

export const SHADE_SIDES = ["north", "east", "south", "west"] as const;

export const PlanBedSchema = z.strictObject({
  id,
  kind: word("ground or containers", ["ground", "containers"]),
  lengthM: num("length", "m", 0.2, 2000),
  widthM: num("width", "m", 0.1, 200),
  /** Rows that a bed of this width takes. */
  rows: int("rows", "rows", 1, 40),
  place: BedPlaceSchema.optional(),
  valveId: id.optional(),
  /** The side from which something that is no planting shades it: trees, a house. */
  shadedFrom: word("shaded from", SHADE_SIDES).optional(),
  /** Oldest first. */
  history: z.array(BedHistorySchema).max(200),
});
export type PlanBed = z.infer<typeof PlanBedSchema>;

/** Where a block stands: its first row counted from the bed's first corner across its width, and from where along its length. */
export const PlacementSchema = z.strictObject({
  bedId: id,
  row: int("first row, from 1", "row", 1, 40),
  fromM: num("begins, from the bed's first end", "m", 0, 2000),
});
export type Placement = z.infer<typeof PlacementSchema>;

/** Plants of one variety that stand together. */
export const BlockSchema = z.strictObject({
  id,
  /** The planting this is, where it exists already. */
  plantingId: id.optional(),
  /** The same for every block of one variety. */
  variety: id,
  species: word("species of Capsicum", SPECIES),
  marketType: word("market type", MARKET_TYPES),
  /** Bears pungent fruit; left out: as the market type does. */
  pungent: flag("pungent").optional(),
  plants: int("plants", "plants", 1, 1_000_000),
  /** Rows side by side that it takes. */
  rows: int("rows", "rows", 1, 40),
  plantSpacingM: num("plant to plant in the row", "m", 0.05, 3),
  heightCm: num("height when grown", "cm", 10, 300).optional(),
  water: word("water", ["full", "deficit"]),
  /** Seed is to be kept from it. */
  saveSeed: flag("seed kept from it").optional(),
  /** Stays where it stands, whatever is proposed. */
  pinned: flag("stays where it is").optional(),
  firstPickOn: day("first pick expected").optional(),
  at: PlacementSchema.optional(),
});
export type Block = z.infer<typeof BlockSchema>;
