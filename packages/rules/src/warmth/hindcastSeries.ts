import { dayOfYear, epochDay } from "../core/days.ts";
import { refuse } from "../core/errors.ts";
import type { Climatology } from "../states/parts.ts";
import { refuseFahrenheitYears } from "./plausibleTemperatures.ts";

const WANTED = ["date", "tMaxC", "tMinC"] as const;
const COLDEST_C = -70;
const HOTTEST_C = 60;
const CELSIUS = `degrees Celsius from ${COLDEST_C} to ${HOTTEST_C}, or nothing where missing`;

type Year = Climatology["years"][number];

/**
 * Reads a daily series: a header line with `date`, `tMaxC` and `tMinC` (others are passed over), one day a line, commas
 * between, nothing where a value is missing. Days need no order; a day that is not there is missing.
 *
 * @param stationId what the climatology is called
 * @throws DomainError whose field names line and column, for the first thing that cannot be read
 */
export function readDailySeries(text: string, stationId: string): Climatology {
  const lines = text.replace(/^\uFEFF/, "").split(/\r?\n/);
  const headers = (lines[0] ?? "").split(",").map((h) => h.trim());
  const [date, tMaxC, tMinC] = WANTED.map((name) => {
    const at = headers.indexOf(name);
    if (at < 0) refuse("line 1", `the column ${name} is missing`, "date,tMaxC,tMinC,rainMm", lines[0]);
    return at;
  }) as [number, number, number];
  const years = new Map<number, Year>();
  const seen = new Set<string>();
  lines.forEach((line, i) => {
    if (i === 0 || line.trim() === "") return;
    const where = `line ${i + 1}`;
    const cells = line.split(",").map((c) => c.trim());
    if (cells.length !== headers.length) {
      refuse(
        where,
        `has ${cells.length} columns, the header has ${headers.length}`,
        `${headers.length}`,
        line,
      );
    }
    const day = dayIn(cells[date] ?? "", `${where}, column date`);
    if (seen.has(day)) refuse(`${where}, column date`, `${day} stands twice`, "each day once", day);
    seen.add(day);
    const high = celsiusIn(cells[tMaxC] ?? "", `${where}, column tMaxC`);
    const low = celsiusIn(cells[tMinC] ?? "", `${where}, column tMinC`);
    if (high !== null && low !== null && high < low) {
      refuse(`${where}, column tMaxC`, `${high} is below tMinC (${low})`, `at least ${low}`, high);
    }
    const year = Number(day.slice(0, 4));
    const row = years.get(year) ?? emptyYear(year);
    years.set(year, row);
    row.tMaxC[dayOfYear(day) - 1] = high;
    row.tMinC[dayOfYear(day) - 1] = low;
  });
  if (years.size === 0) refuse("line 2", "there is no day below the header", "one day a line");
  const climatology = { stationId, years: [...years.values()].sort((a, b) => a.year - b.year) };
  refuseFahrenheitYears(climatology);
  return climatology;
}

function emptyYear(year: number): Year {
  const days = epochDay(`${year + 1}-01-01`) - epochDay(`${year}-01-01`);
  return { year, tMinC: new Array(days).fill(null), tMaxC: new Array(days).fill(null) };
}

function dayIn(cell: string, where: string): string {
  const day = /^(1[89]|2[01])\d\d-\d\d-\d\d$/.test(cell) ? new Date(`${cell}T00:00:00Z`) : null;
  // The runtime carries 30 February over into March instead of refusing it.
  if (!day || Number.isNaN(day.getTime()) || day.toISOString().slice(0, 10) !== cell) {
    refuse(where, `"${cell}" is not a calendar day`, "YYYY-MM-DD", cell);
  }
  return cell;
}

function celsiusIn(cell: string, where: string): number | null {
  if (cell === "") return null;
  const value = /^[+-]?\d+(\.\d+)?$/.test(cell) ? Number(cell) : Number.NaN;
  if (Number.isNaN(value)) refuse(where, `"${cell}" is not a number (${CELSIUS})`, CELSIUS, cell);
  if (value < COLDEST_C || value > HOTTEST_C) {
    refuse(where, `${cell} is out of range (${CELSIUS})`, CELSIUS, value);
  }
  return value;
}
