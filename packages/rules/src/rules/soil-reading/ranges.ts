import type { Range } from "../../core/rule.ts";
import { say } from "../../text/message.ts";
import { phRange } from "./acidity.ts";
import type { SoilReading } from "./reading.ts";
import type { ReadValue } from "./values.ts";

/** The pH and every content among the classes of the guide that read it. */
export function rangesOf({ test, read }: SoilReading): Range[] {
  const ph = test.waterPh !== undefined && test.medium === "mineral-soil" ? [phRange(test.waterPh)] : [];
  return [...ph, ...read.map(rangeOf)];
}

function rangeOf({ value, read }: ReadValue): Range {
  const { id, title, status } = read.guide;
  const range: Range = {
    id: value.nutrient,
    name: say(`soil-reading.nutrient.${value.nutrient}`),
    unit: "mg/kg",
    value: value.mgPerKg,
    classes: read.classes.map((c) => ({
      name: say(`soil-reading.class.${c.class}`),
      low: c.lowMgPerKg,
      high: c.highMgPerKg,
    })),
    class: read.at,
    guide: { id, title, status },
  };
  if (value.reported) range.reported = value.reported;
  return range;
}
