import { deliveries, deliveryPreferences, memberships, sites } from "@pith/db";
import { and, asc, eq, inArray, lte } from "drizzle-orm";
import { type Ctx, inOffice, isStaff, nowOf } from "../context.ts";
import type { About } from "../jobs/wantJob.ts";
import { type Carried, carryMail, carryPush, carryText, type Recipient } from "./carry.ts";
import { type News, readNews } from "./news.ts";

/** However long a way takes, nobody else sends the same meanwhile. */
const CLAIM_MS = 5 * 60_000;
const AHEAD_MS = 60_000;
/** Tried so often, by the queue's own pauses; then it is given up. */
const ATTEMPTS = 10;

/**
 * Carries all that is due to one person. What is taken is claimed first, so that two at once do not send the same; only a
 * stop between sending and writing it down can send it twice. What a way did not take is tried again by the queue.
 */
export async function deliver(ctx: Ctx, { id: userId }: About): Promise<void> {
  const means = ctx.delivery;
  if (!userId || !means) return;
  const { ids, withOthers } = await claim(ctx, userId);
  // Whoever holds them may have been stopped before writing down: the queue asks again until nothing waits.
  if (ids.length === 0 && withOthers) throw new Error("somebody else is carrying it; it is looked at again");
  if (ids.length === 0) return;
  const who = await readRecipient(ctx, userId);
  const all = await readNews(ctx, ids, who.language);
  const drop = (news: News[], outcome: string) => settle(ctx, news, { state: "dropped", outcome });
  await drop(
    all.filter((news) => !news.stands),
    "it no longer stood when it was due",
  );
  // Who a farm was taken from, or who left the office's staff, since it was written is told nothing of it any more.
  await drop(
    all.filter((news) => news.stands && !mayHear(who, news)),
    "it is no longer theirs to hear",
  );
  const standing = all.filter((news) => news.stands && mayHear(who, news));

  let again = 0;
  const done = async (news: News[], carried: Carried) => {
    again += await settle(ctx, news, carried);
  };
  const of = (channel: News["channel"]) => standing.filter((news) => news.channel === channel);
  const silent = new Set<string>();
  for (const news of of("push")) await done([news], await carryPush(ctx, means, who, news, silent));
  for (const news of of("text")) await done([news], await carryText(means, who, news));
  const letters = of("mail");
  if (letters.length > 0) await done(letters, await carryMail(ctx, means, who, letters));
  if (again > 0) throw new Error(`${again} could not be handed over; they are tried again`);
}

function mayHear({ role, farmIds }: Recipient, { about, farmId }: News): boolean {
  if (role === null) return false;
  return isStaff(role) || (about === "advice" && farmIds.includes(farmId));
}

async function claim(ctx: Ctx, userId: string): Promise<{ ids: string[]; withOthers: boolean }> {
  const now = ctx.now().getTime();
  const until = new Date(now + CLAIM_MS).toISOString();
  // The queue goes by the database's clock, which may be a little ahead of this one.
  const due = new Date(now + AHEAD_MS).toISOString();
  return inOffice(ctx, async (tx) => {
    const waiting = await tx
      .select({ id: deliveries.id, claimedUntil: deliveries.claimedUntil })
      .from(deliveries)
      .where(
        and(
          eq(deliveries.officeId, ctx.officeId),
          eq(deliveries.userId, userId),
          eq(deliveries.state, "waiting"),
          lte(deliveries.dueAt, due),
        ),
      )
      .for("update");
    const free = waiting.filter((row) => row.claimedUntil === null || Date.parse(row.claimedUntil) <= now);
    const ids = free.map((row) => row.id);
    if (ids.length > 0) {
      await tx
        .update(deliveries)
        .set({ claimedUntil: until })
        .where(and(eq(deliveries.officeId, ctx.officeId), inArray(deliveries.id, ids)));
    }
    return { ids, withOthers: free.length < waiting.length };
  });
}

/** Writes down what became of it; answers how many are to be tried again. */
async function settle(ctx: Ctx, news: News[], carried: Carried): Promise<number> {
  let again = 0;
  await inOffice(ctx, async (tx) => {
    for (const { id, attempts } of news) {
      const tries = attempts + 1;
      const waits = carried.state === "again" && tries < ATTEMPTS;
      if (waits) again += 1;
      await tx
        .update(deliveries)
        .set({
          attempts: tries,
          claimedUntil: null,
          state: waits ? "waiting" : carried.state === "again" ? "failed" : carried.state,
          sentAt: carried.state === "sent" ? nowOf(ctx) : null,
          outcome: carried.outcome,
        })
        .where(and(eq(deliveries.officeId, ctx.officeId), eq(deliveries.id, id)));
    }
  });
  return again;
}

/** Where the person is reached: by what they said, or else at the address they were invited under. */
async function readRecipient(ctx: Ctx, userId: string): Promise<Recipient> {
  return inOffice(ctx, async (tx) => {
    const [row] = await tx
      .select({
        role: memberships.role,
        email: memberships.email,
        farmIds: memberships.farmIds,
        said: deliveryPreferences,
      })
      .from(memberships)
      .leftJoin(
        deliveryPreferences,
        and(
          eq(deliveryPreferences.officeId, memberships.officeId),
          eq(deliveryPreferences.userId, memberships.userId),
        ),
      )
      .where(and(eq(memberships.officeId, ctx.officeId), eq(memberships.userId, userId)));
    const [site] = await tx
      .select({ timeZone: sites.timeZone })
      .from(sites)
      .where(and(eq(sites.officeId, ctx.officeId), inArray(sites.farmId, row?.farmIds ?? [])))
      .orderBy(asc(sites.id))
      .limit(1);
    return {
      userId,
      role: row?.role ?? null,
      farmIds: row?.farmIds ?? [],
      mailTo: row?.said?.mailTo ?? row?.email ?? null,
      textTo: row?.said?.textTo ?? null,
      timeZone: row?.said?.timeZone ?? site?.timeZone ?? "UTC",
      language: row?.said?.language ?? "en",
    };
  });
}
