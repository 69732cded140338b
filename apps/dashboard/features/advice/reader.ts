import type { FarmDetail } from "@pith/contract";
import type { Language, Reader } from "@pith/rules";
import { readerLanguage } from "../../format/language.ts";

/** How a farm's advice is said: in its units, its beds, plantings and materials by their names. What was issued keeps the units it was issued in. */
export function readerOf(
  detail: FarmDetail,
  units = detail.farm.units,
  language: Language = readerLanguage(),
): Reader {
  const bedNames = new Map(detail.beds.map((bed) => [bed.id, bed.name]));
  for (const { id, varietyName, bedId } of detail.plantings) {
    bedNames.set(id, `${varietyName}, ${bedNames.get(bedId) ?? ""}`);
  }
  for (const { id, name } of detail.materials) bedNames.set(id, name);
  return { language, units, bedNames };
}
