import { type sites, type Tx, weatherSources } from "@pith/db";
import { and, eq, sql } from "drizzle-orm";
import { type Ctx, nowOf } from "../context.ts";
import type { Fetched, SourceFailure } from "./source.ts";

const MINUTE_MS = 60_000;
/** Longer than any question may take: whoever held the claim is gone. */
const CLAIM_MS = 2 * MINUTE_MS;
/** Asked at most this often, however soon the service would answer again: models run every hours (common practice). */
const USUAL_WAIT_MS = 60 * MINUTE_MS;
/** A service whose clock is wrong must not silence itself for days (common practice). */
const LONGEST_WAIT_MS = 6 * 60 * MINUTE_MS;
/** After the first failure; twice as long after each further one (common practice). */
const FIRST_RETRY_MS = 5 * MINUTE_MS;

export type SiteRow = typeof sites.$inferSelect;
type State = typeof weatherSources.$inferSelect;
type Claim =
  | { outcome: "claimed"; since: string | null }
  | { outcome: "not-due" | "under-way"; message: string | null };

/** The place a question is about, so that a site that moved is not told "not changed". */
const placeOf = ({ latitudeDeg, longitudeDeg, elevationM, timeZone }: SiteRow): string =>
  [latitudeDeg, longitudeDeg, elevationM, timeZone].join(" ");

const isUnderWay = ({ claimedUntil }: State, now: string): boolean =>
  claimedUntil !== null && claimedUntil > now;

/** Whether a site may be asked about: nobody is asking, and it has moved or its time has come. */
export const isDue = (site: SiteRow, state: State | null, now: string): boolean =>
  state === null ||
  (!isUnderWay(state, now) &&
    (state.askedFor !== placeOf(site) || state.nextDueAt === null || state.nextDueAt <= now));

/** Takes the right to ask for a site: at most one at a time over all servers, and not before it is due. */
export async function claim(tx: Tx, ctx: Ctx, site: SiteRow): Promise<Claim> {
  const now = nowOf(ctx);
  const place = placeOf(site);
  const row = {
    source: site.forecastSource as State["source"],
    lastTriedAt: now,
    claimedUntil: new Date(ctx.now().getTime() + CLAIM_MS).toISOString(),
    askedFor: place,
  };
  const old = await stateOf(tx, ctx, site, "update");
  if (old && isUnderWay(old, now)) return { outcome: "under-way", message: null };
  const moved = old !== undefined && old.askedFor !== place;
  if (!isDue(site, old ?? null, now)) return { outcome: "not-due", message: old?.nextDueAt ?? null };
  const [claimed] = await tx
    .insert(weatherSources)
    .values({ officeId: ctx.officeId, farmId: site.farmId, siteId: site.id, ...row })
    .onConflictDoUpdate({
      target: [weatherSources.officeId, weatherSources.siteId],
      set: { ...row, ...(moved && { since: null }) },
      // Two that found no row at all meet here.
      setWhere: sql`${weatherSources.claimedUntil} is null or ${weatherSources.claimedUntil} <= ${now}`,
    })
    .returning();
  if (!claimed) return { outcome: "under-way", message: null };
  return { outcome: "claimed", since: claimed.since };
}

/** The service answered: whatever was wrong is over. */
export async function noteSuccess(tx: Tx, ctx: Ctx, site: SiteRow, fetched: Fetched): Promise<void> {
  await change(tx, ctx, site, {
    lastSuccessAt: nowOf(ctx),
    failures: 0,
    failingSince: null,
    lastError: null,
    deprecated: fetched.deprecated,
    nextDueAt: dueAfter(ctx, USUAL_WAIT_MS, fetched.askAgainAt),
    ...(fetched.kind === "fresh" && { since: fetched.since }),
  });
}

/** It did not, or not in a form that can be used. */
export async function noteFailure(tx: Tx, ctx: Ctx, site: SiteRow, failure: SourceFailure): Promise<void> {
  const old = await stateOf(tx, ctx, site, "update");
  const failures = (old?.failures ?? 0) + 1;
  await change(tx, ctx, site, {
    failures,
    failingSince: old?.failingSince ?? nowOf(ctx),
    lastError: failure.message,
    nextDueAt: dueAfter(
      ctx,
      Math.max(FIRST_RETRY_MS * 2 ** Math.min(failures - 1, 10), failure.pauseMs ?? 0),
      null,
    ),
  });
}

/** When to come again: after a while, later where the service says so, never later than the longest wait. */
function dueAfter(ctx: Ctx, waitMs: number, said: string | null): string {
  const now = ctx.now().getTime();
  const wanted = Math.max(now + waitMs, said === null ? 0 : Date.parse(said));
  return new Date(Math.min(wanted, now + LONGEST_WAIT_MS)).toISOString();
}

async function stateOf(tx: Tx, ctx: Ctx, site: SiteRow, lock: "update"): Promise<State | undefined> {
  const [row] = await tx.select().from(weatherSources).where(ofSite(ctx, site.id)).for(lock);
  return row;
}

const change = (tx: Tx, ctx: Ctx, site: SiteRow, set: Partial<State>) =>
  tx
    .update(weatherSources)
    .set({ ...set, claimedUntil: null })
    .where(ofSite(ctx, site.id));

const ofSite = (ctx: Ctx, siteId: string) =>
  and(eq(weatherSources.officeId, ctx.officeId), eq(weatherSources.siteId, siteId));
