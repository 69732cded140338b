import type { FarmDetail } from "@pith/contract";
import type { Reader } from "@pith/rules";

/** How a farm's advice is said: in its units, its beds by their names. What was issued keeps the units it was issued in. */
export const readerOf = (detail: FarmDetail, units = detail.farm.units): Reader => ({
  language: "en",
  units,
  bedNames: new Map(detail.beds.map((bed) => [bed.id, bed.name])),
});
