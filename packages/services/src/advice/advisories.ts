import { type Actual, type Advisory, type AdvisoryDetail, adviceRoutes, type Expected } from "@pith/contract";
import { advisories, answers, ledgerEntries, standingOrders, type Tx } from "@pith/db";
import type { Answer } from "@pith/rules";
import { and, arrayContains, desc, eq, getTableColumns, inArray, isNotNull, lt, sql } from "drizzle-orm";
import { z } from "zod";
import { type Ctx, forOffice, inOffice } from "../context.ts";
import { At, cursorOf, exactly, pageOf, placeAfter } from "../cursor.ts";
import { found, notFound } from "../errors.ts";
import { requireFarm } from "../farms/requireFarm.ts";
import { saidIn } from "../ledger/rendered.ts";
import { readTexts } from "../texts.ts";
import { queryOf } from "../wellFormed.ts";
import { readNames, readPeople } from "./names.ts";
import { standsOpen, standsOpenNoMore, statusAt } from "./standing.ts";

/** What is listed of an advisory: of the answer, which is large, the window alone. */
const { answer: theAnswer, ...rest } = getTableColumns(advisories);
const listed = { ...rest, window: sql<{ from: string | null; to: string | null }>`${theAnswer} -> 'window'` };
type ListedRow = Omit<typeof advisories.$inferSelect, "answer"> & {
  window: { from: string | null; to: string | null };
};

/** What was issued, newest first; a farmer sees their farms'. */
export async function listAdvisories(
  ctx: Ctx,
  rawQuery: unknown,
): Promise<{ advisories: Advisory[]; next: string | null }> {
  const query = queryOf(adviceRoutes.listAdvisories, rawQuery);
  const { farmId, plantingId, ruleId, open, automatic, standingOrderId, before, after, limit = 100 } = query;
  const from = after === undefined ? undefined : placeAfter(z.tuple([At, z.int()]), after);
  const rows = await inOffice(ctx, async (tx) => {
    if (farmId !== undefined) await requireFarm(tx, ctx, farmId);
    return tx
      .select({ ...listed, exactly: exactly(advisories.issuedAt) })
      .from(advisories)
      .where(
        and(
          eq(advisories.officeId, ctx.officeId),
          from &&
            sql`(${advisories.issuedAt}, ${advisories.ledgerSeq}) < (${from[0]}::timestamptz, ${from[1]}::bigint)`,
          farmId === undefined ? undefined : eq(advisories.farmId, farmId),
          plantingId === undefined ? undefined : arrayContains(advisories.plantingIds, [plantingId]),
          ruleId === undefined ? undefined : eq(advisories.ruleId, ruleId),
          open === "yes" ? standsOpen(ctx) : undefined,
          open === "no" ? standsOpenNoMore(ctx) : undefined,
          automatic === undefined ? undefined : isNotNull(advisories.standingOrderId),
          standingOrderId === undefined ? undefined : eq(advisories.standingOrderId, standingOrderId),
          before === undefined ? undefined : lt(advisories.issuedAt, before),
        ),
      )
      .orderBy(desc(advisories.issuedAt), desc(advisories.ledgerSeq))
      .limit(limit + 1);
  });
  const page = pageOf(rows, limit, (last) => cursorOf(last.exactly, last.ledgerSeq));
  return { advisories: await wireAdvisories(ctx, page.rows), next: page.next };
}

/** One issued advice with its working. */
export async function getAdvisory(ctx: Ctx, advisoryId: string): Promise<AdvisoryDetail> {
  const advisory = await readAdvisory(ctx, advisoryId);
  const [row] = await inOffice(ctx, (tx) =>
    tx.select({ answer: advisories.answer }).from(advisories).where(thisAdvisory(ctx, advisoryId)),
  );
  return { ...advisory, answerOfRule: found(row, "advice").answer as unknown as Answer };
}

/** One issued advice as it is listed. */
export async function readAdvisory(ctx: Ctx, advisoryId: string): Promise<Advisory> {
  const row = await inOffice(ctx, (tx) => requireAdvisory(tx, ctx, advisoryId));
  return found((await wireAdvisories(ctx, [row]))[0], "advice");
}

/** The farmer has opened it. An agent's look is not a reading. */
export async function markRead(ctx: Ctx, advisoryId: string): Promise<{ done: true }> {
  await inOffice(ctx, async (tx) => {
    await requireAdvisory(tx, ctx, advisoryId);
    if (ctx.actor.role !== "farmer") return;
    await tx
      .update(advisories)
      .set({ status: "read", readAt: ctx.now().toISOString() })
      .where(and(thisAdvisory(ctx, advisoryId), eq(advisories.status, "issued")));
  });
  return { done: true };
}

export const thisAdvisory = (ctx: Ctx, advisoryId: string) =>
  and(eq(advisories.officeId, ctx.officeId), eq(advisories.id, advisoryId));

/** The advice, if this person may see it; otherwise the same not-found as for one that is not there. */
export async function requireAdvisory(tx: Tx, ctx: Ctx, advisoryId: string): Promise<ListedRow> {
  const [row] = await tx.select(listed).from(advisories).where(thisAdvisory(ctx, advisoryId));
  const { farmIds } = ctx.actor;
  if (!row || (farmIds !== "*" && !farmIds.includes(row.farmId))) throw notFound("advice");
  return row;
}

async function wireAdvisories(ctx: Ctx, rows: ListedRow[]): Promise<Advisory[]> {
  if (rows.length === 0) return [];
  const { names, given, words, orders } = await inOffice(ctx, async (tx) => {
    const given = await tx
      .select()
      .from(answers)
      .where(
        and(
          eq(answers.officeId, ctx.officeId),
          inArray(
            answers.advisoryId,
            rows.map((r) => r.id),
          ),
        ),
      )
      .orderBy(desc(answers.ledgerSeq));
    const textIds = [
      ...rows.flatMap((r) => [r.noteTextId, r.withdrawnTextId]),
      ...given.map((a) => a.reasonTextId),
    ];
    return {
      names: await readNames(tx, ctx, [...new Set(rows.map((r) => r.farmId))]),
      given,
      words: await readTexts(tx, ctx.officeId, textIds),
      orders: await readSigners(tx, ctx, rows),
    };
  });
  /** A standing order issues in the name of who signed it. */
  const nameIn = ({ issuedBy, standingOrderId, standingOrderVersion }: ListedRow) =>
    orders.find((o) => o.id === standingOrderId && o.version === standingOrderVersion)?.signedBy ?? issuedBy;
  const people = await readPeople(ctx, [
    ...rows.flatMap((r) => [nameIn(r), r.confirmedBy ?? []].flat()),
    ...given.map((a) => a.answeredBy),
  ]);
  const nameOf = (userId: string) => people.get(userId) ?? "a former member";
  const text = (id: string | null) => (id === null ? null : (words.get(id) ?? null));
  const hashes = await readHashes(ctx, rows);

  return rows.map((row) => {
    const said = saidIn(row.rendered, ctx.language);
    const expected = row.expected as Expected | null;
    // The newest answer is the one that holds; the earlier ones stay in the ledger.
    const answer = given.find((a) => a.advisoryId === row.id);
    return {
      id: row.id,
      farmId: row.farmId,
      farmName: names.farm(row.farmId).name,
      plantingIds: row.plantingIds,
      subjectId: row.subjectId,
      subjectName: names.subject(row.subjectKind, row.subjectId, row.farmId),
      ruleId: row.ruleId,
      ruleVersion: row.ruleVersion,
      issuedAt: row.issuedAt,
      issuedBy: nameOf(nameIn(row)),
      confirmedBy: row.confirmedBy === null ? null : nameOf(row.confirmedBy),
      standingOrder:
        row.standingOrderId === null || row.standingOrderVersion === null
          ? null
          : { id: row.standingOrderId, version: row.standingOrderVersion },
      status: statusAt(row, ctx.now()),
      expiresAt: row.expiresAt,
      supersededBy: row.supersededBy,
      said,
      note: text(row.noteTextId),
      windowFrom: row.window.from,
      windowTo: row.window.to,
      expected,
      answer: answer
        ? {
            kind: answer.kind,
            actual: answer.actual as Actual | null,
            reason: text(answer.reasonTextId),
            answeredAt: answer.answeredAt,
            answeredBy: nameOf(answer.answeredBy),
            ledgerSeq: answer.ledgerSeq,
          }
        : null,
      withdrawnReason: text(row.withdrawnTextId),
      ledgerSeq: row.ledgerSeq,
      ledgerHash: hashes.get(row.ledgerSeq) ?? "",
    };
  });
}

/** Hashes of the entries that issued these. A farmer may not read the ledger, but may hold its number and hash on paper. */
async function readHashes(ctx: Ctx, rows: ListedRow[]): Promise<Map<number, string>> {
  const read = await forOffice(ctx, (tx) =>
    tx
      .select({ seq: ledgerEntries.seq, hash: ledgerEntries.hash })
      .from(ledgerEntries)
      .where(
        and(
          eq(ledgerEntries.officeId, ctx.officeId),
          inArray(
            ledgerEntries.seq,
            rows.map((r) => r.ledgerSeq),
          ),
        ),
      ),
  );
  return new Map(read.map(({ seq, hash }) => [seq, hash]));
}

/** Who signed the orders that issued these, version by version. */
async function readSigners(tx: Tx, { officeId }: Ctx, rows: ListedRow[]) {
  const ids = [...new Set(rows.flatMap((r) => r.standingOrderId ?? []))];
  if (ids.length === 0) return [];
  return tx
    .select({ id: standingOrders.id, version: standingOrders.version, signedBy: standingOrders.signedBy })
    .from(standingOrders)
    .where(and(eq(standingOrders.officeId, officeId), inArray(standingOrders.id, ids)));
}
