import type { Answer } from "../core/rule.ts";
import { MILDEST_ET_SHARE } from "../rules/hotter/ask.ts";
import { coversOn } from "../states/standing.ts";
import type { ChoiceName, CoverStep, ToppedStep } from "../states/whatIf.ts";
import { type Message, say } from "../text/message.ts";
import { type Subjects, todayOf, wantedDay } from "./subjects.ts";

/** Where a choice stands before anything is tried. */
interface Start {
  /** The planting's own; of depth and tips what the rule advises. Null: nobody has said. */
  value: string | number | null;
  /** Why there is nothing to try, where so. */
  not: Message | null;
}
export type Starting = Record<ChoiceName, Start>;

/** The planting's own values, and which choices its rules can speak about at all. */
export function startingOf(subjects: Subjects, answerOf: (ruleId: string) => Answer | null): Starting {
  const { planting: state } = subjects;
  const today = todayOf(state);
  const of = (ruleId: string, value: Start["value"]): Start => ({ value, not: whyNot(answerOf(ruleId)) });
  const decided = (ruleId: string) => {
    const answer = answerOf(ruleId);
    return answer?.kind === "advice" ? answer : undefined;
  };
  const planned = state.planting.plannedSetOutOn;
  const buried = decided("setting-depth")?.amounts.buriedStemCm ?? 0;
  return {
    setOutOn: of("set-out", planned !== undefined && planned >= today ? planned : null),
    cover: of("set-out", standingCover(subjects)),
    withheldPct: { value: withheldNow(subjects), not: noWater(subjects) },
    k2oKgPerHa: of("feeding", 0),
    ashGPerM2:
      decided("wood-ash")?.decision.code === "not-this-ash" ? barred(decided("wood-ash")) : of("wood-ash", 0),
    buriedStemCm: of("setting-depth", buried),
    topped: of("topping", TOPPED[decided("topping")?.decision.code ?? ""] ?? "none"),
  };
}

const TOPPED: Record<string, ToppedStep> = { "half-bed": "half", take: "all" };

const barred = (answer: Extract<Answer, { kind: "advice" }> | undefined): Start => ({
  value: 0,
  not: answer?.decision.text ?? null,
});

/** A day too far off can be tried nearer; whatever else does not apply cannot be tried. */
function whyNot(answer: Answer | null): Message | null {
  if (answer?.kind === "does-not-apply") {
    return answer.reason.key === "set-out.not.too-far" ? null : answer.reason;
  }
  return answer?.kind === "refused" ? say("what-if.not.refused") : null;
}

function noWater({ planting, valve }: Subjects): Message | null {
  if (valve) return null;
  const { setOutOn } = planting.planting;
  const stands = setOutOn !== undefined && setOutOn <= todayOf(planting);
  return say(stands ? "what-if.not.no-valve" : "what-if.not.not-out");
}

function standingCover({ planting }: Subjects): CoverStep {
  const covers = coversOn(planting.bed, wantedDay(planting));
  const fleece = covers.includes("fleece");
  if (covers.includes("low-tunnel")) return fleece ? "fleece-and-low-tunnel" : "low-tunnel";
  return fleece ? "fleece" : "none";
}

function withheldNow({ planting, valve }: Subjects): number {
  const zone = valve?.zones.find((z) => z.planting.id === planting.planting.id);
  const deficit = zone?.planting.deficit;
  const today = todayOf(planting);
  if (!deficit || (deficit.to !== undefined && deficit.to < today)) return 0;
  return Math.round(100 * (1 - (deficit.etShare ?? MILDEST_ET_SHARE)));
}
