import type { Quantity } from "@pith/contract";
import { type Db, type Tx, withOffice } from "@pith/db";
import { sql } from "drizzle-orm";
import type { OfFarm } from "../farms/ofFarm.ts";
import { flagsOf, GAP, reachOf, UNUSABLE } from "./flags.ts";

const DAY_MS = 86_400_000;
const HOUR_MS = 3_600_000;
/** Marks taken in one transaction: few enough that a batch which waits for one of them does not wait long. */
const MARKS_AT_ONCE = 64;
/** Days of one series read at once. */
const LONGEST_RUN = 31;

interface Marked {
  seriesId: string;
  quantity: Quantity;
  expectedEveryS: number;
  timeZone: string;
  day: number;
}
/** Days of UTC of one series that follow one another, as days since 1970, the last included. */
interface Run extends Omit<Marked, "day"> {
  from: number;
  to: number;
}

/**
 * Brings flags, hours and days of a farm up to its readings, late ones included: only what readings touched since is
 * computed again. Afterwards they say what a computation from all readings would say. Answers with the series touched.
 */
export async function settleFarm(db: Db, at: OfFarm): Promise<string[]> {
  const touched = new Set<string>();
  for (;;) {
    const taken = await withOffice(
      db,
      { officeId: at.officeId, role: "agent", farmIds: [at.farmId], userId: null },
      (tx) => settleSome(tx, at),
    );
    for (const id of taken) touched.add(id);
    if (taken.length === 0) return [...touched];
  }
}

async function settleSome(tx: Tx, at: OfFarm): Promise<string[]> {
  // What a batch is just marking is left to the next turn: a reader never waits for a device.
  const marked = await tx.execute<Record<string, unknown> & Marked>(sql`
    with taken as (
      select series_id, utc_day from readings_stale
      where office_id = ${at.officeId} and farm_id = ${at.farmId}
      order by series_id, utc_day limit ${MARKS_AT_ONCE} for update skip locked),
    gone as (
      delete from readings_stale r using taken t
      where r.office_id = ${at.officeId} and r.series_id = t.series_id and r.utc_day = t.utc_day)
    select s.id as "seriesId", s.quantity, s.expected_every_s as "expectedEveryS", p.time_zone as "timeZone",
      t.utc_day - date '1970-01-01' as day
    from taken t
    join series s on s.office_id = ${at.officeId} and s.id = t.series_id
    join sites p on p.office_id = ${at.officeId} and p.id = s.site_id
    order by s.id, t.utc_day`);
  for (const run of runsOf(marked)) await settleRun(tx, at, run);
  return [...new Set(marked.map((m) => m.seriesId))];
}

function runsOf(marked: readonly Marked[]): Run[] {
  const runs: Run[] = [];
  for (const { day, ...of } of marked) {
    const last = runs.at(-1);
    if (last?.seriesId === of.seriesId && day <= last.to + 1 && day < last.from + LONGEST_RUN) last.to = day;
    else runs.push({ ...of, from: day, to: day });
  }
  return runs;
}

async function settleRun(tx: Tx, at: OfFarm, run: Run): Promise<void> {
  const [fromMs, toMs] = [run.from * DAY_MS, (run.to + 1) * DAY_MS];
  const changed = await settleFlags(tx, at, run, fromMs, toMs);
  await settleSums(
    tx,
    at,
    run,
    Math.min(fromMs, ...changed.map((c) => c.atMs)),
    Math.max(toMs - 1, ...changed.map((c) => c.atMs)),
  );
}

/**
 * New readings change the flags of their neighbours as far as flags reach, so twice as far is read. Whether a reading
 * follows a gap is told by the one before it, however long ago: of the next after the stretch that alone may change.
 */
async function settleFlags(tx: Tx, at: OfFarm, run: Run, fromMs: number, toMs: number) {
  const reach = reachOf(run.quantity);
  const mine = sql`office_id = ${at.officeId} and series_id = ${run.seriesId}`;
  const first = sql`to_timestamp(${(fromMs - 2 * reach) / 1000})`;
  const end = sql`to_timestamp(${(toMs + 2 * reach) / 1000})`;
  const columns = sql`(extract(epoch from at) * 1000)::float8 as at_ms, value, flags`;
  const rows = await tx.execute<{ at_ms: number; value: number; flags: number }>(sql`
    (select ${columns} from readings where ${mine} and at < ${first} order by at desc limit 1)
    union all (select ${columns} from readings where ${mine} and at >= ${first} and at < ${end})
    union all (select ${columns} from readings where ${mine} and at >= ${end} order by at limit 1)
    order by 1`);
  const list = rows.map((r) => ({ atMs: Math.round(r.at_ms), value: r.value, flags: r.flags }));
  const flags = flagsOf(run.quantity, run.expectedEveryS, list);
  const next = list.findIndex((r) => r.atMs >= toMs);
  const changed = list.flatMap((r, i) => {
    const whole = r.atMs >= fromMs - reach && r.atMs < toMs + reach;
    const bits = whole ? ~0 : i === next ? GAP : 0;
    const now = (r.flags & ~bits) | ((flags[i] as number) & bits);
    return now === r.flags ? [] : [{ atMs: r.atMs, flags: now, usable: (now ^ r.flags) & UNUSABLE }];
  });
  if (changed.length > 0) {
    await tx.execute(sql`
      update readings r set flags = g.flags
      from unnest(${`{${changed.map((c) => c.atMs / 1000).join()}}`}::float8[], ${`{${changed.map((c) => c.flags).join()}}`}::int2[]) as g(at_s, flags)
      where r.office_id = ${at.officeId} and r.series_id = ${run.seriesId} and r.at = to_timestamp(g.at_s)`);
  }
  // Only these change a sum.
  return changed.filter((c) => c.usable !== 0);
}

/** Whole hours of UTC and whole days of the site that the stretch touches. What is only summed stays when readings go. */
async function settleSums(tx: Tx, at: OfFarm, run: Run, firstMs: number, lastMs: number): Promise<void> {
  const usable = sql`(where flags & ${UNUSABLE} = 0)`;
  const sums = sql`count(*), count(*) filter (where flags & ${UNUSABLE} <> 0),
    min(value) filter ${usable}, max(value) filter ${usable}, avg(value) filter ${usable},
    ${run.quantity === "rain" ? sql`sum(value) filter ${usable}` : sql`null::float8`}`;
  const columns = sql`readings, flagged, lowest, highest, mean, total`;
  const again = sql`readings = excluded.readings, flagged = excluded.flagged, lowest = excluded.lowest,
    highest = excluded.highest, mean = excluded.mean, total = excluded.total`;
  const mine = sql`office_id = ${at.officeId} and series_id = ${run.seriesId}`;
  const whose = sql`${at.officeId}::uuid, ${at.farmId}::uuid, ${run.seriesId}::uuid`;
  const fromHour = Math.floor(firstMs / HOUR_MS) * HOUR_MS;
  await tx.execute(sql`
    insert into reading_hours (office_id, farm_id, series_id, hour, ${columns})
    select ${whose}, date_trunc('hour', at, 'UTC'), ${sums}
    from readings where ${mine} and at >= to_timestamp(${fromHour / 1000})
      and at < to_timestamp(${(Math.floor(lastMs / HOUR_MS) + 1) * 3600})
    group by date_trunc('hour', at, 'UTC')
    on conflict (office_id, series_id, hour) do update set ${again}`);
  const zone = run.timeZone;
  const dayOf = (ms: number) => sql`(to_timestamp(${ms / 1000}) at time zone ${zone})::date`;
  await tx.execute(sql`
    insert into reading_days (office_id, farm_id, series_id, day, hours, ${columns})
    select ${whose}, d, count(distinct hour) filter ${usable}, ${sums}
    from (
      select value, flags, (at at time zone ${zone})::date as d, date_trunc('hour', at, 'UTC') as hour
      from readings where ${mine}
        and at >= (${dayOf(firstMs)}::timestamp at time zone ${zone})
        and at < ((${dayOf(lastMs)} + 1)::timestamp at time zone ${zone})
    ) as r
    group by d
    on conflict (office_id, series_id, day) do update set hours = excluded.hours, ${again}`);
}
