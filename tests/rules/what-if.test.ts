import { readFileSync } from "node:fs";
import {
  type Answer,
  answerOf,
  LANGUAGES,
  type Message,
  type PlantingState,
  parseAtTheDoor,
  render,
  rules,
  StateSchema,
  type ValveState,
} from "@pith/rules";
import { COVER_STEPS, type Subjects, TOPPED_STEPS, type WhatIf, whatIfOf } from "@pith/rules/what-if";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const example = (name: string) =>
  parseAtTheDoor(
    StateSchema,
    JSON.parse(readFileSync(new URL(`../../docs/examples/${name}.json`, import.meta.url), "utf8")),
  );
const planting = (name: string) => example(name) as PlantingState;
const valve = (name: string) => example(name) as ValveState;
const topping = (): Subjects => ({ planting: planting("planting-topping"), valve: null });
const ash = (): Subjects => ({ planting: planting("planting-wood-ash"), valve: valve("valve-hotter") });

const of = (subjects: Subjects, whatIf: WhatIf, ruleId: string) => {
  const found = whatIfOf(subjects)
    .explore(whatIf)
    .find((e) => e.rule.id === ruleId);
  if (!found) throw new Error(`no ${ruleId}`);
  return found;
};
const ruleOf = (id: string) => {
  const rule = rules.find((one) => one.id === id);
  if (!rule) throw new Error(`no ${id}`);
  return rule;
};
const keys = (messages: Message[]) => messages.map((m) => m.key);
const lineOf = (working: { symbol: string; value: unknown }[], symbol: string) =>
  working.find((line) => line.symbol === symbol)?.value;
const paramOf = (messages: Message[], key: string, param: string) =>
  (messages.find((m) => m.key === key)?.params[param] as { value: number } | undefined)?.value;
const codeOf = (answer: Answer | null) => (answer?.kind === "advice" ? answer.decision.code : answer?.kind);

describe("a planting to try things on", () => {
  test.each([topping, ash])("answers as the rules do where nothing is tried (%s)", (subjects) => {
    const given = subjects();
    for (const e of whatIfOf(given).explore({})) {
      const state = ruleOf(e.rule.id).subject === "valve" ? given.valve : given.planting;
      expect(e.tried).toEqual(state && answerOf(ruleOf(e.rule.id), state));
      expect(e.tried).toEqual(e.asIs);
      expect(e.changed).toBe(false);
    }
  });

  test("a day and a cover are put where set-out reads them: as its own answer on such a planting", () => {
    const { planting: state } = topping();
    const then: PlantingState = {
      ...state,
      planting: { ...state.planting, plannedSetOutOn: "2026-05-30" },
      bed: {
        ...state.bed,
        covers: [
          { cover: "fleece", from: "2026-05-30" },
          { cover: "low-tunnel", from: "2026-05-30" },
        ],
      },
    };
    const tried = of(topping(), { setOutOn: "2026-05-30", cover: "fleece-and-low-tunnel" }, "set-out");
    expect(tried.tried).toEqual(answerOf(ruleOf("set-out"), then));
    // Penn State: a row cover with plastic over it, at least 9 F, is 5 C.
    expect(lineOf(tried.working, "dT cover")).toBe(5);
  });

  test("a heavier cover never makes the chance of cold larger", () => {
    const chances = COVER_STEPS.map((cover) =>
      paramOf(of(topping(), { cover }, "set-out").said, "what-if.set-out.chance", "beyond"),
    );
    expect(chances.every((c) => typeof c === "number")).toBe(true);
    expect(chances).toEqual([...(chances as number[])].sort((a, b) => b - a));
  });

  test("what was put up before and is tried away ends the day before the planned one", () => {
    const { planting: state } = topping();
    const covered: PlantingState = {
      ...state,
      bed: { ...state.bed, covers: [{ cover: "low-tunnel", from: "2026-05-01" }] },
    };
    const desk = whatIfOf({ planting: covered, valve: null });
    expect(desk.starting.cover.value).toBe("low-tunnel");
    const bare = desk.explore({ cover: "none" }).find((e) => e.rule.id === "set-out");
    expect(lineOf(bare?.working ?? [], "cover")).toBe("none");
  });
});

describe("how much stem is buried", () => {
  test.each([
    [0, "as-ruled"],
    [4, "deeper"],
    [5, "deeper"],
    [6, "too-deep"],
  ])("%s cm on a plant that nobody noted as leggy: %s", (buriedStemCm, code) => {
    const { said } = of(topping(), { buriedStemCm }, "setting-depth");
    expect(keys(said)).toEqual([`what-if.depth.${code}`, "setting-depth.because.not-leggy"]);
  });

  test("leggy, green, warm and the trials followed: 5 cm is the rule's own, less harms nothing", () => {
    const { planting: state } = topping();
    const on = state.asOf.slice(0, 10);
    const leggy: PlantingState = {
      ...state,
      settings: { ...state.settings, choices: { "setting-depth.leggy": "trials" } },
      notes: [
        { on, kind: "leggy" },
        { on, kind: "stem-green" },
        { on, kind: "soil-temperature-10cm-c", value: 20 },
      ],
    };
    const desk = whatIfOf({ planting: leggy, valve: null });
    expect(desk.starting.buriedStemCm.value).toBe(5);
    const codes = [2, 5, 6].map((buriedStemCm) => {
      const [first] = desk.explore({ buriedStemCm }).find((e) => e.rule.id === "setting-depth")?.said ?? [];
      return first?.key;
    });
    expect(codes).toEqual(["what-if.depth.less", "what-if.depth.as-ruled", "what-if.depth.too-deep"]);
  });
});

describe("tips", () => {
  test("each way says its own first fruit and chance, half of the plants says both", () => {
    const said = TOPPED_STEPS.map((topped) => keys(of(topping(), { topped }, "topping").said).join(" "));
    expect(said[0]).toMatch(/-left.*chance-left$/);
    expect(said[2]).toMatch(/-taken.*chance-taken$/);
    expect(said[1]).toBe(`${said[0]} ${said[2]}`);
  });
});

describe("potash and ash on 54 m2 of cropped land, 27 m2 of bed", () => {
  test("200 kg/ha of potash are 200 x 54 / 10,000 / 0.50 = 2.16 kg of potassium sulfate", () => {
    const { said, working } = of(ash(), { k2oKgPerHa: 200 }, "feeding");
    expect(lineOf(working, "m")).toBeCloseTo(2.16, 9);
    expect(keys(said)).toContain("what-if.potash.as-usual");
  });

  test("their salt on a third of the land, index 42.6 (Mortvedt): 400 x 0.426 x 3 = 511.2 kg/ha", () => {
    expect(lineOf(of(ash(), { k2oKgPerHa: 200 }, "feeding").working, "salt")).toBeCloseTo(511.2, 6);
  });

  test("what is given is need less what is left, and above need it is too much", () => {
    const left = (k2oKgPerHa: number) => of(ash(), { k2oKgPerHa }, "feeding").said;
    const need = paramOf(left(100), "what-if.potash.left", "need") ?? 0;
    expect(paramOf(left(100), "what-if.potash.left", "left")).toBeCloseTo(need - 100, 9);
    expect(paramOf(left(200), "what-if.potash.over", "over")).toBeCloseTo(200 - need, 9);
    // Midwest guide: 300 lb/A, 336 kg/ha.
    expect(keys(left(350))[0]).toBe("what-if.potash.above-most");
  });

  test("100 g/m2 of ash: 2.7 kg; 3 to 8 % potash, 15 to 40 kg/ha; 20 to 66.7 % lime, 200 to 667 kg/ha", () => {
    const { said, working } = of(ash(), { ashGPerM2: 100 }, "wood-ash");
    expect(lineOf(working, "m")).toBeCloseTo(2.7, 9);
    expect(paramOf(said, "what-if.ash.brings", "k2oLow")).toBeCloseTo(15, 9);
    expect(paramOf(said, "what-if.ash.brings", "k2oHigh")).toBeCloseTo(40, 9);
    expect(paramOf(said, "what-if.ash.brings", "limeLow")).toBeCloseTo(200, 9);
    expect(paramOf(said, "what-if.ash.brings", "limeHigh")).toBeCloseTo(2000 / 3, 9);
  });

  test("the strictest cap, 10 lb on 1000 sq ft, is 10 x 0.45359 / 92.903 x 27 = 1.318 kg here", () => {
    const over = of(ash(), { ashGPerM2: 100 }, "wood-ash").said;
    const within = of(ash(), { ashGPerM2: 40 }, "wood-ash").said;
    expect(paramOf(over, "what-if.ash.over-cap", "most")).toBeCloseTo((10 * 0.45359237 * 27) / 92.90304, 6);
    expect(keys(within)).toContain("what-if.ash.within-cap");
  });

  test("ash comes with its cautions whatever the rule decides", () => {
    const ids = of(ash(), { ashGPerM2: 300 }, "wood-ash").cautions.map((c) => c.id);
    expect(ids).toEqual(expect.arrayContaining(["ash-caustic", "ash-embers", "ash-not-with-ammonium"]));
  });
});

describe("water withheld", () => {
  test("the loss is Ky 1.1 (FAO-33) times the share of the season's water use times what is withheld", () => {
    for (const withheldPct of [4, 16, 30]) {
      const { said, working } = of(ash(), { withheldPct }, "hotter");
      const share = lineOf(working, "s") as number;
      expect(paramOf(said, "what-if.water.loss", "loss")).toBeCloseTo(1.1 * share * withheldPct, 9);
    }
  });

  test("beyond the bound the rule refuses, and what it would do to the plants is said all the same", () => {
    const beyond = of(ash(), { withheldPct: 40 }, "hotter");
    expect(codeOf(beyond.tried)).toBe("refused");
    expect(keys(beyond.said)).toContain("what-if.water.loss");
  });

  test("more withheld dries deeper and costs more, and never reaches what there is", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 49 }), (pct) => {
        const [less, more] = [pct, pct + 1].map((p) => of(ash(), { withheldPct: p }, "hotter").working);
        const at = (working: typeof less, symbol: string) => lineOf(working ?? [], symbol) as number;
        expect(at(more, "D")).toBeGreaterThan(at(less, "D"));
        expect(at(more, "D")).toBeLessThan(at(more, "TAW"));
        expect(at(more, "loss")).toBeGreaterThan(at(less, "loss"));
      }),
      { numRuns: 15 },
    );
  });
});

test("every saying says itself in each language, and twice gives the same bytes", () => {
  const choices: WhatIf = {
    setOutOn: "2026-06-10",
    cover: "fleece",
    withheldPct: 10,
    k2oKgPerHa: 60,
    ashGPerM2: 120,
    buriedStemCm: 3,
    topped: "half",
  };
  for (const subjects of [topping, ash]) {
    const [once, twice] = [whatIfOf(subjects()).explore(choices), whatIfOf(subjects()).explore(choices)];
    expect(JSON.stringify(once)).toBe(JSON.stringify(twice));
    for (const language of LANGUAGES)
      for (const { said, charts } of once)
        for (const message of [...said, ...charts.map((c) => c.title)])
          expect(render(message, { language, units: "us" })).not.toMatch(/[{}]|undefined|NaN/);
  }
});

describe("advice of a choice", () => {
  const ruleAnswer = (subjects: Subjects, choices: WhatIf): Answer => {
    const { asOf, settings } = subjects.planting;
    const state = { kind: "what-if" as const, version: 1 as const, asOf, settings, ...subjects, choices };
    return answerOf(ruleOf("what-if"), state);
  };
  /** Nothing is known by which any of the rules could answer. */
  const bare = (): Subjects => {
    const { climatology: _, forecast: __, ...state } = planting("planting-topping");
    return { planting: { ...state, soilTests: [], notes: [], weather: [] }, valve: null };
  };

  test.each([
    [{ topped: "all" as const }, "clean-cut"],
    [{ cover: "fleece" as const }, "cover-overheats"],
    [{ k2oKgPerHa: 60 }, "fertiliser-handling"],
    [{ ashGPerM2: 40 }, "ash-caustic"],
  ])("%o keeps its caution where its rule knows too little to answer", (choices, caution) => {
    for (const given of [bare(), topping(), ash()]) {
      const answer = ruleAnswer(given, choices);
      if (answer.kind !== "advice") continue;
      expect(answer.cautions.map((c) => c.id)).toContain(caution);
    }
    const ofBare = whatIfOf(bare())
      .explore(choices)
      .flatMap((e) => e.cautions.map((c) => c.id));
    expect(ofBare).toContain(caution);
  });

  test("a day that has gone by is no advice any more", () => {
    const past = ruleAnswer(topping(), { setOutOn: "2026-05-01" });
    expect(past).toMatchObject({ kind: "does-not-apply", reason: { key: "what-if.not.past" } });
  });
});
