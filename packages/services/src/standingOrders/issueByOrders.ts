import type { StandingOrderTerms } from "@pith/contract";
import { advisories, drafts, farms, secondReadings, standingOrders, type Tx } from "@pith/db";
import { type Answer, localDay } from "@pith/rules";
import { and, asc, desc, eq, inArray, isNull } from "drizzle-orm";
import { thisDraft } from "../advice/drafts.ts";
import { type Advice, type Fresh, freshAnswer } from "../advice/freshAnswer.ts";
import { issue } from "../advice/issue.ts";
import { wantsSecond } from "../advice/issuingSettings.ts";
import { type Ctx, inOffice, nowOf, serverItself } from "../context.ts";
import { isChanged } from "../drafts/isChanged.ts";
import { zoneOfFarm } from "../farms/clock.ts";
import { lockFarm } from "../farms/requireFarm.ts";
import { whyNot } from "./fits.ts";
import { type OrderRow, readJudge } from "./orders.ts";

/**
 * Issues the drafts of a farm that its standing orders cover, most urgent first, each in a transaction of its own; what
 * does not fit stays a draft. Called where a farm was just advised by the server itself. Run again, it finds the drafts
 * gone and issues nothing twice.
 */
export async function issueByOrders(ctx: Ctx, farmId: string): Promise<{ issued: string[] }> {
  // Whoever asked for the farm to be advised did not ask for this: the order does, and says who signed it.
  const itself: Ctx = { ...ctx, actor: serverItself };
  const waiting = await inOffice(itself, (tx) => coveredDrafts(tx, itself, farmId));
  const issued: string[] = [];
  for (const draftId of waiting) {
    const id = await inOffice(itself, (tx) => issueOne(tx, itself, farmId, draftId));
    if (id !== null) issued.push(id);
  }
  return { issued };
}

/** Drafts of rules that an order stands for. */
async function coveredDrafts(tx: Tx, { officeId }: Ctx, farmId: string): Promise<string[]> {
  const orders = await standing(tx, officeId, farmId);
  if (orders.length === 0) return [];
  const rows = await tx
    .select({ id: drafts.id })
    .from(drafts)
    .where(
      and(
        eq(drafts.officeId, officeId),
        eq(drafts.farmId, farmId),
        eq(drafts.kind, "advice"),
        inArray(
          drafts.ruleId,
          orders.map((o) => o.ruleId),
        ),
      ),
    )
    .orderBy(asc(drafts.orderKey), asc(drafts.id));
  return rows.map(({ id }) => id);
}

/** Everything is read again under the farm's lock: an order that was paused a moment ago issues nothing. */
async function issueOne(tx: Tx, ctx: Ctx, farmId: string, draftId: string): Promise<string | null> {
  await lockFarm(tx, ctx, farmId);
  const [draft] = await tx.select().from(drafts).where(thisDraft(ctx, draftId));
  if (draft?.kind !== "advice") return null;
  const now = nowOf(ctx);
  // Somebody said not now, or asked another to read it first.
  const { setAsideUntil } = draft;
  if (setAsideUntil !== null && setAsideUntil > localDay(now, await zoneOfFarm(tx, ctx, farmId))) return null;
  const [asked] = await tx
    .select({ id: secondReadings.id })
    .from(secondReadings)
    .where(and(eq(secondReadings.officeId, ctx.officeId), eq(secondReadings.draftId, draftId)));
  if (asked) return null;
  const order = (await standing(tx, ctx.officeId, farmId)).find((o) => o.ruleId === draft.ruleId);
  if (!order) return null;
  const judge = await readJudge(tx, ctx, [farmId], [order]);
  if (judge.stateOf(order) !== "in-force") return null;

  const fresh = await freshAnswer(tx, ctx, draft);
  if (fresh === "changed") return null;
  const terms = order.terms as unknown as StandingOrderTerms;
  const { issuedThisWeek } = judge.issuedOn(order.id);
  if (whyNot(terms, fresh.answer, { now, timeZone: fresh.subject.timeZone, issuedThisWeek })) return null;
  if (wantsSecond(judge.settings, fresh.answer) && order.confirmedBy === null) return null;
  if (await wasTakenBack(tx, ctx, fresh)) return null;
  return issue(tx, ctx, fresh, {
    agentId: null,
    confirmedBy: null,
    standingOrder: {
      id: order.id,
      version: order.version,
      signedBy: order.signedBy,
      confirmedBy: order.confirmedBy,
      terms,
    },
    note: null,
  });
}

/** Orders of a live farm that have not ended, at most one a rule. */
async function standing(tx: Tx, officeId: string, farmId: string): Promise<OrderRow[]> {
  const rows = await tx
    .select({ order: standingOrders })
    .from(standingOrders)
    .innerJoin(
      farms,
      and(
        eq(farms.officeId, standingOrders.officeId),
        eq(farms.id, standingOrders.farmId),
        isNull(farms.archivedAt),
      ),
    )
    .where(
      and(
        eq(standingOrders.officeId, officeId),
        eq(standingOrders.farmId, farmId),
        isNull(standingOrders.endedAt),
      ),
    );
  return rows.map(({ order }) => order);
}

/** An agent took back the last one that said so: an order does not say it again in the agent's face. */
async function wasTakenBack(tx: Tx, { officeId }: Ctx, { answer }: Fresh): Promise<boolean> {
  const [last] = await tx
    .select({ status: advisories.status, answer: advisories.answer })
    .from(advisories)
    .where(
      and(
        eq(advisories.officeId, officeId),
        eq(advisories.ruleId, answer.rule.id),
        eq(advisories.subjectId, answer.subject.id),
      ),
    )
    .orderBy(desc(advisories.ledgerSeq))
    .limit(1);
  return last?.status === "withdrawn" && !isChanged(last.answer as unknown as Answer & Advice, answer);
}
