import { advisories, drafts, secondReadings, type Tx } from "@pith/db";
import type { Answer } from "@pith/rules";
import { and, desc, eq, inArray, notInArray, or, sql } from "drizzle-orm";
import { standsOpen } from "../advice/standing.ts";
import { type Ctx, nowOf } from "../context.ts";
import { lockFarm } from "../farms/requireFarm.ts";
import { canonicalText, sha256Hex } from "../ledger/canonical.ts";
import { readFacts } from "../states/facts.ts";
import { type Advised, adviseSubjects } from "./adviseSubjects.ts";
import { isChanged } from "./isChanged.ts";
import { roundOrder } from "./roundOrder.ts";
import { summaryOf } from "./summary.ts";

export interface AdvisedCount {
  subjects: number;
  replaced: number;
  kept: number;
}

/**
 * Runs every rule on every subject of a farm and brings its drafts up to date, in the caller's transaction: a draft is
 * replaced only where the answer says something else, and renewed where it is where it says the same with other figures;
 * none is made where what was issued last still says the same, and drafts of subjects that are gone go too. Which
 * plantings a draft is about may change without anything else.
 */
export async function adviseFarm(tx: Tx, ctx: Ctx, farmId: string): Promise<AdvisedCount> {
  // One at a time a farm: two runs side by side would each keep what the other replaces.
  await lockFarm(tx, ctx, farmId);
  const facts = await readFacts(tx, { officeId: ctx.officeId, farmId }, nowOf(ctx));
  const advised = adviseSubjects(facts);
  const known = await readKnown(tx, ctx, farmId);

  const fresh: (typeof drafts.$inferInsert)[] = [];
  const stays = new Set<string>();
  let kept = 0;
  let renewed = 0;
  for (const subject of advised) {
    let sha256: string | undefined;
    for (const answer of subject.answers) {
      const key = keyOf(answer);
      const issued = known.issued.get(key);
      if (issued && !isChanged(issued, answer)) continue;
      const draft = known.drafts.get(key);
      if (draft && !isChanged(draft.answer, answer)) {
        stays.add(draft.id);
        kept += 1;
        // It says the same with other figures: who reads it shall read what would go out now. What two are reading stays.
        if (!draft.asked && saysOtherwise(draft.answer, answer)) {
          sha256 ??= await sha256Hex(canonicalText(subject.state));
          const { madeAt, setAsideUntil } = draft;
          fresh.push({ ...draftRow(ctx, farmId, draft.id, subject, answer, sha256), madeAt, setAsideUntil });
          renewed += 1;
          continue;
        }
        if (draft.plantingIds.join() !== subject.plantingIds.join()) {
          await tx
            .update(drafts)
            .set({ plantingIds: subject.plantingIds })
            .where(and(eq(drafts.officeId, ctx.officeId), eq(drafts.id, draft.id)));
        }
        continue;
      }
      // The hash is only worth its time where a draft is really written.
      sha256 ??= await sha256Hex(canonicalText(subject.state));
      const id = draft?.id ?? globalThis.crypto.randomUUID();
      stays.add(id);
      fresh.push(draftRow(ctx, farmId, id, subject, answer, sha256));
    }
  }
  await store(tx, ctx, farmId, fresh, [...stays]);
  return { subjects: advised.length, replaced: fresh.length - renewed, kept };
}

/** Whether anything that is read differs: all but the instant, and charts and working, which follow from the rest. */
const saysOtherwise = (old: Answer, next: Answer): boolean => readOf(old) !== readOf(next);
const readOf = (answer: Answer): string =>
  canonicalText({ ...answer, asOf: null, charts: null, working: null, estimated: null });

/** Which draft an answer is: one a rule and subject. */
const keyOf = (answer: Pick<Answer, "rule" | "subject">): string =>
  `${answer.rule.id} ${answer.subject.kind} ${answer.subject.id}`;

/** The drafts and the last issued advice of a farm. Charts and working are not compared, so they are not read. */
async function readKnown(tx: Tx, ctx: Ctx, farmId: string) {
  const { officeId } = ctx;
  const slim = (answer: typeof drafts.answer | typeof advisories.answer) =>
    sql<Answer>`${answer} - 'charts' - 'working'`;
  const open = await tx
    .select({
      id: drafts.id,
      plantingIds: drafts.plantingIds,
      madeAt: drafts.madeAt,
      setAsideUntil: drafts.setAsideUntil,
      asked: sql<boolean>`${secondReadings.draftId} is not null`,
      answer: slim(drafts.answer),
    })
    .from(drafts)
    .leftJoin(
      secondReadings,
      and(eq(secondReadings.officeId, drafts.officeId), eq(secondReadings.draftId, drafts.id)),
    )
    .where(and(eq(drafts.officeId, officeId), eq(drafts.farmId, farmId)));
  const issued = await tx
    .selectDistinctOn([advisories.ruleId, advisories.subjectId], { answer: slim(advisories.answer) })
    .from(advisories)
    .where(
      and(
        eq(advisories.officeId, officeId),
        eq(advisories.farmId, farmId),
        // What lapsed unanswered does not stand any more, even where it would say the same again.
        or(standsOpen(ctx), inArray(advisories.status, ["done", "not-done", "cannot"])),
      ),
    )
    .orderBy(advisories.ruleId, advisories.subjectId, desc(advisories.issuedAt), desc(advisories.ledgerSeq));
  return {
    drafts: new Map(open.map((d) => [keyOf(d.answer), d])),
    issued: new Map(issued.map((i) => [keyOf(i.answer), i.answer])),
  };
}

/** A draft as it is stored. */
export function draftRow(
  ctx: Ctx,
  farmId: string,
  id: string,
  { plantingIds, timeZone }: Pick<Advised, "plantingIds" | "timeZone">,
  answer: Answer,
  stateSha256: string,
): typeof drafts.$inferInsert {
  const pressing =
    answer.kind === "advice"
      ? { harm: answer.stakes.harm, actBy: answer.stakes.actBy }
      : { harm: 0, actBy: null };
  return {
    officeId: ctx.officeId,
    id,
    farmId,
    ruleId: answer.rule.id,
    ruleVersion: answer.rule.version,
    subjectKind: answer.subject.kind,
    subjectId: answer.subject.id,
    plantingIds,
    kind: answer.kind,
    answer: { ...answer },
    summary: { ...summaryOf(answer, timeZone) },
    stateSha256,
    decisionCode: answer.kind === "advice" ? answer.decision.code : null,
    ...pressing,
    orderKey: roundOrder(pressing),
    madeAt: nowOf(ctx),
    setAsideUntil: null,
  };
}

async function store(
  tx: Tx,
  { officeId }: Ctx,
  farmId: string,
  fresh: (typeof drafts.$inferInsert)[],
  stays: string[],
): Promise<void> {
  await tx
    .delete(drafts)
    .where(
      and(
        eq(drafts.officeId, officeId),
        eq(drafts.farmId, farmId),
        stays.length > 0 ? notInArray(drafts.id, stays) : undefined,
      ),
    );
  if (fresh.length > 0) await writeDrafts(tx, fresh);
}

/** Writes drafts whole; what was there under the same id is replaced, and is not set aside any more. */
export async function writeDrafts(tx: Tx, rows: (typeof drafts.$inferInsert)[]): Promise<void> {
  const theNew = (column: string) => sql.raw(`excluded.${column}`);
  await tx
    .insert(drafts)
    .values(rows)
    .onConflictDoUpdate({
      target: [drafts.officeId, drafts.id],
      set: {
        ruleVersion: theNew("rule_version"),
        plantingIds: theNew("planting_ids"),
        kind: theNew("kind"),
        answer: theNew("answer"),
        summary: theNew("summary"),
        stateSha256: theNew("state_sha256"),
        decisionCode: theNew("decision_code"),
        harm: theNew("harm"),
        actBy: theNew("act_by"),
        orderKey: theNew("order_key"),
        madeAt: theNew("made_at"),
        setAsideUntil: theNew("set_aside_until"),
      },
    });
}
