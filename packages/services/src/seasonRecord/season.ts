import { localDay } from "@pith/rules";

/** Days of a season. */
export interface Season {
  /** Its year; in the south the first of the two. */
  year: number;
  name: string;
  from: string;
  to: string;
}

/** In the south a summer lies in two years, so its season changes in the middle of winter. */
const SOUTH_BEGINS = "07-01";
const SOUTH_ENDS = "06-30";

/** The season of a year at a latitude: the calendar's year in the north, July to June in the south. */
export function seasonOf(year: number, latitudeDeg: number): Season {
  if (latitudeDeg >= 0) return { year, name: String(year), from: `${year}-01-01`, to: `${year}-12-31` };
  const name = `${year}/${String((year + 1) % 100).padStart(2, "0")}`;
  return { year, name, from: `${year}-${SOUTH_BEGINS}`, to: `${year + 1}-${SOUTH_ENDS}` };
}

/** The year of the season that an instant lies in, by the site's own day. */
export function seasonYearAt(
  at: string,
  { latitudeDeg, timeZone }: { latitudeDeg: number; timeZone: string },
): number {
  const today = localDay(at, timeZone);
  const year = Number(today.slice(0, 4));
  return latitudeDeg < 0 && today.slice(5) < SOUTH_BEGINS ? year - 1 : year;
}

export const isIn = ({ from, to }: Pick<Season, "from" | "to">, day: string): boolean =>
  day >= from && day <= to;
