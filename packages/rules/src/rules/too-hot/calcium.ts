import { latestTest } from "../../food/latestTest.ts";
import { heldGuide } from "../../guides/held.ts";
import type { PlantingState } from "../../states/states.ts";
import { readValue } from "../soil-reading/values.ts";

/** Calcium as far as tests tell. Leaf and fruit were not analysed. */
export interface Calcium {
  soilMgPerKg: number | null;
  extractant: string | null;
  /** By the guide that fits the extractant; "unread" where none does or its extractant was not said. */
  soil: "short" | "enough" | "unread" | "untested";
  waterMgPerL: number | null;
}

export function calciumOf(state: PlantingState, today: string): Calcium {
  const latest = latestTest(state.soilTests, today);
  const waterMgPerL = state.waterTests?.find((t) => t.caMgPerL !== undefined)?.caMgPerL ?? null;
  const at = latest?.test.values.findIndex((v) => v.nutrient === "Ca") ?? -1;
  const value = latest?.test.values[at];
  if (!latest || !value) return { soilMgPerKg: null, extractant: null, soil: "untested", waterMgPerL };
  const { test, index } = latest;
  const context = {
    ...(test.waterPh !== undefined && { waterPh: test.waterPh }),
    ...(test.cecCmolPerKg !== undefined && { cecCmolPerKg: test.cecCmolPerKg }),
  };
  const reading = readValue(test, value, `soilTests.${index}.values.${at}`, context, {
    chosen: heldGuide(state.settings.soilGuide, state.guides),
    own: state.guides,
  });
  const soil = !("read" in reading) ? "unread" : reading.read.response === "responds" ? "short" : "enough";
  return { soilMgPerKg: value.mgPerKg, extractant: value.extractant ?? null, soil, waterMgPerL };
}
