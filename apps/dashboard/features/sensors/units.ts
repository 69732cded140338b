import type { Series } from "@pith/contract";
import type { UnitSystem } from "@pith/rules";
import { amountText, readerUnit } from "../../format/measured.ts";

/** The rules' names of the units that readings are kept in; what they have none for is named as people write it. */
const NAMES: Record<string, string> = {
  Cel: "C",
  "%RH": "pct",
  "%EL": "pct",
  "/": "m³/m³",
  "W/m2": "W/m²",
};
const nameOf = (keptIn: string): string => NAMES[keptIn] ?? keptIn;

/** `8.5 °C`, in the farm's units. */
export const readingText = (value: number, { keptIn }: Pick<Series, "keptIn">, units: UnitSystem): string =>
  amountText(value, nameOf(keptIn), units);

export const unitOfSeries = ({ keptIn }: Pick<Series, "keptIn">, units: UnitSystem) =>
  readerUnit(nameOf(keptIn), units);
