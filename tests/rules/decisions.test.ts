import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { answerOf, decisionsOf, decisionWords, parseAtTheDoor, rules, StateSchema } from "@pith/rules";
import { expect, test } from "vitest";

const EXAMPLES = join(import.meta.dirname, "..", "..", "docs", "examples");

test("every decision that the examples come to can be chosen beforehand, in words of both languages", () => {
  const met = new Set<string>();
  for (const file of readdirSync(EXAMPLES).filter((name) => name.endsWith(".json"))) {
    const state = parseAtTheDoor(StateSchema, JSON.parse(readFileSync(join(EXAMPLES, file), "utf8")));
    for (const rule of rules.filter(({ subject }) => subject === state.kind)) {
      const answer = answerOf(rule, state);
      if (answer.kind !== "advice") continue;
      const { code } = answer.decision;
      met.add(`${rule.id} ${code}`);
      if (code.includes("-or-")) continue;
      expect(decisionsOf(rule.id), rule.id).toContain(code);
      const [en, es] = (["en", "es"] as const).map((language) =>
        decisionWords(rule.id, code, { language, units: "metric" }),
      );
      expect(en).not.toBe(es);
    }
  }
  expect(met.size).toBeGreaterThan(30);
});

test("each rule has decisions to choose among", () => {
  expect(rules.filter(({ id }) => decisionsOf(id).length === 0).map(({ id }) => id)).toEqual([]);
});
