import { checkPlan, costOfMove, moveBlock, randomPlan } from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { at, block, plan, planBed, randomState, rested } from "./layoutStates.ts";

const kinds = (state: Parameters<typeof checkPlan>[0]) => checkPlan(state).hard.map((b) => b.kind);
const cost = (state: Parameters<typeof checkPlan>[0], kind: string) =>
  checkPlan(state).soft.find((c) => c.kind === kind)?.amount;
const east = (id: string, eastM: number, over = {}) =>
  planBed(id, { place: { eastM, northM: 0, bearingDeg: 0 }, ...over });

describe("hard rules", () => {
  test("20 plants in 2 rows at 0.4 m take 4 m: at 6 m of a 10 m bed they fit, at 6.1 m they do not", () => {
    const b = block("a");
    expect(kinds(plan([planBed("b")], [{ ...b, at: at("b", 1, 6) }]))).toEqual([]);
    expect(kinds(plan([planBed("b")], [{ ...b, at: at("b", 1, 6.1) }]))).toEqual(["length"]);
  });
  test("2 rows from row 2 of a bed of 2 reach row 3", () => {
    expect(kinds(plan([planBed("b")], [block("a", { at: at("b", 2) })]))).toEqual(["rows"]);
  });
  test("no bed, and a bed that is not of the plan", () => {
    expect(kinds(plan([planBed("b")], [block("a"), block("c", { at: at("elsewhere") })]))).toEqual([
      "unplaced",
      "unknown-bed",
    ]);
  });
  test("overlap needs rows and length both", () => {
    const one = (id: string, row: number, fromM: number) =>
      block(id, { rows: 1, plants: 10, at: at("b", row, fromM) });
    const bed = [planBed("b")];
    expect(kinds(plan(bed, [one("a", 1, 0), one("c", 1, 3.9)]))).toEqual(["overlap"]);
    expect(kinds(plan(bed, [one("a", 1, 0), one("c", 1, 4)]))).toEqual([]);
    expect(kinds(plan(bed, [one("a", 1, 0), one("c", 2, 2)]))).toEqual([]);
  });
  test("full and deficit on one valve clash across beds; without a valve each bed is for itself", () => {
    const blocks = [block("a", { at: at("b1") }), block("c", { water: "deficit", at: at("b2") })];
    const beds = (valveId?: string) => [
      east("b1", 0, valveId ? { valveId } : {}),
      east("b2", 2, valveId ? { valveId } : {}),
    ];
    expect(kinds(plan(beds("v"), blocks))).toEqual(["water"]);
    expect(kinds(plan(beds(), blocks))).toEqual([]);
    expect(
      kinds(
        plan(
          beds(),
          blocks.map((b, i) => ({ ...b, at: at("b1", 1, 5 * i) })),
        ),
      ),
    ).toEqual(["water"]);
  });
});

describe("isolation where seed is kept (150 ft = 45.72 m sweet, 600 ft = 182.88 m hot; McCormack, SN-1105)", () => {
  // Beds 1 m wide whose first corners lie eastM apart: eastM - 1 between their edges.
  const two = (eastM: number, other = {}) =>
    plan(
      [east("b1", 0), east("b2", eastM)],
      [block("a", { saveSeed: true, at: at("b1") }), block("c", { ...other, at: at("b2") })],
    );
  test("two sweet ones: 45.7 m is too near, 45.8 m is enough", () => {
    expect(kinds(two(46.7))).toEqual(["isolation"]);
    expect(kinds(two(46.8))).toEqual([]);
  });
  test("a hot one: 182.8 m is too near, 182.9 m is enough", () => {
    expect(kinds(two(183.8, { marketType: "cayenne-type" }))).toEqual(["isolation"]);
    expect(kinds(two(183.9, { pungent: true }))).toEqual([]);
  });
  test("another species, the same variety, or no seed kept: no distance is asked", () => {
    expect(kinds(two(2, { species: "chinense" }))).toEqual([]);
    expect(kinds(two(2, { variety: "variety-a" }))).toEqual([]);
    expect(kinds(two(2))).toEqual(["isolation"]);
  });
  test("a bed without a place: neither kept nor broken, and said", () => {
    const state = two(2);
    const unplaced = { ...state, beds: state.beds.map(({ place: _, ...b }) => b) };
    expect(kinds(unplaced)).toEqual([]);
    expect(checkPlan(unplaced).unknown).toContainEqual({
      kind: "distance",
      blockIds: ["a", "c"],
      bedIds: ["b1", "b2"],
    });
  });
});

describe("rotation", () => {
  const stoodIn = (
    crop: "snap-bean" | "pepper" | "potato" | "small-grain",
    season: number,
    settings = {},
  ) => {
    const history = rested().map((h) => (h.season === season ? { ...h, crop } : h));
    return kinds(plan([planBed("b", { history })], [block("a", { at: at("b") })], { settings }));
  };
  test("snap beans carry Phytophthora capsici: 3 seasons between, so 2022 is enough for 2026 and 2023 is not", () => {
    expect(stoodIn("snap-bean", 2023)).toEqual(["rotation"]);
    expect(stoodIn("snap-bean", 2022)).toEqual([]);
  });
  test("an office that chose the longest waits 5 seasons", () => {
    const longest = { choices: { "rotation.interval": "longest" } };
    expect(stoodIn("snap-bean", 2021, longest)).toEqual(["rotation"]);
    expect(stoodIn("snap-bean", 2020, longest)).toEqual([]);
  });
  test("no record: not broken, and said", () => {
    const state = plan([planBed("b", { history: [] })], [block("a", { at: at("b") })]);
    expect(checkPlan(state)).toMatchObject({ hard: [], unknown: [{ kind: "history", bedIds: ["b"] }] });
  });
});

describe("costs", () => {
  test("one variety at both ends of a bed stands twice; end to end once", () => {
    const twin = (fromM: number) => [
      block("a", { variety: "v", at: at("b") }),
      block("c", { variety: "v", at: at("b", 1, fromM) }),
    ];
    expect(cost(plan([planBed("b")], twin(4)), "clump")).toBe(0);
    expect(cost(plan([planBed("b")], twin(6)), "clump")).toBe(1);
  });
  test("walk: three of one week at 0, 4 and 8 m along: (4 + 8 + 4) / 2 = 8 m", () => {
    const along = (id: string, fromM: number) => block(id, { plants: 10, at: at("b", 1, fromM) });
    const state = plan([planBed("b")], [along("a", 0), along("c", 4), along("d", 8)]);
    expect(cost(state, "walk")).toBeCloseTo(8, 9);
  });
  test("a sweet and a hot one 1.9 m apart mix, 2 m apart do not", () => {
    const apart = (fromM: number) =>
      plan(
        [planBed("b")],
        [block("a", { at: at("b") }), block("c", { marketType: "thai-type", at: at("b", 1, fromM) })],
      );
    expect(cost(apart(5.9), "mixing")).toBe(1);
    expect(cost(apart(6), "mixing")).toBe(0);
  });
  test("20 plants in a bed that trees shade from the south, north of the equator; half from the west; none from the north", () => {
    const shaded = (shadedFrom: "south" | "west" | "north", latitudeDeg = 46) =>
      cost(
        plan([planBed("b", { shadedFrom })], [block("a", { at: at("b") })], { latitudeDeg }),
        "outside-shade",
      );
    expect([shaded("south"), shaded("west"), shaded("north")]).toEqual([20, 10, 0]);
    expect([shaded("south", -38), shaded("north", -38)]).toEqual([0, 20]);
  });
});

describe("noon shadow on 1 September", () => {
  // FAO-56 eq. 24, J = 244: δ = 0.409 sin(2π 244/365 - 1.39) = 0.1331 rad = 7.63 degrees.
  // At 46 N a metre throws tan(38.37°) = 0.7919 m to the north.
  const pair = (tallRow: number, latitudeDeg = 46) =>
    plan(
      // A bed that runs east, so that its rows lie north to south of each other; row 1 is the northern one.
      [planBed("b", { rows: 2, widthM: 2, place: { eastM: 0, northM: 0, bearingDeg: 90 } })],
      [
        block("tall", { rows: 1, plants: 10, heightCm: 160, at: at("b", tallRow) }),
        block("short", { rows: 1, plants: 10, heightCm: 60, at: at("b", 3 - tallRow) }),
      ],
      { latitudeDeg },
    );
  test("1 m taller and south of it: 0.7919 of the 1 m strip, so 7.919 of 10 plants", () => {
    expect(cost(pair(2), "shade")).toBeCloseTo(7.919, 2);
  });
  test("north of it: none; south of the equator the other way round", () => {
    expect(cost(pair(1), "shade")).toBe(0);
    expect(cost(pair(2, -46), "shade")).toBe(0);
    expect(cost(pair(1, -46), "shade")).toBeGreaterThan(7);
  });
});

describe("moving", () => {
  const size = { beds: 4, blocks: 8, varieties: 4, bedLengthM: 8, longestM: 4 };
  test("what a move costs is the difference of two checks, and breaches come and go with it", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 500 }),
        fc.nat(7),
        fc.nat(4),
        fc.nat(6),
        (seed, b, bed, fromM) => {
          const state = randomPlan(randomState(seed, size), seed);
          const id = `block-${b}`;
          const to = bed === 4 ? null : at(`bed-${bed}`, 1, fromM);
          const [before, after] = [checkPlan(state), checkPlan(moveBlock(state, id, to))];
          const move = costOfMove(state, id, to);
          expect(move.total).toBeCloseTo(after.total - before.total, 6);
          const texts = (hard: typeof after.hard) => hard.map((h) => JSON.stringify(h));
          const had = new Set(texts(before.hard));
          const has = new Set(texts(after.hard));
          expect(texts(move.breaks).sort()).toEqual([...has].filter((t) => !had.has(t)).sort());
          expect(texts(move.mends).sort()).toEqual([...had].filter((t) => !has.has(t)).sort());
        },
      ),
      { numRuns: 50 },
    );
  });
  test("a bed that is not of the plan is refused by name", () => {
    expect(() => moveBlock(plan([planBed("b")], [block("a")]), "a", at("x"))).toThrow("at.bedId");
  });
});

describe("what must not matter", () => {
  const size = { beds: 4, blocks: 9, varieties: 4, bedLengthM: 8, longestM: 4 };
  const any = fc.integer({ min: 1, max: 1000 });
  test("the order of blocks and beds, and where the plan's origin lies", () => {
    fc.assert(
      fc.property(any, (seed) => {
        const state = randomPlan(randomState(seed, size), seed);
        const turned = { ...state, beds: [...state.beds].reverse(), blocks: [...state.blocks].reverse() };
        const moved = {
          ...state,
          beds: state.beds.map((b) => ({
            ...b,
            place: { eastM: (b.place?.eastM ?? 0) + 731, northM: -250, bearingDeg: 0 },
          })),
        };
        for (const other of [turned, moved]) {
          expect(checkPlan(other).total).toBeCloseTo(checkPlan(state).total, 6);
          expect(kinds(other)).toEqual(kinds(state));
        }
      }),
      { numRuns: 25 },
    );
  });
  test("twice every measure: the same plants in shade, twice the way", () => {
    fc.assert(
      fc.property(any, (seed) => {
        const state = randomPlan(randomState(seed, size), seed);
        const twice = {
          ...state,
          beds: state.beds.map((b) => ({
            ...b,
            lengthM: 2 * b.lengthM,
            widthM: 2 * b.widthM,
            place: { eastM: 2 * (b.place?.eastM ?? 0), northM: 0, bearingDeg: 0 },
          })),
          blocks: state.blocks.map((b) => ({
            ...b,
            plantSpacingM: 2 * b.plantSpacingM,
            heightCm: 2 * (b.heightCm ?? 0),
            ...(b.at && { at: { ...b.at, fromM: 2 * b.at.fromM } }),
          })),
        };
        expect(cost(twice, "shade")).toBeCloseTo(cost(state, "shade") ?? Number.NaN, 6);
        expect(cost(twice, "walk")).toBeCloseTo(2 * (cost(state, "walk") ?? Number.NaN), 6);
      }),
      { numRuns: 25 },
    );
  });
});
