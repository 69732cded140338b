import { z } from "zod";
import { day, int, num, word } from "../core/fields.ts";

/** What was seen, sprayed and picked of one planting. */

/** One sign on sick or odd plants, as field guides to diagnosis tell them apart. */
export const SIGNS = [
  "wilting-by-day",
  "wilting-for-good",
  "leaves-yellow-old",
  "leaves-yellow-young",
  "leaves-yellow-between-veins",
  "leaves-mottled",
  "leaves-curled",
  "leaves-narrow",
  "leaf-spots-water-soaked",
  "leaf-spots-ringed",
  "leaf-edges-brown",
  "leaves-bronzed",
  "leaves-with-holes",
  "leaves-purple",
  "leaves-dropping",
  "sticky-leaves",
  "fine-webbing",
  "stem-black-at-soil",
  "stem-inside-brown",
  "stem-chewed-through",
  "roots-brown",
  "growing-point-dead",
  "plants-stunted",
  "flowers-dropping",
  "fruit-end-dark",
  "fruit-bleached",
  "fruit-spots-raised",
  "fruit-sunken-spots",
  "fruit-rings",
  "fruit-holes",
  "fruit-water-soaked",
  "fruit-misshapen",
  "insects-seen",
  "eggs-seen",
  "mites-seen",
  "leaves-stippled",
  "leaves-silvery",
  "leaves-torn",
  "leaves-dark-limp",
  "seedlings-fallen",
  "white-threads-at-soil",
  "stem-bored",
] as const;
export type SignKind = (typeof SIGNS)[number];
export const PLANT_PARTS = [
  "old-leaves",
  "young-leaves",
  "all-leaves",
  "stem",
  "roots",
  "flowers",
  "fruit",
  "whole-plant",
] as const;
/** Where in the bed the plants with the sign stand. */
export const BED_PATTERNS = [
  "single-plants",
  "patch",
  "low-spot",
  "edge",
  "along-row",
  "windward",
  "everywhere",
] as const;
export const SPEEDS = ["overnight", "days", "weeks", "since-planting"] as const;

/** What somebody saw wrong with plants. Photographs stay outside the state. */
export const SignSchema = z.strictObject({
  on: day("day seen"),
  sign: word("what was seen", SIGNS),
  part: word("on which part", PLANT_PARTS).optional(),
  pattern: word("where in the bed", BED_PATTERNS).optional(),
  speed: word("how fast it came", SPEEDS).optional(),
  plantsPct: num("share of the plants that show it", "%", 0, 100).optional(),
  photos: int("photographs of it", "photographs", 0, 50).optional(),
});
export type Sign = z.infer<typeof SignSchema>;

export const OWN_WORK_TASKS = ["covering", "airing"] as const;

/** What work on a bed of this farm took, as its people wrote it down. */
export const OwnWorkSchema = z.strictObject({
  task: word("work", OWN_WORK_TASKS),
  minutes: num("what it took, of all who worked", "minutes", 0, 10_000),
  bedM2: num("bed it was done on, without its alley", "m2", 0.01, 1_000_000),
});
export type OwnWork = z.infer<typeof OwnWorkSchema>;

export const SPRAY_TARGETS = ["insects", "mites", "disease", "weeds", "other"] as const;

/** One spraying, with the two intervals of its label. Which product it was stays outside the state. */
export const SpraySchema = z.strictObject({
  at: z.iso.datetime({ offset: true }),
  target: word("what it was against", SPRAY_TARGETS),
  reEntryHours: num("re-entry interval on the label", "h", 0, 1440),
  preHarvestDays: int("pre-harvest interval on the label", "days", 0, 365),
});
export type Spray = z.infer<typeof SpraySchema>;

/** When this variety was first picked on this farm in an earlier season. */
export const FirstPickSchema = z.strictObject({
  sownOn: day("sowing day"),
  setOutOn: day("day set out"),
  firstPickOn: day("day first picked"),
  at: word("picked", ["green", "colour"]).optional(),
});
export type FirstPick = z.infer<typeof FirstPickSchema>;

export const PickedSchema = z.strictObject({
  on: day("day picked"),
  kg: num("picked", "kg", 0, 1_000_000),
  marketableKg: num("fit to sell", "kg", 0, 1_000_000).optional(),
});
export type Picked = z.infer<typeof PickedSchema>;
