import { readFileSync } from "node:fs";
import {
  type BedState,
  type PlantingState,
  parseAtTheDoor,
  render,
  type State,
  StateSchema,
  sources,
  type ValveState,
  type WorthMeasuring,
  worthMeasuring,
} from "@pith/rules";
import { describe, expect, test, vi } from "vitest";
import { feedingInputs } from "../../packages/rules/src/missing/inputs/feeding.ts";
import { irrigateInputs } from "../../packages/rules/src/missing/inputs/irrigate.ts";
import { limeInputs } from "../../packages/rules/src/missing/inputs/lime.ts";
import { setOutInputs } from "../../packages/rules/src/missing/inputs/setOut.ts";
import { stageInputs } from "../../packages/rules/src/missing/inputs/stage.ts";
import { valueAt } from "../../packages/rules/src/missing/spread.ts";
import type { UncertainInput } from "../../packages/rules/src/missing/types.ts";

/** What is worth measuring for each rule: against sums by hand, and what must hold whatever the state. */

const example = <S extends State>(name: string): S =>
  parseAtTheDoor(
    StateSchema,
    JSON.parse(readFileSync(new URL(`../../docs/examples/${name}.json`, import.meta.url), "utf8")),
  ) as S;
const bed = () => example<BedState>("bed-acid-soil");
const valve = () => example<ValveState>("valve-sensor-and-rain");
const fed = () => example<PlantingState>("planting-feeding");
const waiting = () => example<PlantingState>("planting-topping");

const of = (worth: WorthMeasuring[], rule: string) => worth.find((w) => w.rule.id === rule);
const candidate = (worth: WorthMeasuring[], rule: string, input: string) =>
  of(worth, rule)?.candidates.find((c) => c.input === input);

/** The machine is shared: nothing here is about time. */
vi.setConfig({ testTimeout: 120_000 });

describe("lime", () => {
  /**
   * The bed's buffer pH is 6.1 by Mehlich, so lime goes as (6.6 - 6.1 ± 0.1) x depth ± 25 %: relative variances
   * (0.1 / 0.5)² = 0.04 and 0.5² / 12 = 0.0208, their product 0.0008; in all 0.0617 (pH itself moves it by 1 %).
   */
  test("buffer pH carries 0.04 / 0.0617 = 0.65 of the variance and the depth 0.0208 / 0.0617 = 0.34", () => {
    const worth = worthMeasuring(bed(), { draws: 256 });
    expect(
      of(worth, "lime")
        ?.candidates.map((c) => c.input)
        .slice(0, 2),
    ).toEqual(["buffer-ph", "worked-depth"]);
    const share = (input: string) => candidate(worth, "lime", input)?.varianceShare.lime ?? 0;
    expect(Math.abs(share("buffer-ph") - 0.65)).toBeLessThan(0.1);
    expect(Math.abs(share("worked-depth") - 0.34)).toBeLessThan(0.1);
  });
  test("a buffer that was never measured settles it, and its laboratory is named", () => {
    const state = bed();
    const soilTests = state.soilTests.map(({ bufferPh: _, ...t }) => t);
    const [worth] = worthMeasuring({ ...state, soilTests });
    expect(worth?.candidates[0]).toMatchObject({ settles: true, cost: "laboratory", narrows: 1 });
    expect(worth?.decision).toBeNull();
  });
  test("where no lime question arises nothing is worth measuring", () => {
    expect(worthMeasuring(example<BedState>("bed-mehlich-3"))).toEqual([]);
  });
});

describe("set-out", () => {
  test("without paired nights a thermometer at the plants is worth most; with 2000 of them it is worth less", () => {
    const worth = worthMeasuring(waiting(), { draws: 12 });
    expect(of(worth, "set-out")?.candidates[0]).toMatchObject({ input: "paired-nights", cost: "cheap" });
    const state = waiting();
    const site = { ...state.site, stationOffset: { minC: 0, sdC: 1, nights: 2000 } };
    const known = candidate(
      worthMeasuring({ ...state, site }, { draws: 12 }),
      "set-out",
      "more-paired-nights",
    );
    expect(known?.narrows ?? 0).toBeLessThan(candidate(worth, "set-out", "paired-nights")?.narrows ?? 0);
  });
  test("a soil that was measured this morning is no candidate", () => {
    const state = waiting();
    const on = state.asOf.slice(0, 10);
    const ids = (s: PlantingState) => setOutInputs(s).map((i) => i.id);
    expect(ids(state)).toContain("soil-temperature");
    const notes = [...state.notes, { on, kind: "soil-temperature-10cm-c" as const, value: 15 }];
    expect(ids({ ...state, notes })).not.toContain("soil-temperature");
  });
});

describe("irrigate", () => {
  test("a soil whose field capacity was measured, and roots somebody dug for, are no candidates", () => {
    const state = valve();
    const ids = (s: ValveState) => irrigateInputs(s).map((i) => i.id);
    expect(ids(state)).toEqual(expect.arrayContaining(["soil-water", "root-depth"]));
    const zones = state.zones.map((z) => ({
      ...z,
      rootDepthM: 0.3,
      bed: { ...z.bed, soil: { ...z.bed.soil, fieldCapacity: 0.3, wiltingPoint: 0.15 } },
    }));
    expect(ids({ ...state, zones }).filter((id) => id === "soil-water" || id === "root-depth")).toEqual([]);
  });
  test("a soil nobody named settles it", () => {
    const [worth] = worthMeasuring(example<ValveState>("valve-soil-unknown"));
    expect(worth?.candidates[0]).toMatchObject({ settles: true, input: "zones.0.bed.soil.texture" });
  });
});

describe("feeding", () => {
  const worth = worthMeasuring(fed(), { draws: 32 });
  test("potash hangs on the potassium of the soil alone, nitrogen on what the soil gives: by the rule's own sums", () => {
    expect(candidate(worth, "feeding", "potassium-again")?.varianceShare).toEqual({
      "season-n": 0,
      "season-k2o": 1,
    });
    expect(candidate(worth, "feeding", "soil-nitrogen")?.varianceShare["season-n"]).toBeGreaterThan(0.7);
  });
});

describe("whatever the state", () => {
  const states: [string, PlantingState | ValveState | BedState][] = [
    ["bed", bed()],
    ["valve", valve()],
    ["fed planting", fed()],
    ["planting that waits", waiting()],
  ];
  const reader = { language: "en", units: "metric" } as const;

  test.each(states)("%s: the same seed gives the same bytes, and they survive the wire", (_, state) => {
    const once = worthMeasuring(state, { draws: 8, seed: 5 });
    expect(JSON.stringify(worthMeasuring(state, { draws: 8, seed: 5 }))).toBe(JSON.stringify(once));
    expect(JSON.parse(JSON.stringify(once))).toEqual(once);
  });

  test.each(states)("%s: best first, shares between 0 and 1, every word and source known", (_, state) => {
    for (const { candidates, amounts } of worthMeasuring(state, { draws: 8 })) {
      const narrows = candidates.map((c) => c.narrows);
      expect(narrows).toEqual(narrows.toSorted((a, b) => b - a));
      for (const c of candidates) {
        for (const share of [...Object.values(c.varianceShare), c.narrows, c.decisionChanges]) {
          expect(share).toBeGreaterThanOrEqual(0);
          expect(share).toBeLessThanOrEqual(1);
        }
        for (const m of [c.measure, c.how, c.text, ...(c.assumed ? [c.assumed.text] : [])]) {
          expect(render(m, reader)).not.toBe("");
        }
        if (c.assumed) expect(sources.has(c.assumed.spread.source.key)).toBe(true);
      }
      for (const a of amounts) {
        expect(render(a.name, reader)).not.toBe("");
        if (a.low !== null && a.high !== null) expect(a.low <= a.high).toBe(true);
      }
    }
  });

  test.each([
    ["bed", () => drawn(bed(), limeInputs(bed(), "dolomitic-lime"))],
    ["valve", () => drawn(valve(), irrigateInputs(valve()))],
    ["set-out", () => drawn(waiting(), setOutInputs(waiting()))],
    ["feeding", () => drawn(fed(), feedingInputs(fed()))],
    ["stage", () => drawn(waiting(), stageInputs(waiting()))],
  ])("%s: a state with the most extreme draws would still pass the door", (_, of) => {
    const problems = of().flatMap(({ id, state }) => {
      const parsed = StateSchema.safeParse(state);
      return parsed.success ? [] : [[id, parsed.error.issues[0]]];
    });
    expect(problems).toEqual([]);
  });
});

const drawn = <S>(state: S, inputs: UncertainInput<S>[]) =>
  inputs.flatMap((input) =>
    [1e-4, 0.5, 1 - 1e-4].map((p) => ({ id: input.id, state: input.apply(state, valueAt(input.spread, p)) })),
  );
