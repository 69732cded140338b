import { type Alarm, adviceRoutes, type Draft, type DraftDetail } from "@pith/contract";
import { drafts, secondReadings, type Tx } from "@pith/db";
import type { Answer } from "@pith/rules";
import { and, arrayContains, asc, count, eq, getTableColumns, isNull, sql } from "drizzle-orm";
import { z } from "zod";
import { recordAudit } from "../audit.ts";
import { type Ctx, inOffice, requireAgent } from "../context.ts";
import { cursorOf, pageOf, placeAfter } from "../cursor.ts";
import { renewOutdated } from "../drafts/renewOutdated.ts";
import { type Summary, saySummary } from "../drafts/summary.ts";
import { found } from "../errors.ts";
import { requireFarm } from "../farms/requireFarm.ts";
import { sayAnswer } from "../saying/sayAnswer.ts";
import { readSilence } from "../sensors/silence.ts";
import { readTexts } from "../texts.ts";
import { readAlarms } from "../weather/alarms.ts";
import { bodyOf, queryOf } from "../wellFormed.ts";
import { readIssuingSettings, wantsSecond } from "./issuingSettings.ts";
import { type Names, peopleIn, readNames } from "./names.ts";
import { asideUntil, isAside, isNotAside } from "./setAside.ts";

/** What the round lists of a draft: everything but the answer itself. */
const { answer: _, ...columns } = getTableColumns(drafts);
const listed = (ctx: Ctx) => ({ ...columns, setAsideUntil: asideUntil(ctx) });
type ListedRow = Omit<typeof drafts.$inferSelect, "answer">;

type Round = { alarms: Alarm[]; drafts: Draft[]; total: number; next: string | null };

/** Open drafts over all farms, most urgent first, and before them what is wrong with what comes in. */
export async function getRound(ctx: Ctx, rawQuery: unknown): Promise<Round> {
  requireAgent(ctx);
  const query = queryOf(adviceRoutes.getRound, rawQuery);
  const { farmId, plantingId, ruleId, all, setAside, second, order, after, limit = 100 } = query;
  const from = after === undefined ? undefined : placeAfter(z.tuple([z.number(), z.uuid()]), after);
  await renewOutdated(ctx);
  return inOffice(ctx, async (tx) => {
    if (farmId !== undefined) await requireFarm(tx, ctx, farmId);
    const asked = and(
      eq(drafts.officeId, ctx.officeId),
      farmId === undefined ? undefined : eq(drafts.farmId, farmId),
      plantingId === undefined ? undefined : arrayContains(drafts.plantingIds, [plantingId]),
      ruleId === undefined ? undefined : eq(drafts.ruleId, ruleId),
      all === "yes" ? undefined : eq(drafts.kind, "advice"),
      setAside === "only" ? isAside(ctx) : undefined,
      setAside === undefined || setAside === "no" ? isNotAside(ctx) : undefined,
      second === "waiting" ? waitsForSecond : undefined,
    );
    const key = order === "deadline" ? timeLeft : sql<number>`${drafts.orderKey}`;
    const page = tx
      .select({ ...listed(ctx), key })
      .from(drafts)
      .where(and(asked, from && sql`(${key}, ${drafts.id}) > (${from[0]}::float8, ${from[1]}::uuid)`))
      .orderBy(asc(key), asc(drafts.id))
      .limit(limit + 1);
    const [more, [counted], alarms, silent] = await Promise.all([
      page,
      tx.select({ total: count() }).from(drafts).where(asked),
      readAlarms(tx, ctx, farmId),
      readSilence(tx, ctx, farmId),
    ]);
    const { rows, next } = pageOf(more, limit, (last) => cursorOf(last.key, last.id));
    const names = await readNames(tx, ctx, [...new Set(rows.map((r) => r.farmId))], namedIn(rows));
    return {
      total: counted?.total ?? 0,
      next,
      alarms: [...alarms, ...silent],
      drafts: await wireDrafts(tx, ctx, rows, names),
    };
  });
}

const ID = /[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}/g;
/** When it is to be done by, in seconds; what has no day stands last. */
const timeLeft = sql<number>`coalesce(extract(epoch from ${drafts.actBy})::float8, 1e18::float8)`;

/** Every id that a line of the round is said with. */
const namedIn = (rows: readonly ListedRow[]): string[] => [
  ...new Set(rows.flatMap((r) => [r.subjectId, ...(JSON.stringify(r.summary).match(ID) ?? [])])),
];

/** One draft with everything behind it. */
export async function getDraft(ctx: Ctx, draftId: string): Promise<DraftDetail> {
  requireAgent(ctx);
  await renewOutdated(ctx);
  return inOffice(ctx, async (tx) => {
    const [row] = await tx
      .select({ ...listed(ctx), answer: drafts.answer })
      .from(drafts)
      .where(thisDraft(ctx, draftId));
    const draft = found(row, "draft");
    const names = await readNames(tx, ctx, [draft.farmId]);
    const answer = draft.answer as unknown as Answer;
    return {
      ...found((await wireDrafts(tx, ctx, [draft], names))[0], "draft"),
      answer,
      said: sayAnswer(answer, names.farm(draft.farmId).reader),
      stateSha256: draft.stateSha256,
      needsSecond: wantsSecond(await readIssuingSettings(tx, ctx.officeId), answer),
    };
  });
}

/** Not now: until a day. Null brings it back; so does an answer that says something else. */
export async function setDraftAside(ctx: Ctx, draftId: string, raw: unknown): Promise<Draft> {
  requireAgent(ctx);
  const { until } = bodyOf(adviceRoutes.setDraftAside, raw);
  return inOffice(ctx, async (tx) => {
    const [row] = await tx
      .update(drafts)
      .set({ setAsideUntil: until })
      .where(thisDraft(ctx, draftId))
      .returning(listed(ctx));
    const draft = found(row, "draft");
    await recordAudit(tx, ctx, {
      action: "draft.set-aside",
      entity: "drafts",
      entityId: draftId,
      detail: { ruleId: draft.ruleId, subjectId: draft.subjectId, until },
    });
    const names = await readNames(tx, ctx, [draft.farmId]);
    return found((await wireDrafts(tx, ctx, [draft], names))[0], "draft");
  });
}

/** One draft as it is listed. */
export const readDraft = (ctx: Ctx, draftId: string): Promise<Draft> =>
  inOffice(ctx, async (tx) => {
    const [row] = await tx.select(listed(ctx)).from(drafts).where(thisDraft(ctx, draftId));
    const draft = found(row, "draft");
    const names = await readNames(tx, ctx, [draft.farmId]);
    return found((await wireDrafts(tx, ctx, [draft], names))[0], "draft");
  });

export const thisDraft = (ctx: Ctx, draftId: string) =>
  and(eq(drafts.officeId, ctx.officeId), eq(drafts.id, draftId));

async function wireDrafts(tx: Tx, ctx: Ctx, rows: ListedRow[], names: Names): Promise<Draft[]> {
  const seconds = await readSeconds(tx, ctx, rows);
  return rows.map((row) => ({ ...wireDraft(row, names, ctx.now()), second: seconds.get(row.id) ?? null }));
}

/** Another agent was asked to read it, has not sent it back, and it still says what was asked about. */
const waitsForSecond = sql`exists (select from ${secondReadings} where ${and(
  eq(secondReadings.officeId, drafts.officeId),
  eq(secondReadings.draftId, drafts.id),
  eq(secondReadings.stateSha256, drafts.stateSha256),
  isNull(secondReadings.sentBackAt),
)})`;

/** Which of these another agent was asked to read too. Few are, so all that wait are read. */
async function readSeconds(tx: Tx, ctx: Ctx, rows: ListedRow[]): Promise<Map<string, Draft["second"]>> {
  if (rows.length === 0) return new Map();
  const asked = await tx.select().from(secondReadings).where(eq(secondReadings.officeId, ctx.officeId));
  if (asked.length === 0) return new Map();
  const words = await readTexts(
    tx,
    ctx.officeId,
    asked.flatMap((a) => [a.noteTextId, a.sentBackTextId]),
  );
  const people = await peopleIn(
    tx,
    ctx.officeId,
    asked.flatMap((a) => [a.askedBy, a.sentBackBy ?? []].flat()),
  );
  const nameOf = (userId: string) => people.get(userId) ?? "a former member";
  const text = (id: string | null) => (id === null ? null : (words.get(id) ?? null));
  return new Map(
    rows.flatMap(({ id, stateSha256 }) => {
      const one = asked.find((a) => a.draftId === id);
      if (!one) return [];
      const { sentBackBy: by, sentBackAt: at } = one;
      const second: Draft["second"] = {
        askedBy: nameOf(one.askedBy),
        askedAt: one.askedAt,
        mine: one.askedBy === ctx.actor.userId,
        note: text(one.noteTextId),
        changed: one.stateSha256 !== stateSha256,
        sentBack: by && at ? { by: nameOf(by), at, reason: text(one.sentBackTextId) } : null,
      };
      return [[id, second] as const];
    }),
  );
}

function wireDraft(row: ListedRow, names: Names, now: Date): Omit<Draft, "second"> {
  const farm = names.farm(row.farmId);
  const overdue = row.actBy !== null && Date.parse(row.actBy) < now.getTime();
  return {
    id: row.id,
    farmId: row.farmId,
    farmName: farm.name,
    plantingIds: row.plantingIds,
    subjectId: row.subjectId,
    subjectName: names.subject(row.subjectKind, row.subjectId, row.farmId),
    ruleId: row.ruleId,
    kind: row.kind,
    decisionCode: row.decisionCode,
    ...saySummary(row.summary as unknown as Summary, { overdue, reader: farm.reader }),
    harm: row.harm,
    actBy: row.actBy,
    madeAt: row.madeAt,
    setAsideUntil: row.setAsideUntil,
  };
}
