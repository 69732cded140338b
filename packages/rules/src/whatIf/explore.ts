import { answerOf } from "../answerOf.ts";
import { cautionsFor } from "../cautions/register.ts";
import type { Caution } from "../cautions/types.ts";
import type { Answer, Chart, Rule } from "../core/rule.ts";
import type { Estimated, WorkingLine } from "../core/working.ts";
import { feedingRule } from "../rules/feeding/index.ts";
import { hotterRule } from "../rules/hotter/index.ts";
import { irrigateRule } from "../rules/irrigate/index.ts";
import { setOutRule } from "../rules/set-out/index.ts";
import { settingDepthRule } from "../rules/setting-depth/index.ts";
import { toppingRule } from "../rules/topping/index.ts";
import { woodAshRule } from "../rules/wood-ash/index.ts";
import { CHOICE_NAMES, type ChoiceName, type WhatIf } from "../states/whatIf.ts";
import type { Message } from "../text/message.ts";
import { say } from "../text/message.ts";
import { choiceCautions } from "./choiceCautions.ts";
import { sayAsh } from "./sayAsh.ts";
import { sayChances } from "./sayChances.ts";
import { sayDepth } from "./sayDepth.ts";
import { type Saying, saying } from "./saying.ts";
import { sayPotash } from "./sayPotash.ts";
import { sayTopping } from "./sayTopping.ts";
import { sayWater } from "./sayWater.ts";
import { type Starting, startingOf } from "./starting.ts";
import { put, type Subjects } from "./subjects.ts";

/** One rule's answer as things are and as they are tried. */
export interface Explored {
  rule: { id: string; version: number };
  /** Null where the rule speaks of a valve and nothing stands on one. */
  asIs: Answer | null;
  tried: Answer | null;
  /** The rule decides otherwise. */
  changed: boolean;
  /** What it says about the choice itself, beside its decision. */
  said: Message[];
  working: WorkingLine[];
  estimated: Estimated[];
  charts: Chart[];
  cautions: Caution[];
}

/** Which rule speaks first about which choice. */
export const RULE_OF: Record<ChoiceName, string> = {
  setOutOn: "set-out",
  cover: "set-out",
  withheldPct: "hotter",
  k2oKgPerHa: "feeding",
  ashGPerM2: "wood-ash",
  buriedStemCm: "setting-depth",
  topped: "topping",
};

/** Whatever is tried, all of them are asked: a choice may move more than its own rule. */
const ASKED: { rule: Rule; of: keyof Subjects }[] = [
  { rule: setOutRule as Rule, of: "planting" },
  { rule: settingDepthRule as Rule, of: "planting" },
  { rule: toppingRule as Rule, of: "planting" },
  { rule: hotterRule as Rule, of: "valve" },
  { rule: irrigateRule as Rule, of: "valve" },
  { rule: feedingRule as Rule, of: "planting" },
  { rule: woodAshRule as Rule, of: "planting" },
];

/** Says of a choice, where its rule has an answer to give. */
type SayOf = (then: Subjects, was: Subjects, whatIf: WhatIf, starting: Starting) => Saying;
const SAYS: Record<string, SayOf> = {
  "set-out": (then) => sayChances(then.planting),
  "setting-depth": (then, _, { buriedStemCm }, { buriedStemCm: is }) =>
    sayDepth(then.planting, buriedStemCm ?? Number(is.value)),
  topping: (then, _, { topped }, { topped: is }) =>
    sayTopping(then.planting, topped ?? (is.value as NonNullable<WhatIf["topped"]>)),
  hotter: ({ valve }, _, { withheldPct }, { withheldPct: is }) =>
    valve ? sayWater(valve, withheldPct ?? Number(is.value)) : saying(),
  feeding: (then, was, { k2oKgPerHa, ashGPerM2 }) => {
    const said = sayPotash(then.planting, k2oKgPerHa ?? 0);
    const alone = (k2oKgPerHa || ashGPerM2) && was.planting.feeding.allotted;
    return alone ? { ...said, said: [...said.said, say("what-if.potash.alone")] } : said;
  },
  "wood-ash": (_, was, { ashGPerM2 }) => sayAsh(was.planting, ashGPerM2 ?? 0),
};

export interface WhatIfDesk {
  starting: Starting;
  explore(whatIf: WhatIf): Explored[];
}

/** A planting to try things on. Pure: the same subjects and choices give the same bytes, in a browser and on a server. */
export function whatIfOf(was: Subjects): WhatIfDesk {
  const answers = answersOf(was);
  const starting = startingOf(was, (ruleId) => answers.get(ruleId) ?? null);
  return { starting, explore: (whatIf) => explore(was, answers, starting, differing(whatIf, starting)) };
}

/** Of what is tried, that which is not as it is. */
export const differing = (whatIf: WhatIf, starting: Starting): WhatIf =>
  Object.fromEntries(
    Object.entries(whatIf).filter(
      ([name, value]) => value !== undefined && value !== starting[name as ChoiceName].value,
    ),
  );

function answersOf(subjects: Subjects): Map<string, Answer | null> {
  return new Map(
    ASKED.map(({ rule, of }) => {
      const state = subjects[of];
      return [rule.id, state && answerOf(rule, state)];
    }),
  );
}

function explore(
  was: Subjects,
  answers: Map<string, Answer | null>,
  starting: Starting,
  whatIf: WhatIf,
): Explored[] {
  const subjects = put(was, whatIf);
  const then = answersOf(subjects);
  const byChoice = choiceCautions(was.planting, whatIf);
  return ASKED.map(({ rule: { id, version } }) => {
    const [before, after] = [answers.get(id) ?? null, then.get(id) ?? null];
    // What dries is reckoned also where nobody gains by it, as long as the valve's water can be reckoned at all.
    const ground = id === "hotter" ? then.get("irrigate") : after;
    const more =
      ground?.kind === "advice" ? (SAYS[id]?.(subjects, was, whatIf, starting) ?? saying()) : saying();
    const own = after?.kind === "advice" ? after.cautions.map((c) => c.id) : [];
    return {
      rule: { id, version },
      asIs: before,
      tried: after,
      changed: decisionIn(before) !== decisionIn(after),
      said: more.said,
      working: more.working.lines,
      estimated: more.working.estimated,
      charts: more.charts,
      cautions: together(
        own,
        CHOICE_NAMES.filter((name) => RULE_OF[name] === id).flatMap((name) => byChoice[name]),
      ),
    };
  });
}

/** Those of the answer and of the choice, each once; of nothing advised and nothing tried, none. */
const together = (own: string[], more: string[]): Caution[] =>
  own.length + more.length === 0 ? [] : cautionsFor(...new Set([...own, ...more]));

/** What a rule decides, as far as a reader would say that it decides otherwise. */
function decisionIn(answer: Answer | null): string {
  if (answer === null) return "";
  if (answer.kind === "advice") return JSON.stringify(answer.decision);
  if (answer.kind === "does-not-apply") return JSON.stringify(answer.reason);
  if (answer.kind === "needs-more") return JSON.stringify(answer.missing);
  return JSON.stringify(answer.problems);
}
