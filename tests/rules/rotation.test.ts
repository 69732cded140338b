import { type Advice, type Answer, advise, type BedState, render } from "@pith/rules";
import { describe, expect, test } from "vitest";
import { rested } from "./layoutStates.ts";
import { bed, bedState } from "./waterAndFood.ts";

const HISTORY = rested(2025);
const state = (over: Partial<BedState> = {}): BedState =>
  bedState({ soilTests: [], pepperSeason: 2025, setOutOn: "2025-12-20", history: HISTORY, ...over });
const answer = (over: Partial<BedState> = {}): Answer => {
  const found = advise(JSON.parse(JSON.stringify(state(over)))).find((a) => a.rule.id === "rotation");
  if (!found) throw new Error("no answer");
  return found;
};
const advice = (over: Partial<BedState> = {}): Advice => {
  const a = answer(over);
  if (a.kind !== "advice") throw new Error(`answered ${a.kind}`);
  return a;
};
type Past = NonNullable<BedState["history"]>[number];
const with_ = (...entries: Past[]): Past[] => [
  ...HISTORY.filter((h) => !entries.some((e) => e.season === h.season)),
  ...entries,
];
const fromSeason = (...entries: Past[]) => advice({ history: with_(...entries) }).amounts.fromSeason;

describe("when peppers may come back: last host + rest + 1", () => {
  test.each([
    ["squash in 2023, blight asks for 3 seasons", { season: 2023, crop: "squash" }, 2027],
    ["lima beans in 2022", { season: 2022, crop: "lima-bean" }, 2026],
    [
      "blight found in 2021 in a crop that is no host, 5 seasons",
      { season: 2021, crop: "other", disease: "phytophthora-blight" },
      2027,
    ],
    ["potatoes in 2024: wilt asks for 2, blight for none", { season: 2024, crop: "potato" }, 2027],
    [
      "wilt found with potatoes in 2021: 4 seasons, so 2026",
      { season: 2021, crop: "potato", disease: "verticillium-wilt" },
      2026,
    ],
    [
      "white mold found in lettuce in 2023: 3 seasons",
      { season: 2023, crop: "lettuce", disease: "sclerotinia" },
      2027,
    ],
    ["peas, which carry neither", { season: 2024, crop: "pea" }, 2025],
    ["lettuce without white mold", { season: 2024, crop: "lettuce" }, 2025],
  ] as [string, Past, number][])("%s", (_, past, expected) => {
    expect(fromSeason(past)).toBe(expected);
  });
  test("the office's longest: squash in 2023 waits for 2029", () => {
    const settings = { choices: { "rotation.interval": "longest" } };
    const a = advice({ settings, history: with_({ season: 2023, crop: "squash" }) });
    expect(a.amounts.fromSeason).toBe(2029);
    expect(a.limits.map((l) => l.key)).toContain("rotation.limit.reading-longest");
  });
  test("a host in the spring of the same season is no rest at all; these peppers themselves are no past", () => {
    expect(fromSeason({ season: 2025, crop: "snap-bean" })).toBe(2029);
    expect(advice({ history: [...HISTORY, { season: 2025, crop: "pepper" }] }).decision.code).toBe("clear");
  });
});

test("peppers that stand already too soon: watched, and nothing is at stake that could be undone", () => {
  const a = advice({ setOutOn: "2025-05-20", history: with_({ season: 2024, crop: "tomato" }) });
  expect(a.decision.code).toBe("too-soon-standing");
  expect(a.stakes.harm).toBe(0);
  expect(a.steps.map((s) => s.text.key)).toContain("rotation.step.watch");
});

test("grouping and rotation speak together: a rest of 3 seasons, so one bed in 4", () => {
  const a = advice();
  const step = a.steps.find((s) => s.text.key === "rotation.step.grouping");
  expect(render(step?.text as never, { language: "en", units: "metric" })).toContain(
    "3 seasons they take one bed in 4",
  );
  expect(a.limits.map((l) => l.key)).toContain("rotation.limit.grouping");
});

test("root-knot was found: no rest is claimed for it, and that is said", () => {
  const a = advice({ history: with_({ season: 2022, crop: "lettuce", disease: "root-knot" }) });
  expect(a.limits.map((l) => l.key)).toContain("rotation.limit.without-interval");
});

test.each([
  ["no record", [], 2022],
  ["a record of one season", [{ season: 2024, crop: "small-grain" }], 2022],
] as [string, Past[], number][])("%s: asks for the seasons from 2022 on", (_, history, from) => {
  const a = answer({ history });
  expect(a).toMatchObject({
    kind: "needs-more",
    missing: [{ field: "history", measure: { params: { from: String(from), to: "2024" } } }],
  });
});
test("one host on a short record is enough to say no", () => {
  expect(advice({ history: [{ season: 2024, crop: "tomato" }] }).decision.code).toBe("too-soon");
});
test("containers, and a bed for no peppers: does not apply", () => {
  expect(answer({ bed: bed({ kind: "containers" }) }).kind).toBe("does-not-apply");
  const { pepperSeason: _, setOutOn: __, ...none } = state();
  expect(advise(JSON.parse(JSON.stringify(none))).find((a) => a.rule.id === "rotation")?.kind).toBe(
    "does-not-apply",
  );
});

test("squash in 2021 and nothing written down since: not rested, but unknown, and the gap is asked for", () => {
  const a = answer({ history: [{ season: 2021, crop: "squash" }] });
  expect(a.kind).toBe("needs-more");
  if (a.kind === "needs-more") expect(a.missing.map((m) => m.field)).toEqual(["history"]);
});

test("squash last season and nothing else written down: too soon all the same", () => {
  expect(advice({ history: [{ season: 2024, crop: "squash" }] }).decision.code).toBe("too-soon");
});
