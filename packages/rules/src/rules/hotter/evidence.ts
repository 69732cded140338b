import type { Working } from "../../core/working.ts";
import type { Planting } from "../../states/parts.ts";
import {
  countPungency,
  PUNGENCY_STUDIES,
  type PungencyCount,
  type PungencyRow,
} from "../../tables/pungencyStudies.ts";

/** What is published for and against, in the species and in the type. */
export interface PungencyEvidence {
  species: PungencyCount;
  type: PungencyCount;
  /** Somebody tested a cultivar of this type, in something that was read. */
  tested: boolean;
}

const DIRECTIONS = ["up", "down", "same", "open"] as const;

/** Counts the studies of a planting's species and type, and writes each row down with its source. */
export function pungencyEvidence({ species, marketType }: Planting, w: Working): PungencyEvidence {
  const inType = (row: PungencyRow) => row.species === species && row.type === marketType;
  const inSpecies = (row: PungencyRow) => row.species === species;
  for (const row of PUNGENCY_STUDIES.filter(inSpecies)) {
    w.line(
      row.direction,
      `pungency when short of water: ${row.names}`,
      row.source.locator ?? "",
      row.cultivars,
      "cultivars",
      row.source,
    );
  }
  const type = countPungency(inType);
  const read = countPungency((row) => inType(row) && !row.fromMemory);
  return { species: countPungency(inSpecies), type, tested: read.studies > 0 };
}

/** The counts as parameters of a message. */
export const countsOf = (count: PungencyCount): Record<string, number> => ({
  studies: count.studies,
  cultivars: DIRECTIONS.reduce((sum, d) => sum + count[d], 0),
  up: count.up,
  down: count.down,
  same: count.same,
  open: count.open,
  memory: count.fromMemory,
});
