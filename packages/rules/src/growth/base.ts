import type { SourceRef } from "../core/working.ts";
import { optionOf } from "../evidence/choices.ts";
import type { PlantingState } from "../states/states.ts";
import { BASE_TEMPERATURES, type BaseTemperature } from "../tables/baseTemperatures.ts";

/** The base temperature that heat is counted above, and why that one. */
export interface Base {
  baseC: number;
  /** The variety's own, or what the office follows where nobody gave one. */
  how: "variety" | "office" | "default";
  from: "published" | "seed-company" | "own-records" | null;
  source: SourceRef | null;
}

/** The variety's own base where it has one; else the option of `stage.base-temperature` in force. */
export function baseOf(state: PlantingState): Base {
  const { baseTemperatureC, baseTemperatureFrom } = state.planting;
  if (baseTemperatureC !== undefined) {
    return { baseC: baseTemperatureC, how: "variety", from: baseTemperatureFrom ?? null, source: null };
  }
  const option = optionOf("stage.base-temperature", state.settings);
  const row = BASE_TEMPERATURES.find((b) => b.id === option) ?? (BASE_TEMPERATURES[0] as BaseTemperature);
  const chosen = state.settings.choices?.["stage.base-temperature"] === option;
  return { baseC: row.baseC, how: chosen ? "office" : "default", from: null, source: row.source };
}
