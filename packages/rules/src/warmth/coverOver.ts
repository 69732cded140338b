import type { SourceRef } from "../core/working.ts";
import type { Bed, Cover } from "../states/parts.ts";
import { coversOn } from "../states/standing.ts";
import { COVER_OFFSETS } from "../tables/covers.ts";

/** What stands over a bed on one day, and what it does to the night. */
export interface CoverOver {
  covers: Cover[];
  /** Night minimum under it minus outside [C]; null where nothing published fits and only a thermometer tells. */
  offsetC: number | null;
  highC: number | null;
  source: SourceRef | null;
}

const OPEN: CoverOver = { covers: [], offsetC: 0, highC: 0, source: null };

/** The cover over a bed on a day. The low end of a published range is taken: being wrong that way costs least. */
export function coverOver(bed: Bed, day: string): CoverOver {
  const covers = coversOn(bed, day);
  if (covers.length === 0) return OPEN;
  if (covers.includes("heated-house")) return { covers, offsetC: null, highC: null, source: null };
  const row = COVER_OFFSETS.find((r) => r.covers.every((cover) => covers.includes(cover)));
  return { covers, offsetC: row?.lowC ?? null, highC: row?.highC ?? null, source: row?.source ?? null };
}
