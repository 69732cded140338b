/** A cell as a number, as missing, or as something that is neither. */
export type Cell =
  | { kind: "number"; value: number }
  | { kind: "missing" }
  | { kind: "unreadable"; reason: string };

const MISSING = new Set(["", "-", "--", "na", "n/a", "nan", "null", "nd", "missing", "m"]);

/** Reads a number. "Below detection" (`<0.5`) is neither a number nor missing, and is not turned into one. */
export function readNumber(text: string, decimalComma: boolean): Cell {
  const cell = text.trim();
  if (MISSING.has(cell.toLowerCase())) return { kind: "missing" };
  if (/^[<>]/.test(cell)) {
    return {
      kind: "unreadable",
      reason: `"${cell}" is a limit, not a number; leave the cell empty or give the number`,
    };
  }
  const plain = decimalComma ? cell.replace(",", ".") : cell;
  if (!/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(plain)) {
    return { kind: "unreadable", reason: `"${cell}" is not a number` };
  }
  return { kind: "number", value: Number(plain) };
}

/** A depth: a number, or a layer that begins at the surface (`0-6`, `0 to 15 cm`), whose depth is where it ends. */
export function readDepth(text: string, decimalComma: boolean): Cell {
  const layer = /^(\d+(?:[.,]\d+)?)\s*(?:-|–|to)\s*(.+)$/i.exec(text.trim());
  if (layer && Number(layer[1]?.replace(",", ".")) > 0) {
    return { kind: "unreadable", reason: `"${text.trim()}" does not begin at the surface` };
  }
  return readNumber(layer?.[2] ?? text, decimalComma);
}

const YES = new Set(["yes", "y", "true", "1", "present", "positive", "+", "slight", "moderate", "strong"]);
const NO = new Set(["no", "n", "false", "0", "none", "absent", "negative"]);

/** Whether it fizzes; undefined where the cell is empty, null where it is neither. */
export function readYesNo(text: string): boolean | null | undefined {
  const cell = text.trim().toLowerCase();
  if (NO.has(cell)) return false;
  if (YES.has(cell)) return true;
  return MISSING.has(cell) ? undefined : null;
}

export const DATE_FORMATS = ["YYYY-MM-DD", "MM/DD/YYYY", "DD/MM/YYYY"] as const;
export type DateFormat = (typeof DATE_FORMATS)[number];

/** Reads a calendar day; null where it is not one in that form. */
export function readDay(text: string, format: DateFormat): string | null {
  const cell = text.trim();
  const iso = /^(\d{4})[-/.]?(\d{2})[-/.]?(\d{2})(?:[T ].*)?$/.exec(cell);
  const slashed = /^(\d{1,2})[/.-](\d{1,2})[/.-](\d{4})$/.exec(cell);
  if (iso) return existing(Number(iso[1]), Number(iso[2]), Number(iso[3]));
  if (!slashed || format === "YYYY-MM-DD") return null;
  const [a, b, year] = [Number(slashed[1]), Number(slashed[2]), Number(slashed[3])];
  return format === "MM/DD/YYYY" ? existing(year, a, b) : existing(year, b, a);
}

function existing(year: number, month: number, day: number): string | null {
  const date = new Date(Date.UTC(year, month - 1, day));
  const same =
    date.getUTCFullYear() === year && date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
  return same ? date.toISOString().slice(0, 10) : null;
}

/**
 * The form of a column's dates, from the values themselves: a first part above 12 can only be a day. Null where both
 * readings fit every value, which is asked and not guessed.
 */
export function dateFormatOf(values: string[]): DateFormat | null {
  const slashed = values
    .map((v) => /^(\d{1,2})[/.-](\d{1,2})[/.-]\d{4}$/.exec(v.trim()))
    .filter((m) => m !== null);
  if (slashed.length === 0) return "YYYY-MM-DD";
  if (slashed.some((m) => Number(m[1]) > 12)) return "DD/MM/YYYY";
  if (slashed.some((m) => Number(m[2]) > 12)) return "MM/DD/YYYY";
  return null;
}
