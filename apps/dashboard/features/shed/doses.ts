import { addDays, daysBetween } from "@pith/rules";
import type { TableData } from "../../ui/adviceTableText.ts";
import type { SheetSource } from "./gather.ts";

/** This week and the weeks after it that a sheet on the wall should hold. */
const WEEKS = 5;
const DAYS = 7;

/** A material given to one planting, week by week. */
interface DoseRow {
  source: SheetSource;
  materialId: string;
  tank: "A" | "B" | null;
  /** As many as there are weeks; null where nothing is given. `from` where the planting's week starts on another day. */
  weeks: ({ kg: number; from: string | null } | null)[];
  /** After the last week shown [kg]. */
  laterKg: number;
}

export interface Doses {
  /** First day of each week. */
  weeks: string[];
  rows: DoseRow[];
}

/** The doses that feeding has planned, from its tables, set into the same weeks for all plantings. */
export function dosesOf(sources: SheetSource[], today: string): Doses {
  const planned = sources.flatMap((source) =>
    materialColumns(source).map((column) => ({ source, ...column })),
  );
  const ahead = planned
    .flatMap(({ doses }) => doses.map(({ from }) => from))
    .filter((from) => isAhead(from, today));
  const first = ahead.toSorted()[0] ?? today;
  const weeks = Array.from({ length: WEEKS }, (_, i) => addDays(first, i * DAYS));
  const rows = planned.map(({ doses, ...row }) => {
    const cells: DoseRow["weeks"] = weeks.map(() => null);
    let laterKg = 0;
    for (const { from, kg } of doses) {
      if (kg <= 0 || !isAhead(from, today)) continue;
      const week = Math.floor(daysBetween(first, from) / DAYS);
      const same = weeks[week];
      if (same === undefined) laterKg += kg;
      else cells[week] = { kg: (cells[week]?.kg ?? 0) + kg, from: same === from ? null : from };
    }
    return { ...row, weeks: cells, laterKg };
  });
  return { weeks, rows: rows.filter((row) => row.weeks.some((dose) => dose !== null) || row.laterKg > 0) };
}

const isAhead = (from: string, today: string) => addDays(from, DAYS - 1) >= today;

interface MaterialColumn {
  materialId: string;
  tank: "A" | "B" | null;
  doses: { from: string; kg: number }[];
}

/** The columns of its tables that are amounts of one material, each row of which begins with its day. */
function materialColumns({ answer }: SheetSource): MaterialColumn[] {
  const tables: TableData[] = (answer.kind === "advice" && answer.table) || [];
  return tables.flatMap(({ columns, rows }) =>
    columns.flatMap(({ materialId, tank, unit }, place) => {
      if (materialId === undefined || unit !== "kg") return [];
      const doses = rows.flatMap((row) => {
        const [from, kg] = [row[0], row[place]];
        return typeof from === "string" && typeof kg === "number" ? [{ from, kg }] : [];
      });
      return [{ materialId, tank: tank ?? null, doses }];
    }),
  );
}
