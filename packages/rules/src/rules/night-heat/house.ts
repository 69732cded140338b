import type { Working } from "../../core/working.ts";
import { AIR_WH_PER_M3_K } from "../../quantities/climate/greenhouseHeat.ts";
import type { Structure } from "../../states/structure.ts";
import { COVER_OFFSETS } from "../../tables/covers.ts";
import { GLAZING_HEAT, GLAZING_SOURCE, INNER_LAYER_HEAT } from "../../tables/glazings.ts";

/** A house as its heat sees it. */
export interface House {
  uWPerM2K: number;
  airChangesPerH: number;
  /** Heat lost by each degree between inside and outside [W/K]. */
  lossWPerK: number;
  /** What the air must keep [C]: less than the plants need where fleece lies over them. */
  airC: number;
  plantsC: number;
}

const fleeceC = (): number => COVER_OFFSETS.find((row) => row.covers.join() === "fleece")?.lowC ?? 0;

/** Reads a house: what was measured, else the handbook's for its glazing, said in the working. */
export function readHouse(s: Structure, plantsC: number, w: Working): House {
  const glazing = GLAZING_HEAT[s.glazing];
  const layer = INNER_LAYER_HEAT[s.innerLayer];
  if (s.uWPerM2K === undefined) w.estimate("uWPerM2K", `the handbook's for ${s.glazing}`, GLAZING_SOURCE);
  if (s.airChangesPerH === undefined) {
    w.estimate("airChangesPerH", `the leaky end of the handbook's range for ${s.glazing}`, GLAZING_SOURCE);
  }
  const bare = s.uWPerM2K ?? glazing.uWPerM2K;
  w.line(
    "U",
    "heat transfer of the cover",
    s.uWPerM2K === undefined ? "table" : "stated",
    bare,
    "W/m2/K",
    GLAZING_SOURCE,
  );
  const uWPerM2K = layer
    ? w.line(
        "U'",
        "with the second layer drawn",
        `${layer.share} U`,
        bare * layer.share,
        "W/m2/K",
        layer.source,
      )
    : bare;
  const airChangesPerH = s.airChangesPerH ?? glazing.airChangesPerH;
  if (s.innerLayer === "fleece") {
    w.estimate(
      "innerLayer",
      `plants under fleece taken as ${fleeceC()} C warmer than the air, as measured outdoors`,
      {
        key: "psu-row-covers-2020",
        locator: "light spunbonded, 2-3 F",
      },
    );
  }
  const airC =
    s.innerLayer === "fleece"
      ? w.line(
          "Ta",
          "temperature of the air that keeps the plants at theirs under fleece",
          `${plantsC} - ${fleeceC()} (offset of a light fleece outdoors)`,
          plantsC - fleeceC(),
          "C",
          { key: "psu-row-covers-2020", locator: "light spunbonded, 2-3 F" },
        )
      : plantsC;
  const lossWPerK = uWPerM2K * s.coverAreaM2 + AIR_WH_PER_M3_K * s.volumeM3 * airChangesPerH;
  w.line("H", "heat lost by each degree", "U A + 0.335 V N", lossWPerK, "W/K", {
    key: "asae-ep406",
    locator: "structural and infiltration heat loss",
  });
  return { uWPerM2K, airChangesPerH, lossWPerK, airC, plantsC };
}

/** The same house with a second film, or with fleece over the plants; null where one is there already. */
export function withLayer(s: Structure, house: House, layer: "inner-film" | "fleece"): House | null {
  if (s.innerLayer !== "none") return null;
  if (layer === "fleece") return { ...house, airC: house.plantsC - fleeceC() };
  const share = INNER_LAYER_HEAT["inner-film"]?.share ?? 1;
  const lossWPerK = house.lossWPerK - (1 - share) * house.uWPerM2K * s.coverAreaM2;
  return { ...house, uWPerM2K: share * house.uWPerM2K, lossWPerK };
}
