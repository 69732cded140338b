import type { DemoPlanting } from "./types.ts";

/** What several farms share. */

export const leaves = (n: number, on = -2): NonNullable<DemoPlanting["notes"]> => [["true-leaves", on, n]];
export const hardened: NonNullable<DemoPlanting["notes"]>[number] = ["hardened", -2];

/** Lab columns of two invented laboratories. */
export const NORTH_LAB =
  "Date sampled,Bed,Sample ID,Depth (in),pH,Buffer pH (SMP),OM %,Mehlich-3 P ppm,Mehlich-3 K ppm,Mehlich-3 Ca ppm,Mehlich-3 Mg ppm,EC 1:2 (mmhos/cm)";
export const SHORE_LAB =
  "sampled on;bed;sample;depth cm;pH;organic matter %;Olsen P mg/kg;K ammonium acetate mg/kg";
