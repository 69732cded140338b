import { type Answer, daysBetween } from "@pith/rules";

/** A date that moves by less is the same date (architecture.md, common practice). */
const DATE_MOVES_DAYS = 2;
/** An amount that moves by less is the same amount (architecture.md, common practice). */
const AMOUNT_MOVES_SHARE = 0.1;

/**
 * Whether a new answer says something that an open draft does not: another kind, decision or caution, another word in the decision, a date at least
 * two days off, an amount at least a tenth off, or another reading of a soil test. Everything else would only make drafts churn with the weather.
 */
export function isChanged(old: Answer, next: Answer): boolean {
  if (old.rule.version !== next.rule.version) return true;
  if (old.kind === "advice" && next.kind === "advice") {
    return (
      old.decision.code !== next.decision.code ||
      wordsOf(old) !== wordsOf(next) ||
      cautionsOf(old) !== cautionsOf(next) ||
      dateMoved(old.window.from, next.window.from) ||
      dateMoved(old.window.to, next.window.to) ||
      dateMoved(old.stakes.actBy, next.stakes.actBy) ||
      dateMoved(old.expected?.date ?? null, next.expected?.date ?? null) ||
      old.expected?.kind !== next.expected?.kind ||
      materialsOf(old) !== materialsOf(next) ||
      amountsMoved(old.amounts, next.amounts) ||
      rangesOf(old) !== rangesOf(next)
    );
  }
  if (old.kind === "needs-more" && next.kind === "needs-more") {
    return fieldsOf(old.missing) !== fieldsOf(next.missing);
  }
  if (old.kind === "does-not-apply" && next.kind === "does-not-apply") {
    return old.reason.key !== next.reason.key;
  }
  if (old.kind === "refused" && next.kind === "refused") {
    return JSON.stringify(old.problems) !== JSON.stringify(next.problems);
  }
  return true;
}

/** The decision's words without its numbers and days, which may move a little. */
const wordsOf = ({ decision: { text } }: Extract<Answer, { kind: "advice" }>): string =>
  [
    text.key,
    ...Object.entries(text.params).flatMap(([name, param]) =>
      typeof param === "object" && "word" in param ? [`${name} ${param.word}`] : [],
    ),
  ].join();

const cautionsOf = (answer: Extract<Answer, { kind: "advice" }>): string =>
  answer.cautions
    .map((c) => `${c.id}@${c.version}`)
    .sort()
    .join();

const materialsOf = ({ expected }: Extract<Answer, { kind: "advice" }>): string =>
  [expected?.materialId, ...(expected?.alongside ?? []).map((one) => one.materialId)].join();

/** What a laboratory measured and by which guide it is read: these do not drift with the weather, so any change counts. */
const rangesOf = ({ ranges = [] }: Extract<Answer, { kind: "advice" }>): string =>
  ranges.map((r) => [r.id, r.value, r.guide.id, r.class].join(" ")).join();

const fieldsOf = (missing: { field: string }[]): string =>
  missing
    .map((m) => m.field)
    .sort()
    .join();

function dateMoved(old: string | null, next: string | null): boolean {
  if (old === null || next === null) return old !== next;
  return Math.abs(daysBetween(old.slice(0, 10), next.slice(0, 10))) >= DATE_MOVES_DAYS;
}

function amountsMoved(old: Record<string, number>, next: Record<string, number>): boolean {
  const names = new Set([...Object.keys(old), ...Object.keys(next)]);
  return [...names].some((name) => {
    const before = old[name];
    const after = next[name];
    if (before === undefined || after === undefined) return true;
    // A tenth of what the reader has seen; from nothing to something is a change.
    return before === 0
      ? after !== 0
      : Math.abs(after - before) / Math.abs(before) >= AMOUNT_MOVES_SHARE - 1e-12;
  });
}
