import { deliveries, deliveryPreferences, memberships, type Tx, warnings } from "@pith/db";
import type { Answer } from "@pith/rules";
import { and, arrayContains, eq, inArray } from "drizzle-orm";
import { type Ctx, nowOf } from "../context.ts";
import { zoneOfFarm } from "../farms/clock.ts";
import { wantJob } from "../jobs/wantJob.ts";
import { tellWebhooks } from "../webhooks/tell.ts";
import { callFrom } from "./callFrom.ts";
import { warnsOfFrost } from "./frost.ts";
import { dueAt } from "./when.ts";
import { ordinaryWishes, wishesOf } from "./wishes.ts";

export interface Issued {
  id: string;
  farmId: string;
  answer: Extract<Answer, { kind: "advice" }>;
  issuedAt: string;
}

/**
 * What follows from issuing, in the transaction that issues: a row of the outbox for each person of the farm and way they
 * want to be told, a watch on the hour by which it must have been read, and word to the office's own systems.
 */
export async function tellOfIssued(tx: Tx, ctx: Ctx, advisory: Issued): Promise<void> {
  const { farmId, answer } = advisory;
  const frost = warnsOfFrost(answer);
  const { actBy } = answer.stakes;
  await tellPeople(tx, ctx, {
    advisoryId: advisory.id,
    farmId,
    about: "advice",
    frost,
    actBy,
    people: and(
      inArray(memberships.role, ["farmer", "reader"]),
      arrayContains(memberships.farmIds, [farmId]),
    ),
  });
  if (actBy !== null) {
    const from = callFrom(advisory.issuedAt, actBy);
    await tx
      .insert(warnings)
      .values({ officeId: ctx.officeId, advisoryId: advisory.id, farmId, actBy, callFrom: from, frost });
    await wantJob(tx, ctx, "unread-warning", { farmId, id: advisory.id }, { at: from });
  }
  await tellWebhooks(tx, ctx, "advisory.issued", {
    farmId,
    advisoryId: advisory.id,
    ruleId: answer.rule.id,
    decision: answer.decision.code,
    actBy,
    window: { from: answer.window.from, to: answer.window.to },
  });
}

/** Writes the outbox, a row a person and way, and wants each person's post to be carried when it is due. */
export async function tellPeople(
  tx: Tx,
  ctx: Ctx,
  news: {
    advisoryId: string;
    farmId: string;
    about: "advice" | "unread";
    frost: boolean;
    actBy: string | null;
    people: ReturnType<typeof and>;
  },
): Promise<void> {
  const rows = await tx
    .select({ userId: memberships.userId, role: memberships.role, said: deliveryPreferences })
    .from(memberships)
    .leftJoin(
      deliveryPreferences,
      and(
        eq(deliveryPreferences.officeId, memberships.officeId),
        eq(deliveryPreferences.userId, memberships.userId),
      ),
    )
    .where(and(eq(memberships.officeId, ctx.officeId), news.people));
  if (rows.length === 0) return;
  const timeZone = await zoneOfFarm(tx, ctx, news.farmId);
  const out = rows.flatMap(({ userId, role, said }) => {
    const wishes = said ? wishesOf(said) : ordinaryWishes(role, timeZone);
    return (["mail", "push", "text"] as const).flatMap((channel) => {
      const due = dueAt({ ...news, now: ctx.now() }, wishes[channel], wishes);
      return due === null ? [] : [{ userId, channel, dueAt: due.toISOString() }];
    });
  });
  if (out.length === 0) return;
  await tx
    .insert(deliveries)
    .values(
      out.map((row) => ({
        officeId: ctx.officeId,
        farmId: news.farmId,
        advisoryId: news.advisoryId,
        about: news.about,
        madeAt: nowOf(ctx),
        ...row,
      })),
    )
    .onConflictDoNothing();
  // One errand a person and instant carries all that is due then.
  const errands = new Map(out.map((row) => [`${row.userId} ${row.dueAt}`, row]));
  for (const [key, { userId, dueAt: at }] of errands) {
    await wantJob(tx, ctx, "deliver", { id: userId }, { key, at });
  }
}
