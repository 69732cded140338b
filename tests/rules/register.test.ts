import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type Advice, advise, cautions, cautionsFor, claims, rules, sources } from "@pith/rules";
import { describe, expect, test } from "vitest";
import { MATERIAL_FACTS } from "../../packages/rules/src/tables/materials.ts";

/** What every rule must keep: cautions that exist, claims that are honest about how their sources were read. */

const folder = join(import.meta.dirname, "../../docs/examples");
const advices: [string, Advice][] = readdirSync(folder)
  .filter((file) => file.endsWith(".json"))
  .flatMap((file) =>
    advise(JSON.parse(readFileSync(join(folder, file), "utf8"))).map((a) => [file, a] as const),
  )
  .flatMap(([file, a]) => (a.kind === "advice" ? [[`${a.rule.id} in ${file}`, a] as [string, Advice]] : []));

test("the examples make every rule give advice", () => {
  expect([...new Set(advices.map(([, a]) => a.rule.id))].sort()).toEqual(rules.map((r) => r.id).sort());
});

describe.each(advices)("%s", (_, a) => {
  test("carries whole cautions, the standing one among them, and claims that stand in the register", () => {
    expect(a.cautions.map((c) => c.id)).toContain("local-rules-first");
    for (const caution of a.cautions) expect(cautions.get(caution.id)).toEqual(caution);
    // A choice of the agent's stands on what the rules that speak of it stand on.
    const own = (id: string) => a.rule.id === "what-if" || claims.get(id)?.rule === a.rule.id;
    expect(a.evidence.filter((id) => !claims.has(id) || !own(id))).toEqual([]);
    expect(a.evidence.length).toBeGreaterThan(0);
  });
  test("its working names registered sources, and its stakes are a share with a day until when", () => {
    const keys = a.working.flatMap((l) => (l.source ? [l.source.key] : []));
    expect(keys.filter((key) => !sources.has(key))).toEqual([]);
    expect(a.stakes.harm).toBeGreaterThanOrEqual(0);
    expect(a.stakes.harm).toBeLessThanOrEqual(1);
  });
});

test("every material's cautions exist", () => {
  for (const [kind, facts] of Object.entries(MATERIAL_FACTS)) {
    const ids = cautionsFor(...facts.cautions).map((c) => c.id);
    expect([kind, ids]).toEqual([kind, expect.arrayContaining([...facts.cautions])]);
  }
});

test("a caution nobody wrote is a fault and throws", () => {
  expect(() => cautionsFor("no-such-caution")).toThrow("no-such-caution");
});

describe("claims", () => {
  const statuses = (id: string) => (claims.get(id)?.sources ?? []).map((s) => sources.get(s.key)?.status);

  test("a claim that no source was seen for is graded no better than weak", () => {
    const bold = [...claims.values()].filter(
      (c) => !statuses(c.id).includes("seen") && (c.grade === "strong" || c.grade === "moderate"),
    );
    expect(bold.map((c) => [c.id, statuses(c.id)])).toEqual([]);
  });
  test("a claim that leans on memory says so", () => {
    const silent = [...claims.values()].filter(
      (c) =>
        statuses(c.id).includes("memory") &&
        !/memory|not re-?read|unverified/i.test(`${c.design} ${c.limits} ${c.effect}`),
    );
    expect(silent.map((c) => c.id)).toEqual([]);
  });
  test("limits and what would change it are filled, and those that disagree name each other", () => {
    for (const c of claims.values()) {
      expect([c.id, c.limits.length > 10, c.wouldChange.length > 10]).toEqual([c.id, true, true]);
      for (const other of c.conflicts) expect(claims.get(other)?.conflicts).toContain(c.id);
    }
  });
  test("setting-depth shows the trade's rule and the trials, each against the other, and which way it went", () => {
    const depth = advices.filter(([, a]) => a.rule.id === "setting-depth");
    expect([...new Set(depth.map(([, a]) => a.decision.code))].sort()).toEqual(["root-ball", "seed-leaves"]);
    for (const [, a] of depth) {
      expect(a.evidence).toEqual(
        expect.arrayContaining(["setting-depth.trade-rule", "setting-depth.lodging"]),
      );
      expect(a.limits[0]?.params.way).toEqual({ word: `setting-depth.way.${a.decision.code}` });
    }
  });
});
