import {
  CHOICE_IDS,
  type Claim,
  choices,
  claims,
  claimsOfSource,
  inForce,
  OfficeSourceSchema,
  optionOf,
  problemsOf,
  sourcePage,
  sources,
} from "@pith/rules";
import { describe, expect, test } from "vitest";

/** Where sources conflict an office may choose; the register holds both sides, and each source has its page. */

describe.each(choices.map((c) => [c.id, c] as const))("choice %s", (_, choice) => {
  test("its default is an option, and there is something to choose between", () => {
    const ids = choice.options.map((o) => o.id);
    expect(ids).toContain(choice.default);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.length).toBeGreaterThan(1);
  });
  test("every option stands on claims of its rule", () => {
    for (const option of choice.options) {
      expect(option.claims.length, option.id).toBeGreaterThan(0);
      expect(option.claims.map((id) => claims.get(id)?.rule)).toEqual(option.claims.map(() => choice.rule));
    }
  });
});

test("one entry for every choice there is, no more", () => {
  expect(choices.map((c) => c.id).toSorted()).toEqual([...CHOICE_IDS].toSorted());
});

test.each([
  ["setting-depth.leggy", "trade-rule", "trials"],
  ["topping.default", "practice", "published"],
] as const)("%s: a claim for %s and one for %s name each other as conflicts", (id, one, other) => {
  const options = choices.find((c) => c.id === id)?.options ?? [];
  const against = options.find((o) => o.id === other)?.claims ?? [];
  const named = (options.find((o) => o.id === one)?.claims ?? []).flatMap(
    (c) => claims.get(c)?.conflicts ?? [],
  );
  expect(against.filter((c) => named.includes(c))).toEqual(against);
  const back = against.flatMap((c) => claims.get(c)?.conflicts ?? []);
  expect(back).toEqual(expect.arrayContaining(options.find((o) => o.id === one)?.claims ?? []));
});

describe("which option is in force", () => {
  test("nobody chose; the office chose; the office chose what does not exist", () => {
    const of = (choice?: string) =>
      inForce(
        "setting-depth.leggy",
        choice === undefined ? {} : { choices: { "setting-depth.leggy": choice } },
      );
    expect(of()).toEqual({
      option: "trials",
      by: "default",
      claims: ["setting-depth.lodging", "setting-depth.georgia"],
    });
    expect(of("trade-rule")).toEqual({
      option: "trade-rule",
      by: "office",
      claims: ["setting-depth.trade-rule"],
    });
    expect(of("knee-deep").by).toBe("default");
    expect(optionOf("topping.default", {})).toBe("no-unless-time");
  });
});

describe("a source's page", () => {
  test("HortScience 35(4):593 (2000): its claim with what speaks against it, and the choice it speaks in", () => {
    const page = sourcePage("hortscience-35-593");
    expect(page?.claims.map((c) => c.id)).toEqual(["setting-depth.lodging", "setting-depth.cold-soil"]);
    expect([page?.bestGrade, page?.rules]).toEqual(["moderate", ["setting-depth"]]);
    expect(page?.conflicts.map((c) => [c.claim, c.with.id])).toEqual([
      ["setting-depth.lodging", "setting-depth.trade-rule"],
    ]);
    expect(page?.choices.map((c) => [c.choice.id, c.options])).toEqual([["setting-depth.leggy", ["trials"]]]);
  });
  test("every source has one, with all claims that name it and the conflicts of each of them", () => {
    for (const key of sources.keys()) {
      const page = sourcePage(key);
      expect(page?.claims, key).toEqual(claimsOfSource(key));
      const named = page?.claims.flatMap((c) => c.conflicts) ?? [];
      expect(
        page?.conflicts.map((c) => c.with.id),
        key,
      ).toEqual(named);
    }
  });
  test("what a page must say stands in every claim: design, grade, limits, what would change it", () => {
    const silent = [...claims.values()].filter((c) =>
      [c.design, c.limits, c.wouldChange].some((t) => t.trim() === ""),
    );
    expect(silent.map((c) => c.id)).toEqual([]);
  });
  test("every claim names a source that the register holds", () => {
    const unknown = [...claims.values()].flatMap((c) => c.sources.filter((s) => !sources.has(s.key)));
    expect(unknown).toEqual([]);
  });
  test("a source of an equation alone names the computation: Thom and Shaw on frost dates", () => {
    const page = sourcePage("thom-shaw-1958");
    expect([page?.claims, page?.bestGrade]).toEqual([[], null]);
    expect(page?.computations.map((c) => c.id)).toEqual(["frost-date"]);
  });
  test("a claim whose first source is a trial that was read says how much of it there is", () => {
    const first = (c: Claim) => sources.get(c.sources[0]?.key ?? "");
    const silent = [...claims.values()].filter(
      (c) => first(c)?.kind === "trial" && first(c)?.status === "seen" && c.size === null,
    );
    expect(silent.map((c) => c.id)).toEqual([]);
  });
  test("none for a source that nobody holds", () => {
    expect(sourcePage("made-up")).toBeUndefined();
  });
});

describe("an office's own source", () => {
  const own = {
    id: "county-bulletin-7",
    cite: "County bulletin 7: peppers on plastic. Invented.",
    kind: "extension",
    year: 2019,
    url: "https://example.org/7",
    rule: "setting-depth",
    finding: "Plants set to the seed leaves leaned less in the windy year.",
    design: "Demonstration on two farms",
    size: "two farms, one season",
    effect: null,
    grade: "weak",
    limits: "No replication.",
    wouldChange: "A replicated trial.",
  };
  const wrong = (change: Record<string, unknown>) => {
    const raw = { ...own, ...change };
    const parsed = OfficeSourceSchema.safeParse(raw);
    return parsed.success ? [] : problemsOf(parsed.error, raw).map((p) => p.field);
  };

  test("is taken whole", () => {
    expect(OfficeSourceSchema.parse(own)).toEqual(own);
  });
  test("a rule that does not exist is named with those that do", () => {
    const raw = { ...own, rule: "moon-phase" };
    const parsed = OfficeSourceSchema.safeParse(raw);
    const [problem] = parsed.success ? [] : problemsOf(parsed.error, raw);
    expect([problem?.field, problem?.accepted?.includes("setting-depth")]).toEqual(["rule", true]);
  });
  test("practice is graded practice, and nothing else is", () => {
    expect(wrong({ kind: "practice", grade: "weak" })).toEqual(["grade"]);
    expect(wrong({ kind: "trial", grade: "practice" })).toEqual(["grade"]);
    expect(wrong({ kind: "practice", grade: "practice" })).toEqual([]);
  });
  test("one trial of the office's own is never strong, and is a trial", () => {
    expect(wrong({ trialId: "t", kind: "trial", grade: "strong" })).toEqual(["grade"]);
    expect(wrong({ trialId: "t", kind: "extension" })).toEqual(["kind"]);
    expect(wrong({ trialId: "t", kind: "trial", grade: "moderate" })).toEqual([]);
  });
  test("an address that is no web address, an id with spaces, an empty limit", () => {
    expect(wrong({ url: "javascript:alert(1)" })).toEqual(["url"]);
    expect(wrong({ id: "My Source" })).toEqual(["id"]);
    expect(wrong({ limits: "  " })).toEqual(["limits"]);
  });
});
