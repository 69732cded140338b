import type { SourceRef } from "../core/working.ts";
import type { MaterialKind } from "../states/food.ts";

/** What a litre of water dissolves [g], by temperature [°C], coldest first. */
export interface SolubilityRow {
  atC: readonly (readonly [temperatureC: number, gPerL: number])[];
  source: SourceRef;
  status: "secondary" | "memory";
}

const COLUMNS_C = [5, 10, 20, 25, 30, 40] as const;
const row = (...gPerL: number[]): SolubilityRow => ({
  atC: gPerL.map((g, i) => [COLUMNS_C[i] ?? Number.NaN, g] as const),
  source: { key: "solubility-notes-2015", locator: "SN-726" },
  status: "secondary",
});

/**
 * Solubility of fertilisers that go into stock tanks. The source's cells stand in its order from the left; where it has fewer
 * than six, the warmer columns are empty. Its potassium nitrate row is printed one column to the right: handbook values
 * (SN-727) stand here instead.
 */
export const SOLUBILITY: Partial<Record<MaterialKind, SolubilityRow>> = {
  urea: row(780, 850, 1060, 1200),
  "ammonium-nitrate": row(1183, 1510, 1920),
  "ammonium-sulfate": row(710, 730, 750),
  "calcium-nitrate": row(1020, 1130, 1290),
  "monoammonium-phosphate": row(250, 295, 374, 410, 464, 567),
  "monopotassium-phosphate": row(110, 180, 230, 250, 300, 340),
  "potassium-chloride": row(229, 238, 255, 264, 275),
  "potassium-sulfate": row(80, 90, 111, 120),
  "magnesium-nitrate": row(680, 690, 710, 720),
  "potassium-nitrate": {
    atC: [
      [0, 133],
      [10, 209],
      [20, 316],
      [30, 458],
    ],
    source: { key: "crc-handbook", locator: "SN-727" },
    status: "memory",
  },
};

/** The highest stock strength printed on a published label: 4 lb per US gallon (SN-812) [g/L]. */
export const LABEL_STOP_G_PER_L = 480;
const LABEL_STOP_SOURCE: SourceRef = { key: "msu-fertigation", locator: "SN-812" };

/** Most of a material that a litre of stock may hold at the coldest the tank gets. */
export interface Dissolves {
  gPerL: number;
  /** Temperature of the printed value; null where a label's stop stands for it. */
  atC: number | null;
  source: SourceRef;
}

/**
 * The printed value of the warmest column that is not warmer than the tank; a published label's stop where the kind has no row.
 * Undefined where the tank is colder than the coldest column: nothing is printed for it.
 */
export function dissolves(kind: MaterialKind, tankC: number): Dissolves | undefined {
  const held = SOLUBILITY[kind];
  if (!held) return { gPerL: LABEL_STOP_G_PER_L, atC: null, source: LABEL_STOP_SOURCE };
  const at = held.atC.filter(([c]) => c <= tankC).at(-1);
  if (!at) return undefined;
  const [atC, gPerL] = at;
  return { gPerL, atC, source: held.source };
}

/** The coldest column of most rows: what is taken where nobody said how cold the tank gets [°C]. */
export const COLDEST_COLUMN_C = COLUMNS_C[0];
