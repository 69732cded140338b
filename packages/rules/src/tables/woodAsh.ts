import type { SourceRef } from "../core/working.ts";
import { KG_PER_HA_PER_LB_PER_ACRE, SQUARE_FEET_PER_ACRE } from "./landUnits.ts";
import type { Range } from "./uptake.ts";

/** What one source says is in unleached wood ash [% of weight]; null where it does not say. */
export interface AshRow {
  k2oPct: Range | null;
  p2o5Pct: Range | null;
  ccePct: Range | null;
  source: SourceRef;
}

const from = (low: number, high: number = low): Range => ({ low, high });

/** Sources: SN-501 to SN-507. SN-505's "at least 3 % K" is 3.6 % K2O; 1.5 lb of ash for 1 lb of limestone is 66.7 %. */
export const ASH_ROWS: readonly AshRow[] = [
  {
    k2oPct: from(3, 8),
    p2o5Pct: from(1, 2),
    ccePct: from(100 / 1.5),
    source: { key: "times-tribune-ash", locator: "SN-501" },
  },
  {
    k2oPct: from(5),
    p2o5Pct: null,
    ccePct: from(20, 50),
    source: { key: "vce-ash-1993", locator: "SN-502" },
  },
  {
    k2oPct: from(6),
    p2o5Pct: from(2),
    ccePct: null,
    source: { key: "ncsu-natural-quickref", locator: "unleached (SN-503)" },
  },
  { k2oPct: from(6), p2o5Pct: from(2), ccePct: null, source: { key: "tamu-earthkind-8", locator: "SN-504" } },
  {
    k2oPct: null,
    p2o5Pct: null,
    ccePct: from(50, 100 / 1.5),
    source: { key: "uga-ash-quoted", locator: "SN-505" },
  },
  { k2oPct: null, p2o5Pct: null, ccePct: from(50), source: { key: "mini-farming-ash", locator: "SN-506" } },
  {
    k2oPct: null,
    p2o5Pct: null,
    ccePct: from(60),
    source: { key: "fertiliser-acidity-table", locator: "SN-507" },
  },
];

/** Lying in the rain ash loses two thirds of its potash: 6 to 2 % (SN-503). */
export const LEACHED_ASH = {
  k2oPct: 2,
  p2o5Pct: 1.2,
  source: { key: "ncsu-natural-quickref", locator: "leached (SN-503)" } as SourceRef,
} as const;

function span(field: "k2oPct" | "p2o5Pct" | "ccePct"): Range {
  const rows = ASH_ROWS.map((row) => row[field]).filter((range) => range !== null);
  return { low: Math.min(...rows.map((r) => r.low)), high: Math.max(...rows.map((r) => r.high)) };
}

/** The whole of what is published, where an ash was not analysed. */
export const ASH_RANGE = {
  k2oPct: span("k2oPct"),
  p2o5Pct: span("p2o5Pct"),
  ccePct: span("ccePct"),
} as const;

const LB_PER_1000_SQ_FT = (SQUARE_FEET_PER_ACRE / 1000) * KG_PER_HA_PER_LB_PER_ACRE;

/** Most ash on a piece of ground in a year, as published [kg/ha]. They differ tenfold (SN-511 to SN-514, SN-517). */
export const ASH_CAPS: readonly { kgPerHa: number; lbPer1000SqFt: number; source: SourceRef }[] = (
  [
    [10, { key: "osu-ash-2011", locator: "lawns, 10 to 15 lb/1000 sq ft (SN-511)" }],
    [25, { key: "vce-ash-1993", locator: "25 lb/1000 sq ft (SN-512)" }],
    [100, { key: "uri-ash-quoted", locator: "up to 100 lb/1000 sq ft (SN-513)" }],
    [50, { key: "mini-farming-ash", locator: "5 lb/100 sq ft a year (SN-514)" }],
  ] as const
).map(([lb, source]) => ({ kgPerHa: lb * LB_PER_1000_SQ_FT, lbPer1000SqFt: lb, source }));

/** Soil pH above which no ash is given, as published (SN-511, SN-515, SN-516). */
export const ASH_PH_CEILINGS: readonly { ph: number; source: SourceRef }[] = [
  { ph: 7, source: { key: "osu-ash-2011", locator: "not on alkaline soil (SN-511)" } },
  { ph: 6.5, source: { key: "uvm-ash-quoted", locator: "not at 6.5 to 7 or above (SN-515)" } },
  { ph: 6, source: { key: "wsu-ash", locator: "only at 6.0 or lower, with low potassium (SN-516)" } },
];

const smallest = <T>(rows: readonly T[], by: (row: T) => number): T => {
  const [first, ...rest] = rows;
  if (first === undefined) throw new Error("the table is empty");
  return rest.reduce((least, row) => (by(row) < by(least) ? row : least), first);
};
/** The strictest of each is applied, and said. */
export const STRICTEST_CAP = smallest(ASH_CAPS, (cap) => cap.kgPerHa);
export const STRICTEST_CEILING = smallest(ASH_PH_CEILINGS, (ceiling) => ceiling.ph);
