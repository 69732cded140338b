import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type Advice, claims, type PlantingState, render } from "@pith/rules";
import { describe, expect, test } from "vitest";
import { topping } from "../../packages/rules/src/text/en/topping.ts";
import { advised, at, autumn, noted, shifted, sturdy } from "./toppingStates.ts";
import { advice, answer, line, stepKeys } from "./warmthStates.ts";

/** Whether a tip is taken: the reading in force, the season, and the plants. Days are at an even 24 C, in and out. */

const because = (a: Advice) => stepKeys(a).filter((key) => key.startsWith("topping.because."));
const reason = (state: PlantingState) => {
  const a = answer("topping", state);
  return a.kind === "does-not-apply" ? a.reason.key : a.kind;
};
const limits = (a: Advice) => a.limits.map((m) => m.key);

describe("the season", () => {
  test("days at an even 24 C: the tip's loss moves the likely day of colour by the published 15 days, 15 × (24 - 12.78) C d", () => {
    const a = advised({ climatology: autumn(320) });
    const [left, taken] = ["t_ripe", "t_ripe'"].map((s) => Date.parse(String(line(a, s))));
    expect(((taken ?? 0) - (left ?? 0)) / 86_400_000).toBe(15);
    expect(line(a, "Q_d")).toBeCloseTo(15 * (24 - 12.7778), 2);
  });
  test("first frost in late November in all of ten years: always ripe, and half of them may be tried", () => {
    const a = advised({ climatology: autumn(330) });
    expect([line(a, "P"), line(a, "P'"), a.decision.code]).toEqual([1, 1, "half-bed"]);
  });
  test("plants two months later, first frost on 15 August in all years: never ripe, and the tips stay", () => {
    const a = advice("topping", shifted(at({ climatology: autumn(226) }), 60));
    expect([line(a, "P"), line(a, "P'"), a.decision.code]).toEqual([0, 0, "leave"]);
    expect(because(a)).toEqual(["topping.because.no-time"]);
    expect(stepKeys(a)).toContain("topping.step.half-bed");
  });
  test("those, frost in December in seven years of ten, in August in three: 7 / 10 is below 8 / 10, so no; eight is enough", () => {
    const mixed = (early: number) =>
      advice("topping", shifted(at({ climatology: autumn((year) => (year < early ? 226 : 350)) }), 60));
    expect([line(mixed(3), "P'"), mixed(3).decision.code]).toEqual([0.7, "leave"]);
    expect([line(mixed(2), "P'"), mixed(2).decision.code]).toEqual([0.8, "half-bed"]);
  });
  test("seven years say nothing of autumn: no, and which record would change it", () => {
    const a = advised({ climatology: autumn(330, 7) });
    expect([line(a, "P'"), a.decision.code, because(a)[0]]).toEqual([
      null,
      "leave",
      "topping.because.season-unknown",
    ]);
    expect(a.wouldChange.map((m) => m.key)).toContain("topping.change.years");
  });
  test("who picks green needs green fruit before frost, which is three weeks sooner", () => {
    const green = at({ climatology: autumn(330) });
    const state = { ...green, planting: { ...green.planting, pickAt: "green" as const } };
    const a = answer("topping", state) as Advice;
    const days =
      (Date.parse(String(line(advised({}), "t_ripe"))) - Date.parse(String(line(a, "t_ripe")))) / 86_400_000;
    expect(days).toBe(21);
    expect(limits(a)).toContain("topping.limit.green");
  });
});

describe("the window", () => {
  test("seedlings up on 1 April at 24 C: 3 + 6 × 43.6 / 7.2 = 39.3 days to six leaves, the 40th is 10 May; nine on the 58th, 28 May", () => {
    const a = advised({ notes: [noted("emerged", "2026-04-01")], asOf: "2026-05-02T12:00:00Z" });
    expect([line(a, "t_6"), line(a, "t_9")]).toEqual(["2026-05-10", "2026-05-28"]);
    expect([a.window.from, a.window.to]).toEqual(["2026-05-10", "2026-05-27"]);
    expect([a.decision.code, because(a)]).toEqual([
      "wait",
      ["topping.because.unhardened", "topping.because.before"],
    ]);
  });
  test("four weeks before the window nothing is asked yet, and the day is named", () => {
    const a = answer(
      "topping",
      at({ notes: [noted("emerged", "2026-04-01")], asOf: "2026-04-10T12:00:00Z" }),
    );
    expect(a.kind === "does-not-apply" && a.reason).toEqual({
      key: "topping.not.early",
      params: { day: { day: "2026-05-10" }, from: 6 },
    });
  });
  test.each([
    [5, "wait", "topping.because.before"],
    [6, "half-bed", "topping.because.time-enough"],
    [8, "half-bed", "topping.because.time-enough"],
  ])("%i leaves counted today: %s", (leaves, code, why) => {
    const a = advised({ notes: sturdy(leaves) });
    expect([a.decision.code, because(a)[0]]).toEqual([code, why]);
  });
  test("nine counted: past", () => {
    expect(reason(at({ notes: sturdy(9) }))).toBe("topping.not.past");
  });
  test("by the heat seven leaves, and nobody counted: count first", () => {
    const notes = [noted("emerged", "2026-04-01"), noted("hardened", "2026-05-14")];
    const a = advised({ notes, asOf: "2026-05-17T12:00:00Z" });
    expect([a.decision.code, because(a)]).toEqual(["wait", ["topping.because.count"]]);
  });
  test("a count of eight days ago counts no more", () => {
    const old = sturdy(6).map((n) => (n.kind === "true-leaves" ? { ...n, on: "2026-05-07" } : n));
    expect(because(advised({ notes: old }))).toEqual(["topping.because.count"]);
  });
  test("the chart draws the leaves ahead between six and eight, never falling", () => {
    const [chart] = advised({}).charts;
    const likely = chart?.series.find((s) => s.id === "likely")?.points.map(([, y]) => y as number) ?? [];
    expect(likely[0]).toBe(7);
    expect(likely).toEqual([...likely].sort((a, b) => a - b));
    expect(chart?.series.filter((s) => s.style === "limit").map((s) => s.points[0]?.[1])).toEqual([6, 8]);
  });
});

test("the example of the page: half of 96 plants, six pairs of strips of eight", () => {
  const path = join(import.meta.dirname, "../../docs/examples/planting-topping.json");
  const a = advice("topping", JSON.parse(readFileSync(path, "utf8")));
  expect([a.decision.code, a.amounts.plants, line(a, "n")]).toEqual(["half-bed", 48, 7]);
  expect(line(a, "Q_d")).toBeCloseTo(168.3, 1);
  expect(line(a, "t_frost")).toBe("2026-10-28");
  expect(Number(line(a, "P'"))).toBeGreaterThanOrEqual(0.8);
  expect(Number(line(a, "P'"))).toBeLessThan(Number(line(a, "P")));
});

describe("plants that are left alone", () => {
  const more = (...notes: PlantingState["notes"]) => advised({ notes: [...sturdy(7), ...notes] });

  test("a note of disease, or mottle seen weeks ago: no, and nothing is offered", () => {
    const noteOf = more(noted("disease-signs", "2026-05-14"));
    const mottled = advised({ signs: [{ on: "2026-04-20", sign: "leaves-mottled" }] });
    for (const a of [noteOf, mottled]) {
      expect([a.decision.code, stepKeys(a)]).toEqual(["leave", ["topping.because.sick"]]);
    }
  });
  test("stunted, a dead growing point, no new leaf: wait until they grow", () => {
    const stunted = advised({ signs: [{ on: "2026-05-12", sign: "plants-stunted" }] });
    for (const a of [
      stunted,
      more(noted("growing-point-dead", "2026-05-13")),
      more(noted("no-new-leaf", "2026-05-13")),
    ]) {
      expect([a.decision.code, because(a)]).toEqual(["wait", ["topping.because.checked"]]);
    }
  });
  test("indoors, a thermometer at 11 C on three days counts (two are allowed), and frost by itself", () => {
    const read = (temperatureC: number, ...days: number[]) =>
      advised({ plantTemperatures: days.map((d) => ({ at: `2026-05-${d}T08:00:00Z`, temperatureC })) });
    expect(because(read(11, 12, 13, 14))).toEqual(["topping.because.checked"]);
    expect(because(read(11, 13, 14))).toEqual(["topping.because.time-enough"]);
    expect(because(read(-0.5, 14))).toEqual(["topping.because.checked"]);
  });
  test("out for six days after frost at the plants: checked, whoever noted nothing", () => {
    const weather = [10, 11, 12, 13, 14].map((d) => ({
      date: `2026-05-${d}`,
      tMinC: d === 12 ? -1 : 14,
      tMaxC: 26,
    }));
    const a = advised({ weather, planting: { ...at().planting, setOutOn: "2026-05-09" } });
    expect(because(a)).toEqual(["topping.because.checked"]);
  });
  test("nobody noted them as hardened: wait; fourteen days in the open bed harden by themselves", () => {
    const soft = sturdy(7).filter((n) => n.kind !== "hardened");
    expect(because(advised({ notes: soft }))).toEqual(["topping.because.unhardened"]);
    const out = (setOutOn: string) => advised({ notes: soft, planting: { ...at().planting, setOutOn } });
    expect(because(out("2026-05-02"))).toEqual(["topping.because.unhardened"]);
    expect(because(out("2026-05-01"))).toEqual(["topping.because.time-enough"]);
  });
  test("rain today on a bed in the open: a dry day first; under a tunnel, or still indoors, no rain reaches them", () => {
    const weather = [{ date: "2026-05-15", rainMm: 4 }];
    const out = { ...at().planting, setOutOn: "2026-05-01" };
    expect(because(advised({ weather, planting: out }))).toEqual(["topping.because.wet"]);
    expect(because(advised({ weather }))).toEqual(["topping.because.time-enough"]);
    const bed = { ...at().bed, covers: [{ cover: "high-tunnel" as const, from: "2026-04-01" }] };
    expect(because(advised({ weather, planting: out, bed }))).toEqual(["topping.because.time-enough"]);
  });
  test("tip taken, buds, flowers, kept over winter, ended, not sown: the question does not arise", () => {
    const note = (kind: Parameters<typeof noted>[0]) =>
      reason(at({ notes: [...sturdy(7), noted(kind, "2026-05-14")] }));
    expect(note("tip-taken")).toBe("topping.not.taken");
    expect([note("buds-visible"), note("first-flower"), note("fruit-set")]).toEqual(
      Array(3).fill("topping.not.buds"),
    );
    const changed = (change: Partial<PlantingState["planting"]>) =>
      reason(at({ planting: { ...at().planting, ...change } }));
    expect(changed({ overwintered: true })).toBe("topping.not.overwintered");
    expect(changed({ endedOn: "2026-05-10" })).toBe("topping.not.ended");
    expect(changed({ sownOn: "2026-06-01", plannedSetOutOn: "2026-08-01" })).toBe("topping.not.unsown");
  });
  test("no day on which they showed, from a medium at 10 C: their leaves cannot be forecast", () => {
    const notes = sturdy(7).filter((n) => n.kind !== "emerged");
    const state = at({ notes, planting: { ...at().planting, propagation: { mediumC: 10 } } });
    expect(reason(state)).toBe("topping.not.no-start");
  });
  test("Fahrenheit that claims Celsius is refused by its field", () => {
    const weather = Array.from({ length: 6 }, (_, i) => ({
      date: `2026-05-0${i + 1}`,
      tMinC: 40,
      tMaxC: 58,
    }));
    const a = answer("topping", at({ weather }));
    expect(a.kind === "refused" && a.problems[0]?.field).toBe("weather.0.tMaxC");
  });
});

describe("the reading in force", () => {
  const chosen = (option: string, change: Partial<PlantingState> = {}) =>
    advised({ settings: { choices: { "topping.default": option } }, ...change });

  test("by default the careful one, and it is said", () => {
    const a = advised({});
    expect([line(a, "reading"), limits(a)[0], a.grade]).toEqual([
      "no-unless-time",
      "topping.limit.default-no-unless-time",
      "weak",
    ]);
  });
  test("practice: in the ground all of them, whatever autumn holds, graded as practice", () => {
    const a = chosen("practice", { climatology: autumn(200) });
    expect([a.decision.code, a.amounts.plants, a.grade, limits(a)[0]]).toEqual([
      "take",
      100,
      "practice",
      "topping.limit.office-practice",
    ]);
  });
  test("published: all of them where there is time, none where there is not", () => {
    const a = chosen("published");
    expect([a.decision.code, a.amounts.plants, a.grade]).toEqual(["take", 100, "weak"]);
    expect(chosen("published", { climatology: autumn(200) }).decision.code).toBe("leave");
  });
  test("in containers no reading takes a tip", () => {
    const bed = { ...at().bed, kind: "containers" as const, containers: { count: 100, volumeL: 12 } };
    for (const option of ["no-unless-time", "practice", "published"]) {
      const a = chosen(option, { bed });
      expect([a.decision.code, because(a)]).toEqual(["leave", ["topping.because.containers"]]);
    }
  });
  test("an option that does not exist counts as not chosen", () => {
    expect(limits(chosen("always"))[0]).toBe("topping.limit.default-no-unless-time");
  });
});

describe("both readings, and how to try", () => {
  test("practice and every trial stand in one table, and the missing trial is said (SN-1133)", () => {
    const [readings, season] = advised({}).table ?? [];
    expect(readings?.rows).toHaveLength(9);
    const english = (cell: unknown) => render(cell as never, { language: "en", units: "metric" });
    expect(readings?.rows.map((row) => english(row[0])).at(-1)).toBe("No study found");
    expect(english(readings?.rows.at(-1)?.[1])).toContain(
      "No field trial of topping was found for short seasons",
    );
    expect(english(readings?.rows.at(-1)?.[2])).toBe("Looked for, and none found.");
    expect(english(readings?.rows[0]?.[4])).toBe("Not stated.");
    expect(english(readings?.rows[1]?.[4])).toContain("+118.65 %");
    expect(season?.rows.map((row) => english(row[0]))).toEqual(["left on", "taken"]);
    expect(season?.rows.map((row) => row[4])).toEqual([100, 100]);
  });
  test("SN-1132: 1.7756 × 1.2757 = 2.265 is not the printed +118.65 %, so no product and no yield is promised", () => {
    expect(1.7756 * 1.2757).toBeCloseTo(2.265, 3);
    const texts = [
      ...Object.values(topping),
      ...[...claims.values()].flatMap((c) => [c.finding, c.effect ?? "", c.limits]),
    ];
    expect(texts.filter((t) => /126\.5|2\.265/.test(t))).toEqual([]);
    expect(claims.get("topping.chitwan")?.limits).toContain("none is promised");
    expect(topping["topping.step.expect"]).toContain("No yield is promised");
  });
  test("100 plants: 6 pairs of strips of 8, 48 each way; the tips of 48 are taken", () => {
    const a = advised({});
    const half = a.steps.find((s) => s.text.key === "topping.step.half-bed")?.text.params;
    expect(half).toMatchObject({ pairs: 6, plantsPerStrip: 8, plantsEachWay: 48 });
    expect(a.amounts.plants).toBe(48);
  });
  test("20 plants: every other one, 10 each way, and that so few show little; one plant: none", () => {
    const few = advised({ planting: { ...at().planting, plants: 20 } });
    expect([few.amounts.plants, stepKeys(few).includes("topping.step.every-other")]).toEqual([10, true]);
    expect(because(advised({ planting: { ...at().planting, plants: 1 } }))).toEqual([
      "topping.because.one-plant",
    ]);
  });
  test("hands and blades go with every answer, and what is taken is noted so that it is taken once", () => {
    const a = advised({});
    expect(a.cautions.map((c) => [c.id, c.version])).toEqual([
      ["clean-cut", 1],
      ["local-rules-first", 1],
    ]);
    expect(stepKeys(a)).toEqual(expect.arrayContaining(["topping.step.clean", "topping.step.note"]));
    expect(a.stakes).toMatchObject({ harm: 0.02 });
  });
  test("every text can be said in metric and US units", () => {
    for (const units of ["metric", "us"] as const) {
      for (const { text } of advised({}).steps)
        expect(render(text, { language: "en", units })).not.toMatch(/NaN|undefined/);
    }
  });
});
