import type { UnitSystem } from "@pith/rules";

/** Sheets that a home's or an office's printer holds, in points of 1/72 inch. */
const SHEETS = { a4: [595.28, 841.89], letter: [612, 792] } as const;

export type Paper = keyof typeof SHEETS;

/** Who reads in US customary units prints on Letter; all others on A4. */
export const paperOf = (units: UnitSystem): Paper => (units === "us" ? "letter" : "a4");

export function sizeOf(paper: Paper, landscape = false): [width: number, height: number] {
  const [short, long] = SHEETS[paper];
  return landscape ? [long, short] : [short, long];
}
