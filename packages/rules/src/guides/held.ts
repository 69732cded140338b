import { refuse } from "../core/errors.ts";
import { guides } from "./register.ts";
import type { Guide } from "./schema.ts";

/** A guide by its id, among the office's own and those held here. */
export const heldGuide = (id: string | undefined, own: readonly Guide[] = []): Guide | undefined =>
  id === undefined ? undefined : (own.find((g) => g.id === id) ?? guides.get(id));

/** The guide that the office chose; undefined where it chose none. Refuses an id that nobody holds. */
export function chosenGuide(id: string | undefined, own: readonly Guide[] = []): Guide | undefined {
  const guide = heldGuide(id, own);
  if (id !== undefined && !guide) {
    const accepted = [...own.map((g) => g.id), ...guides.keys()].join(", ");
    refuse("settings.soilGuide", "is not a guide held here or by the office", accepted, id);
  }
  return guide;
}
