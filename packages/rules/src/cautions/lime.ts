import type { Caution } from "./types.ts";

const caution = (id: string, severity: Caution["severity"], en: string): Caution => ({
  id,
  version: 1,
  severity,
  text: { en },
});

/** What lime, sulfur and ash can do to people and buildings. */
export const limeCautions: Caution[] = [
  caution(
    "lime-caustic",
    "danger",
    "Burnt and hydrated lime burn eyes and skin, and burnt lime boils with water. Goggles, gloves, long sleeves and a mask; never in wind, never on wet skin. Rinse eyes with water at once and see a doctor. Store it dry, away from children, animals and anything that burns.",
  ),
  caution(
    "lime-dust",
    "warning",
    "Lime dust irritates eyes and lungs. Wear eye protection and a mask, and spread it on a still day.",
  ),
  caution(
    "lime-not-with-ammonium",
    "warning",
    "Never mix lime with ammonium or urea fertilisers or fresh manure, and never put them on the same ground at the same time: ammonia gas escapes, which hurts people and wastes nitrogen.",
  ),
  caution(
    "sulfur-dust",
    "danger",
    "Sulfur dust burns and can explode: no flame, no sparks, never stored with nitrate fertilisers or other oxidisers. It stings eyes and lungs: goggles and a mask. Never more at once than advised.",
  ),
  caution(
    "ash-embers",
    "danger",
    "Embers live for days in ash. Keep it outdoors in a metal bin with a tight metal lid, on bare ground, until it is stone cold; never in a bag, a box or a barn.",
  ),
];
