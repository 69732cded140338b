import type { Receipt } from "@pith/contract";
import { type Db, sensorKeys, type Tx, withSensor } from "@pith/db";
import { and, eq, sql } from "drizzle-orm";
import { rangeFlag } from "./flags.ts";
import type { Given } from "./given.ts";
import { ensureMonths } from "./months.ts";
import { type Convert, converterOf, unitsFor } from "./units.ts";
import type { KnownSeries, VerifiedKey } from "./verifyKey.ts";

/** A device's clock may be this far ahead; what is further is refused, because nobody can have measured it yet. */
const AHEAD_MS = 5 * 60_000;
const DAY_MS = 86_400_000;
/** When a key was last used is written down to the minute. */
const USED_EVERY_MS = 60_000;
/** Two values that differ by less are one: a float sent twice by different roads. */
const ALIKE = 1e-9;

type Verdict = Receipt["verdicts"][number];

interface Taken {
  record: number;
  series: KnownSeries;
  name: string;
  atMs: number;
  value: number;
}

/**
 * Appends what a batch gives to the series that its key names, in one transaction: all that is stored is on disk before
 * this answers. Each record has its own verdict; what is refused leaves the others alone.
 *
 * A reading is known by series and instant. The same value again is a duplicate, so a batch may be sent again and adds
 * nothing; another value at an instant that is taken is refused, because a reading is never overwritten.
 */
export async function appendReadings(
  db: Db,
  key: VerifiedKey,
  given: readonly Given[],
  now: Date,
): Promise<Receipt> {
  const verdicts: Verdict[] = new Array(given.length);
  const reasons: Receipt["reasons"] = [];
  const refuse = (record: number, reason: string) => {
    verdicts[record] = "refused";
    reasons.push({ record, reason });
  };
  const taken = takeGood(key, given, now.getTime(), verdicts, refuse);
  if (taken.length > 0) {
    await ensureMonths(db, key, taken);
    await withSensor(db, key, (tx) => store(tx, key, taken, now, verdicts, refuse));
  }
  const count = (verdict: Verdict) => verdicts.reduce((n, v) => (v === verdict ? n + 1 : n), 0);
  return {
    stored: count("stored"),
    duplicates: count("duplicate"),
    refused: reasons.length,
    verdicts,
    reasons: reasons.sort((a, b) => a.record - b.record),
  };
}

/** What can be stored, each series and instant once. */
function takeGood(
  key: VerifiedKey,
  given: readonly Given[],
  nowMs: number,
  verdicts: Verdict[],
  refuse: (record: number, reason: string) => void,
): Taken[] {
  const taken: Taken[] = [];
  const once = new Map<string, Taken>();
  const converters = new Map<string, Convert | undefined>();
  for (const [record, one] of given.entries()) {
    if (one === "no-reading") {
      verdicts[record] = one;
      continue;
    }
    if ("refused" in one) {
      refuse(record, one.refused);
      continue;
    }
    const series = key.series.get(one.name);
    if (!series) {
      refuse(record, `this key names no series "${one.name.slice(0, 80)}"`);
      continue;
    }
    const unit = one.unit ?? series.unit;
    const pair = `${series.quantity} ${unit}`;
    if (!converters.has(pair)) converters.set(pair, converterOf(series.quantity, unit));
    const convert = converters.get(pair);
    if (convert === undefined) {
      refuse(
        record,
        `"${unit.slice(0, 20)}" does not measure ${series.quantity}: send ${unitsFor(series.quantity)}`,
      );
      continue;
    }
    // Judged as it would be kept: what is finite as sent need not be in the series' own unit.
    const value = convert(one.value);
    const reason = whyNot({ atMs: one.atMs, value }, series, nowMs);
    if (reason !== undefined) {
      refuse(record, reason);
      continue;
    }
    const reading = { record, series, name: one.name, atMs: one.atMs, value };
    const place = `${series.id} ${one.atMs}`;
    const before = once.get(place);
    if (before === undefined) {
      once.set(place, reading);
      taken.push(reading);
    } else if (alike(before.value, reading.value)) verdicts[record] = "duplicate";
    else refuse(record, differs(reading, before.value));
  }
  return taken;
}

function whyNot({ atMs, value }: { atMs: number; value: number }, series: KnownSeries, nowMs: number) {
  if (series.retired) return "the series was retired";
  if (!Number.isFinite(value)) return "the value is no number that can be kept";
  if (atMs > nowMs + AHEAD_MS) {
    return `${isoOf(atMs)} is more than 5 minutes ahead of the server's clock, ${isoOf(nowMs)}`;
  }
  // Thirty days a month: a little less than what is kept, so that nothing is taken in to be let go the same night.
  if (!(atMs > nowMs - series.keepMonths * 30 * DAY_MS)) {
    return `${isoOf(atMs)} is longer ago than this series is kept, ${series.keepMonths} months`;
  }
  return undefined;
}

const isoOf = (ms: number): string =>
  Math.abs(ms) <= 8.64e15 ? new Date(ms).toISOString() : "an instant that no calendar has";
const alike = (a: number, b: number): boolean => Math.abs(a - b) <= ALIKE * Math.max(1, Math.abs(a));
const differs = ({ name, atMs, value }: Taken, before: number): string =>
  `${name} has ${before} at ${isoOf(atMs)} already, and ${value} is another value: a reading is never overwritten`;

/** A bound array: the driver is not told the server's types, so it goes as text. Nothing in it needs quotes. */
const list = (values: (string | number)[], type: string) =>
  sql`${`{${values.join(",")}}`}::${sql.raw(type)}[]`;

async function store(
  tx: Tx,
  key: VerifiedKey,
  taken: Taken[],
  now: Date,
  verdicts: Verdict[],
  refuse: (record: number, reason: string) => void,
): Promise<void> {
  const { officeId, farmId, keyId } = key;
  const receivedAt = now.toISOString();
  const given = sql`unnest(
    ${list(
      taken.map((t) => t.series.id),
      "uuid",
    )},
    ${list(
      taken.map((t) => t.atMs / 1000),
      "float8",
    )},
    ${list(
      taken.map((t) => t.value),
      "float8",
    )},
    ${list(
      taken.map((t) => rangeFlag(t.series.quantity, t.value)),
      "int2",
    )}) as g(series_id, at_s, value, flags)`;
  const inserted = await tx.execute(sql`
    insert into readings (office_id, farm_id, series_id, at, value, flags, key_id, received_at)
    select ${officeId}::uuid, ${farmId}::uuid, g.series_id, to_timestamp(g.at_s), g.value, g.flags, ${keyId}::uuid, ${receivedAt}::timestamptz
    from ${given} on conflict do nothing`);
  const isNew = inserted.count === taken.length ? () => true : await whichAreNew(tx, officeId, taken, refuse);
  for (const t of taken)
    if (isNew(t)) verdicts[t.record] = "stored";
    else verdicts[t.record] ??= "duplicate";
  if (inserted.count > 0) await markStale(tx, key, taken, receivedAt);
  await noteUse(tx, key, now);
}

/** Those of this transaction; of the others, refuses what says another value than what is stored. */
async function whichAreNew(
  tx: Tx,
  officeId: string,
  taken: Taken[],
  refuse: (record: number, reason: string) => void,
): Promise<(t: Taken) => boolean> {
  const there = await tx.execute<{ series_id: string; at_ms: number; value: number; mine: boolean }>(sql`
    select r.series_id, (extract(epoch from r.at) * 1000)::float8 as at_ms, r.value,
      r.xmin = pg_current_xact_id()::xid as mine
    from unnest(
      ${list(
        taken.map((t) => t.series.id),
        "uuid",
      )},
      ${list(
        taken.map((t) => t.atMs / 1000),
        "float8",
      )}) as g(series_id, at_s)
    join readings r on r.office_id = ${officeId} and r.series_id = g.series_id and r.at = to_timestamp(g.at_s)`);
  const stored = new Map(there.map((r) => [`${r.series_id} ${Math.round(r.at_ms)}`, r]));
  const of = (t: Taken) => stored.get(`${t.series.id} ${t.atMs}`);
  for (const t of taken) {
    const row = of(t);
    if (row && !row.mine && !alike(row.value, t.value)) refuse(t.record, differs(t, row.value));
  }
  return (t) => of(t)?.mine ?? false;
}

/** In one order always, so that two batches never wait for each other. */
async function markStale(tx: Tx, { officeId, farmId }: VerifiedKey, taken: Taken[], markedAt: string) {
  const days = new Set(taken.map((t) => `${t.series.id} ${Math.floor(t.atMs / DAY_MS)}`));
  const marks = [...days].sort().map((mark) => mark.split(" ") as [string, string]);
  await tx.execute(sql`
    insert into readings_stale (office_id, farm_id, series_id, utc_day, marked_at)
    select ${officeId}::uuid, ${farmId}::uuid, g.series_id, date '1970-01-01' + g.day, ${markedAt}::timestamptz
    from unnest(
      ${list(
        marks.map(([id]) => id),
        "uuid",
      )},
      ${list(
        marks.map(([, day]) => day),
        "int4",
      )}) as g(series_id, day)
    on conflict (office_id, series_id, utc_day) do update set marked_at = excluded.marked_at`);
}

async function noteUse(tx: Tx, key: VerifiedKey, now: Date): Promise<void> {
  if (now.getTime() - key.usedAtMs < USED_EVERY_MS) return;
  await tx
    .update(sensorKeys)
    .set({ lastUsedAt: now.toISOString() })
    .where(and(eq(sensorKeys.officeId, key.officeId), eq(sensorKeys.id, key.keyId)));
  key.usedAtMs = now.getTime();
}
