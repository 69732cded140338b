import type { Chart } from "../../core/rule.ts";
import { germinationDays } from "../../quantities/climate/germinationDays.ts";
import { say } from "../../text/message.ts";
import type { Raising } from "./plan.ts";

/** The medium's whole degrees between which the table tells days. */
const FIRST_C = 15;
const LAST_C = 35;

const CURVE = Array.from({ length: LAST_C - FIRST_C + 1 }, (_, i): [number, number | null] => [
  FIRST_C + i,
  germinationDays.compute({ soilC: FIRST_C + i }).value.days,
]);

/** Days until seedlings show, by the medium's temperature, and this medium's. */
export const emergenceChart = (raising: Raising): Chart => ({
  id: "emergence",
  title: say("sow-by.chart.title"),
  x: { name: say("sow-by.chart.medium"), kind: "number", unit: "C" },
  y: { name: say("sow-by.chart.days"), unit: "days" },
  series: [
    { id: "table", name: say("sow-by.chart.table"), style: "line", points: CURVE },
    {
      id: "yours",
      name: say("sow-by.chart.yours"),
      style: "bars",
      points: [[raising.mediumC, raising.germinationDays]],
    },
  ],
});
