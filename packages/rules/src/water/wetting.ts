import type { SourceRef } from "../core/working.ts";
import { fao56 } from "../quantities/cite.ts";
import type { ValveState } from "../states/states.ts";
import type { Range } from "../tables/soils.ts";

/** Share of the ground that a way of watering wets. Source: FAO-56, Table 20. */
const WETTED_FRACTION: Record<Exclude<ValveState["valve"]["method"], "hand">, Range> = {
  drip: { low: 0.3, high: 0.4 },
  sprinkler: { low: 1, high: 1 },
  // Wide beds 0.4 to 0.6, narrow beds 0.6 to 1: the value both rows share.
  furrow: { low: 0.6, high: 0.6 },
};

/** How a valve wets the ground. */
export interface Wetting {
  wettedFraction: number;
  /** Drippers wet the ground beneath the plants, where most of it is shaded. */
  trickle: boolean;
  how: "measured" | "table" | "whole";
  source: SourceRef | undefined;
}

/**
 * The share of the ground that a valve wets: measured, else Table 20 by its method, the end that wets more and so
 * evaporates more. Watering by hand has no row: all of the ground is taken.
 */
export function wettingOf(valve: ValveState["valve"]): Wetting {
  const trickle = valve.method === "drip";
  if (valve.wettedFraction !== undefined) {
    return { wettedFraction: valve.wettedFraction, trickle, how: "measured", source: undefined };
  }
  if (valve.method === "hand") return { wettedFraction: 1, trickle, how: "whole", source: undefined };
  const source = fao56("Table 20, p. 149");
  return { wettedFraction: WETTED_FRACTION[valve.method].high, trickle, how: "table", source };
}
