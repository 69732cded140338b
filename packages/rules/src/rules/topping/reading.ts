import type { Table } from "../../core/rule.ts";
import { type InForce, inForce } from "../../evidence/choices.ts";
import { readingsTable, type Side } from "../../evidence/readings.ts";
import type { PlantingState } from "../../states/states.ts";
import { type Message, say } from "../../text/message.ts";
import type { Season } from "./season.ts";

/** Of caution, practice and the published yields, the one that is followed. */
export const readingInForce = (state: PlantingState): InForce => inForce("topping.default", state.settings);

/** Who chose it, in words. */
export const inForceSaid = ({ by, option }: InForce): Message => say(`topping.limit.${by}-${option}`);

const ROWS: [Side, string][] = [
  ["practice", "topping.practice"],
  ["published", "topping.chitwan"],
  ["published", "topping.baitadi"],
  ["published", "topping.lamjung"],
  ["published", "topping.lalitpur"],
  ["published", "topping.shoot-pruned"],
  ["published", "topping.potted-delay"],
  ["published", "topping.stems"],
  ["gap", "topping.gap"],
];

/** Practice and publications side by side. */
export const bothReadings = (reading: InForce): Table =>
  readingsTable("topping-readings", ROWS, reading.claims);

/** The first ripe fruit with its tip and without, by the published delay, against frost. */
export const seasonTable = ({ left, taken, chanceLeft, chanceTaken }: Season): Table => ({
  id: "topping-season",
  title: say("topping.table.title"),
  columns: [
    { name: say("topping.table.way") },
    { name: say("topping.table.early") },
    { name: say("topping.table.likely") },
    { name: say("topping.table.late") },
    { name: say("topping.table.chance"), unit: "pct" },
  ],
  rows: [
    [say("topping.table.left"), left.low, left.likely, left.high, percent(chanceLeft)],
    [say("topping.table.taken"), taken.low, taken.likely, taken.high, percent(chanceTaken)],
  ],
});

const percent = (share: number | null): number | null => (share === null ? null : 100 * share);
