import { type Claim, choiceIn, choices, claimIn, claims, ruleIn, rules } from "@pith/rules";
import { describe, expect, test } from "vitest";
import { choiceWords, claimWords, ruleWords } from "../../packages/rules/src/text/es/evidence/index.ts";

/** The evidence register says the same in both languages: each text, each figure, each cultivar. */

const FIELDS = ["finding", "design", "size", "effect", "limits", "wouldChange"] as const;

/** Figures as they are written, in whatever order a language puts them. */
const figuresOf = (text: string): string[] => (text.match(/\d+(?:[.,:/]\d+)*/g) ?? []).sort();
/** Cultivars go by their names. */
const cultivarsOf = (text: string): string[] => (text.match(/'\p{Lu}[^']*'/gu) ?? []).sort();
/** Two words of a sentence; names, figures, units and formulas are the same in both. */
const isSentence = (text: string): boolean => /\b[a-z]{3,} [a-z]{3,}\b/.test(text);

describe.each([...claims.values()].map((claim): [string, Claim] => [claim.id, claim]))("%s", (_, claim) => {
  test("has its words in Spanish, with the same figures and cultivars", () => {
    const said = claimIn(claim, "es");
    for (const field of FIELDS) {
      const [ours, theirs] = [claim[field], said[field]];
      expect(theirs === null, field).toBe(ours === null);
      if (ours === null || theirs === null) continue;
      expect(figuresOf(theirs), field).toEqual(figuresOf(ours));
      expect(cultivarsOf(theirs), field).toEqual(cultivarsOf(ours));
      expect(theirs === ours && isSentence(ours), `${field} left in English`).toBe(false);
    }
    expect(said.grade).toBe(claim.grade);
    expect(said.sources).toEqual(claim.sources);
  });
});

test("no Spanish words are left of a claim, a rule or a choice that is gone", () => {
  expect(Object.keys(claimWords).sort()).toEqual([...claims.keys()].sort());
  expect(Object.keys(ruleWords).sort()).toEqual(rules.map(({ id }) => id).sort());
  expect(Object.keys(choiceWords).sort()).toEqual(choices.map(({ id }) => id).sort());
});

test("each rule says in Spanish what it asks and needs, in the rule's own order", () => {
  for (const rule of rules) {
    const said = ruleIn(rule, "es");
    expect(said.question, rule.id).toMatch(/¿.+\?/);
    expect(said.needs.length, rule.id).toBe(rule.needs.length);
    rule.needs.forEach((need, i) => {
      expect(figuresOf(said.needs[i] ?? ""), need).toEqual(figuresOf(need));
    });
    expect(said.needs.filter((need, i) => need === rule.needs[i] && isSentence(need))).toEqual([]);
  }
});

test("each choice between readings, and each of its readings, stands in Spanish", () => {
  for (const choice of choices) {
    const said = choiceIn(choice, "es");
    expect(said.question, choice.id).toMatch(/¿.+\?/);
    expect(Object.keys(choiceWords[choice.id]?.options ?? {}).sort()).toEqual(
      choice.options.map(({ id }) => id).sort(),
    );
    said.options.forEach(({ says }, i) => {
      expect(says, choice.id).not.toBe(choice.options[i]?.says);
    });
  }
});
