import type { Table } from "../../core/rule.ts";
import type { Working } from "../../core/working.ts";
import { type InForce, inForce } from "../../evidence/choices.ts";
import { readingsTable, type Side } from "../../evidence/readings.ts";
import type { PlantingState } from "../../states/states.ts";
import { type Message, say } from "../../text/message.ts";

/** Of the trade's rule and the trials, the one that holds for a leggy plant with a green stem in warm soil. */
export const readingInForce = (state: PlantingState): InForce =>
  inForce("setting-depth.leggy", state.settings);

/** Who chose the reading, in words. */
export const inForceSaid = ({ by, option }: InForce): Message => say(`setting-depth.limit.${by}-${option}`);

export function inForceLine(w: Working, { by, option }: InForce): void {
  w.line(
    "reading",
    "reading in force for a leggy plant, where the trade's rule and the trials differ",
    by === "office" ? "chosen by the office" : "default: nobody chose",
    option,
    "",
    option === "trials" ? { key: "hortscience-35-593", locator: "abstract" } : { key: "common-practice" },
  );
}

const ROWS: [Side, string][] = [
  ["practice", "setting-depth.trade-rule"],
  ["published", "setting-depth.lodging"],
  ["published", "setting-depth.georgia"],
  ["practice", "setting-depth.cold-soil"],
  ["gap", "setting-depth.stem-roots"],
];

/** The trade's rule and the trials side by side. */
export const bothReadings = (reading: InForce, grafted: boolean): Table =>
  readingsTable(
    "setting-depth-readings",
    grafted ? [...ROWS, ["published", "setting-depth.grafting"]] : ROWS,
    reading.claims,
  );
