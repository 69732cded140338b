import {
  type Advice,
  advise,
  type PlantingState,
  render,
  renderWord,
  type Sign,
  type SignKind,
  shownUnit,
} from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { Working } from "../../packages/rules/src/core/working.ts";
import { cluesOf } from "../../packages/rules/src/rules/look-closer/clues.ts";
import { pictureOf } from "../../packages/rules/src/rules/look-closer/signs.ts";
import { fortnightOf } from "../../packages/rules/src/rules/look-closer/weather.ts";
import { weighAll } from "../../packages/rules/src/rules/look-closer/weigh.ts";
import { SIGNS } from "../../packages/rules/src/states/plant.ts";
import { CAUSES } from "../../packages/rules/src/tables/diagnosis.ts";
import { advice, answer, line, planting, stepKeys } from "./warmthStates.ts";

const TODAY = "2026-07-20";
type Weather = PlantingState["weather"];
/** The fortnight from 7 to 20 July, every day alike but for rain, which falls every third day. */
const fortnight = (tMaxC: number, tMinC: number, rainEveryThirdDayMm: number, windMPerS = 2): Weather =>
  Array.from({ length: 14 }, (_, i) => ({
    date: `2026-07-${String(7 + i).padStart(2, "0")}`,
    tMaxC,
    tMinC,
    rainMm: i % 3 === 0 ? rainEveryThirdDayMm : 0,
    windMPerS,
  }));
const MILD = fortnight(25, 14, 4);
const WARM_RAIN = fortnight(27, 18, 12);
const HOT_DRY = fortnight(33, 18, 0);
const HOT_RAIN = fortnight(31, 21, 12);
const DRENCHED = fortnight(27, 18, 45);
const COOL = fortnight(19, 11, 4);

const field = (change: Partial<PlantingState> = {}): PlantingState => {
  const base = planting();
  return {
    ...base,
    asOf: `${TODAY}T14:00:00Z`,
    planting: { ...base.planting, setOutOn: "2026-06-01" },
    weather: MILD,
    ...change,
  };
};
const seen = (
  signs: SignKind[],
  where: Pick<Sign, "part" | "pattern" | "speed"> = {},
  change: Partial<PlantingState> = {},
) => field({ signs: signs.map((sign) => ({ on: TODAY, sign, ...where })), ...change });

/** Points of every cause. */
function pointsOf(state: PlantingState): Map<string, number> {
  const picture = pictureOf(state, TODAY);
  if (picture === null || picture === "unnamed") throw new Error("no picture");
  const weather = fortnightOf(state, picture.firstOn, new Working());
  const all = weighAll(state, TODAY, picture, weather, cluesOf(state, TODAY, picture.firstOn));
  return new Map(all.map((w) => [w.cause.id, w.points]));
}
const points = (state: PlantingState, cause: string): number => {
  const found = pointsOf(state).get(cause);
  if (found === undefined) throw new Error(`no cause ${cause}`);
  return found;
};
/** How many causes stand above it. */
const above = (state: PlantingState, cause: string): number =>
  [...pointsOf(state).values()].filter((p) => p > points(state, cause)).length;

/** What a guide describes, and the place it must come to: first, or among the first two where guides say it is confused. */
type TextbookCase = [cause: string, guide: string, most: 0 | 1, state: PlantingState];
const young = { planting: { ...field().planting, setOutOn: "2026-07-10" } };
const given = (kind: "manure" | "wood-ash"): Partial<PlantingState> => ({
  applications: [
    { on: "2026-05-01", materialId: "m", kind, nPct: 0, p2o5Pct: 1, k2oPct: 5, amountKg: 20, areaM2: 50 },
  ],
});
const TEXTBOOK: TextbookCase[] = [
  [
    "aphids",
    "HG 57 and NC State: clusters under curled young leaves, honeydew with black mould",
    0,
    seen(["sticky-leaves", "leaves-curled", "insects-seen"], { part: "young-leaves", pattern: "patch" }),
  ],
  [
    "thrips",
    "HG 57: leaves curl upward, silvery to bronze beneath",
    0,
    seen(["leaves-silvery", "leaves-curled", "leaves-bronzed"], { part: "young-leaves" }),
  ],
  [
    "flea-beetles",
    "NC State, UC IPM: tiny beetles, small holes in leaves of young plants",
    0,
    seen(["leaves-with-holes", "insects-seen"], { pattern: "edge" }, young),
  ],
  [
    "pepper-weevil",
    "Seal and Martin 2016, UC IPM: buds and small fruit drop, holes, misshapen fruit",
    0,
    seen(["flowers-dropping", "fruit-holes", "fruit-misshapen"], { part: "fruit" }),
  ],
  [
    "pepper-maggot",
    "NC State, Virginia Tech: dimpled fruit with a maggot inside, patchy",
    1,
    seen(["fruit-holes", "fruit-misshapen"], { part: "fruit", speed: "weeks" }),
  ],
  [
    "corn-borer",
    "ENTFACT-301: holes in fruit that rots from water let in, stems tunnelled",
    0,
    seen(["fruit-holes", "stem-bored", "fruit-water-soaked"], { part: "fruit" }),
  ],
  [
    "cutworms",
    "UC IPM: young plants cut off overnight",
    0,
    seen(["stem-chewed-through"], { part: "stem", speed: "overnight" }, young),
  ],
  [
    "hornworms",
    "NC State: large caterpillar strips leaves, at times scars fruit; single plants",
    0,
    seen(["leaves-with-holes", "insects-seen", "fruit-holes"], {
      part: "all-leaves",
      pattern: "single-plants",
    }),
  ],
  [
    "spider-mites",
    "Cornell, HG 57: speckled, then bronzed leaves and fine webs in a hot, dry spell",
    0,
    seen(["leaves-stippled", "fine-webbing", "leaves-bronzed"], { pattern: "edge" }, { weather: HOT_DRY }),
  ],
  [
    "broad-mites",
    "Mississippi State: distorted strap-like young leaves, russeted misshapen fruit, stunted; taken for herbicide or virus",
    1,
    seen(["leaves-narrow", "leaves-curled", "fruit-misshapen", "plants-stunted"], {
      part: "young-leaves",
      pattern: "patch",
    }),
  ],
  [
    "damping-off",
    "Mississippi State P3747: seedlings collapse, stems rot at the soil, roots rot, low wet places",
    0,
    seen(["seedlings-fallen", "stem-black-at-soil", "roots-brown"], { pattern: "low-spot" }, young),
  ],
  [
    "bacterial-leaf-spot",
    "NC State VDIN-0018: water-soaked leaf spots, leaves drop, blister-like then warty fruit spots, wet season",
    0,
    seen(["leaf-spots-water-soaked", "leaves-dropping", "fruit-spots-raised"], {}, { weather: WARM_RAIN }),
  ],
  [
    "phytophthora-blight",
    "NC State VDIN-0027, Cornell: sudden wilt, dark stem from the soil up, root rot, low spots after heavy rain",
    0,
    seen(
      ["wilting-for-good", "stem-black-at-soil", "roots-brown"],
      { pattern: "low-spot", speed: "days" },
      { weather: DRENCHED },
    ),
  ],
  [
    "verticillium-wilt",
    "Ontario: wilting that recovers at night, old leaves yellow, stunted; AVRDC: stem brown inside; scattered, slow",
    0,
    seen(
      ["wilting-by-day", "leaves-yellow-old", "stem-inside-brown", "plants-stunted"],
      { pattern: "single-plants", speed: "weeks" },
      { weather: COOL },
    ),
  ],
  [
    "southern-blight",
    "Delaware: scattered wilted plants, white growth at the stem base, days above 86 F, rain",
    0,
    seen(["white-threads-at-soil", "wilting-for-good"], { pattern: "single-plants" }, { weather: HOT_RAIN }),
  ],
  [
    "anthracnose",
    "EDIS VH054: soft, sunken fruit spots with rings of spores, warm wet weather",
    0,
    seen(["fruit-sunken-spots", "fruit-rings"], { part: "fruit" }, { weather: WARM_RAIN }),
  ],
  [
    "mosaic-virus",
    "HG 57: crinkled, puckered young leaves with mottling; misshapen fruit",
    0,
    seen(["leaves-mottled", "leaves-curled", "fruit-misshapen"], { pattern: "single-plants" }),
  ],
  [
    "cucumber-mosaic",
    "AVRDC: severely stunted, narrow leaves, bumpy fruit, ring spots",
    0,
    seen(["plants-stunted", "leaves-narrow", "leaf-spots-ringed", "fruit-misshapen"], {
      pattern: "single-plants",
    }),
  ],
  [
    "spotted-wilt",
    "UC IPM: bronzed leaves with spots and rings, rings on fruit, stunted",
    0,
    seen(["leaves-bronzed", "leaf-spots-ringed", "fruit-rings", "plants-stunted"]),
  ],
  [
    "short-nitrogen",
    "Georgia B1569: old leaves yellow, stunted",
    0,
    seen(["leaves-yellow-old", "plants-stunted"], {
      part: "old-leaves",
      pattern: "everywhere",
      speed: "weeks",
    }),
  ],
  [
    "short-phosphorus",
    "keys from memory: purple leaves, stunted",
    0,
    seen(["leaves-purple", "plants-stunted"], { pattern: "everywhere", speed: "weeks" }),
  ],
  [
    "short-potassium",
    "keys from memory: edges of old leaves yellow, then brown",
    0,
    seen(["leaf-edges-brown", "leaves-yellow-old"], {
      part: "old-leaves",
      pattern: "everywhere",
      speed: "weeks",
    }),
  ],
  [
    "short-magnesium",
    "HG 57: lower leaves yellow between the veins",
    0,
    seen(["leaves-yellow-between-veins", "leaves-yellow-old"], { part: "old-leaves" }),
  ],
  [
    "short-calcium",
    "keys from memory: growing tips die, young leaves cupped, end rot",
    0,
    seen(["growing-point-dead", "leaves-curled", "fruit-end-dark"], { part: "young-leaves" }),
  ],
  [
    "short-iron",
    "keys from memory: youngest leaves yellow between the veins after ash or lime",
    0,
    seen(["leaves-yellow-young", "leaves-yellow-between-veins"], { part: "young-leaves" }, given("wood-ash")),
  ],
  [
    "salt",
    "NC State VDIN-0010: old leaf edges burn, stunted, sudden wilting in dry spells",
    0,
    seen(
      ["leaf-edges-brown", "plants-stunted", "wilting-by-day"],
      {},
      { weather: HOT_DRY, waterTests: [{ id: "w", sampledOn: "2026-06-01", ecDSPerM: 2.4 }] },
    ),
  ],
  [
    "herbicide-drift",
    "Delaware: young leaves cupped, puckered, strap-shaped; upper part of the plant; the side of the spray",
    0,
    seen(["leaves-narrow", "leaves-curled"], {
      part: "young-leaves",
      pattern: "windward",
      speed: "days",
    }),
  ],
  [
    "sunscald",
    "NMSU H-249: light, sunken, papery patch on the fruit's sunny side",
    0,
    seen(["fruit-bleached", "fruit-sunken-spots"], { part: "fruit" }, { weather: HOT_DRY }),
  ],
  [
    "blossom-end-rot",
    "Ohio VegNet 2020: dry, sunken patch at the blossom end after hot, dry weather",
    0,
    seen(["fruit-end-dark"], { part: "fruit" }, { weather: HOT_DRY }),
  ],
  [
    "cold",
    "e-GRO 2022: the day after a night below 50 F leaves dark and water-soaked",
    0,
    seen(["leaves-dark-limp"], { speed: "overnight" }, { weather: fortnight(18, 6, 4) }),
  ],
  [
    "heat",
    "NMSU H-249: flowers drop in high temperatures; plants hang at noon",
    0,
    seen(
      ["flowers-dropping", "wilting-by-day"],
      { pattern: "everywhere" },
      { weather: fortnight(35, 24, 12) },
    ),
  ],
  [
    "drought",
    "HG 57, NMSU H-249: plants hang, edges scorch, no rain and no water",
    1,
    seen(["wilting-by-day", "leaf-edges-brown"], { pattern: "everywhere" }, { weather: HOT_DRY }),
  ],
  [
    "waterlogging",
    "Purdue, Delaware: saturated bed, wilting, yellowing, leaf drop",
    0,
    seen(
      ["wilting-by-day", "leaves-yellow-old", "leaves-dropping"],
      { pattern: "low-spot", speed: "days" },
      { weather: DRENCHED },
    ),
  ],
  [
    "wind",
    "Delaware, Ontario: newly set plants torn and scorched at the edges on the windward side",
    0,
    seen(
      ["leaves-torn", "leaf-edges-brown"],
      { pattern: "windward" },
      { weather: fortnight(18, 12, 4, 6), ...young },
    ),
  ],
];

describe("what a guide describes comes to the top", () => {
  test.each(TEXTBOOK)("%s: %s", (cause, _, most, state) => {
    expect(above(state, cause)).toBeLessThanOrEqual(most);
    expect(line(advice("look-closer", state), `W(${cause})`)).toBe(points(state, cause));
  });
  test("every cause of the table has such a case", () => {
    expect(TEXTBOOK.map(([cause]) => cause).sort()).toEqual(CAUSES.map((c) => c.id).sort());
  });
});

describe("the sum by hand", () => {
  test("spots often 2, dropping often 2, old leaves 1, patch 1, in days 1, warm rain 1 = 8", () => {
    const a = advice(
      "look-closer",
      seen(
        ["leaf-spots-water-soaked", "leaves-dropping"],
        { part: "old-leaves", pattern: "patch", speed: "days" },
        { weather: WARM_RAIN },
      ),
    );
    expect([a.decision.code, line(a, "W(bacterial-leaf-spot)")]).toEqual(["bacterial-leaf-spot", 8]);
    expect(a.decision.text.key).toBe("look-closer.decision.leading");
  });
  test("narrow 2, curled 2: drift 4 and broad mites 4 stand equal; fruit that misshapes parts nothing it says of both", () => {
    const a = advice("look-closer", seen(["leaves-narrow", "leaves-curled"]));
    expect([line(a, "W(herbicide-drift)"), line(a, "W(broad-mites)")]).toEqual([4, 4]);
    expect(a.decision.text.key).toBe("look-closer.decision.several");
  });
  test("curled leaves alone: six causes have them often, so all six are named and each one's cautions are carried", () => {
    // "often" is 2 points; MILD weather says something of mites and thrips, so it is left out.
    const often = CAUSES.filter((c) => c.signs["leaves-curled"] === "often").map((c) => c.id);
    expect(often).toHaveLength(6);
    expect(often).toContain("herbicide-drift");
    const a = advice("look-closer", seen(["leaves-curled"], {}, { weather: [] }));
    expect(often.map((id) => line(a, `W(${id})`))).toEqual([2, 2, 2, 2, 2, 2]);
    expect(a.decision.code.split("-or-").toSorted()).toEqual(often.toSorted());
    for (const [language, number] of [
      ["en", "six causes about equally: "],
      ["es", "igual a seis causas: "],
    ] as const) {
      const reader = { language, units: "metric" } as const;
      const said = render(a.decision.text, reader);
      expect(said).toContain(number);
      for (const id of often) expect(said).toContain(renderWord(`look-closer.cause.${id}`, reader));
    }
    expect(a.cautions.map((c) => c.id)).toContain("drift-fruit");
    expect(stepKeys(a)).toContain("look-closer.safe.drift");
    // Aphids alone would have weeds pulled.
    expect(stepKeys(a)).not.toContain("look-closer.safe.weeds");
    const bars = a.charts[0]?.series[0]?.points.map(([, p]) => p) ?? [];
    expect(bars.filter((p) => p === 2)).toHaveLength(6);
  });
  test("whatever was seen, what stands level with a named cause is named too", () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.constantFrom(...SIGNS), { minLength: 1, maxLength: 4 }), (signs) => {
        const state = seen(signs);
        const a = advice("look-closer", state);
        if (!a.decision.code.includes("-or-")) return;
        const named = a.decision.code.split("-or-");
        const all = pointsOf(state);
        const least = Math.min(...named.map((id) => all.get(id) ?? Number.NaN));
        expect(
          [...all]
            .filter(([, p]) => p >= least)
            .map(([id]) => id)
            .toSorted(),
        ).toEqual(named.toSorted());
      }),
      { numRuns: 60 },
    );
  });
  test("the chart of points names its unit, in the reader's words", () => {
    const [chart] = advice("look-closer", seen(["leaves-curled"])).charts;
    expect(chart?.y.unit).toBe("points");
    expect(shownUnit("points", "us", "es")).toMatchObject({ label: "puntos" });
  });
  test("a spraying against weeds 18 days before raises drift by 3; one 30 days before, or still to come, by none", () => {
    const by = (at: string) =>
      points(
        seen(
          ["leaves-narrow"],
          {},
          { sprays: [{ at, target: "weeds", reEntryHours: 4, preHarvestDays: 0 }] },
        ),
        "herbicide-drift",
      ) - points(seen(["leaves-narrow"]), "herbicide-drift");
    expect([by("2026-07-02T15:00:00Z"), by("2026-06-20T15:00:00Z"), by("2026-07-21T15:00:00Z")]).toEqual([
      3, 0, 0,
    ]);
  });
  test("the same spots: hot and dry puts mites above bacterial spot, warm rain the other way round", () => {
    const signs: SignKind[] = ["leaves-yellow-old", "leaves-dropping"];
    const lead = (weather: Weather) => {
      const all = pointsOf(seen(signs, {}, { weather }));
      return (all.get("spider-mites") ?? 0) - (all.get("bacterial-leaf-spot") ?? 0);
    };
    // Yellow 1, dropping 1 and weather 1 against yellow 1, dropping 2 and weather -1; in rain -1 and +1.
    expect([lead(HOT_DRY), lead(WARM_RAIN)]).toEqual([1, -3]);
  });
  test("the disease found in this bed in 2024 adds 2; this season's own does not", () => {
    const by = (season: number) =>
      points(
        seen(
          ["wilting-for-good"],
          {},
          { history: [{ season, crop: "squash", disease: "phytophthora-blight" }] },
        ),
        "phytophthora-blight",
      ) - points(seen(["wilting-for-good"]), "phytophthora-blight");
    expect([by(2024), by(2026)]).toEqual([2, 0]);
  });
  test("salt: water of 2.4 dS/m makes soil of 3.6, above 1.5: +2; of 0.5 makes 0.75: -1", () => {
    const by = (ecDSPerM: number) =>
      points(
        seen(["plants-stunted"], {}, { waterTests: [{ id: "w", sampledOn: "2026-06-01", ecDSPerM }] }),
        "salt",
      ) - points(seen(["plants-stunted"]), "salt");
    expect([by(2.4), by(0.5)]).toEqual([2, -1]);
  });
});

describe("soil tests", () => {
  const soilTests = (mgPerKg: number, waterPh: number): PlantingState["soilTests"] => [
    {
      id: "s",
      sampledOn: "2026-04-10",
      depthCm: 15,
      medium: "mineral-soil",
      waterPh,
      values: [{ nutrient: "K", extractant: "mehlich-3", mgPerKg }],
    },
  ];
  const by = (cause: string, mgPerKg: number, waterPh: number) =>
    points(seen(["plants-stunted"], {}, { soilTests: soilTests(mgPerKg, waterPh) }), cause) -
    points(seen(["plants-stunted"]), cause);
  test("20 mg/kg of Mehlich-3 potassium is short: +2; 500 is plenty: -2", () => {
    expect([by("short-potassium", 20, 6.5), by("short-potassium", 500, 6.5)]).toEqual([2, -2]);
  });
  test("iron: pH 7.6 speaks for it by 2, 6.8 neither way, 6.2 against by 2", () => {
    expect([by("short-iron", 100, 7.6), by("short-iron", 100, 6.8), by("short-iron", 100, 6.2)]).toEqual([
      2, 0, -2,
    ]);
  });
});

describe("steps that would clash", () => {
  test("drift and broad mites both possible: nothing is pulled or washed", () => {
    const keys = stepKeys(advice("look-closer", seen(["leaves-narrow", "leaves-curled"])));
    expect(keys).toContain("look-closer.safe.drift");
    expect(keys).not.toContain("look-closer.safe.rogue");
  });
  test("whatever was seen: no leaf is washed where plants must stay dry, no water where it must run off", () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.constantFrom(...SIGNS), { minLength: 1, maxLength: 6 }), (signs) => {
        const keys = new Set(stepKeys(advice("look-closer", seen(signs))));
        const clash = (a: string, b: string) =>
          keys.has(`look-closer.safe.${a}`) && keys.has(`look-closer.safe.${b}`);
        expect([clash("dry-plants", "wash-off"), clash("drain", "water-even")]).toEqual([false, false]);
        expect([clash("drift", "rogue"), clash("drift", "pick-off")]).toEqual([false, false]);
        // "Pull nothing yet, write down which other plants show it": the weeds show it too.
        expect(clash("drift", "weeds")).toBe(false);
      }),
      { numRuns: 40 },
    );
  });
});

describe("whatever was seen", () => {
  const anySigns = fc.uniqueArray(fc.constantFrom(...SIGNS), { minLength: 1, maxLength: 8 });
  const weathers = fc.constantFrom(MILD, WARM_RAIN, HOT_DRY, HOT_RAIN, DRENCHED, COOL, []);

  test("one more sign that guides tie to a cause never lowers it", () => {
    fc.assert(
      fc.property(anySigns, weathers, fc.constantFrom(...CAUSES), fc.nat(), (signs, weather, cause, n) => {
        const own = Object.keys(cause.signs) as SignKind[];
        const more = own[n % own.length] as SignKind;
        const before = points(seen(signs, {}, { weather }), cause.id);
        expect(points(seen([...signs, more], {}, { weather }), cause.id)).toBeGreaterThanOrEqual(before);
      }),
    );
  });
  test("order and saying it twice change nothing; the same state gives the same bytes", () => {
    fc.assert(
      fc.property(anySigns, weathers, (signs, weather) => {
        const bytes = (of: SignKind[]) => JSON.stringify(answer("look-closer", seen(of, {}, { weather })));
        expect(bytes([...signs].reverse())).toBe(bytes(signs));
        expect(bytes([...signs, ...signs])).toBe(bytes(signs));
        expect(bytes(signs)).toBe(bytes(signs));
      }),
      { numRuns: 30 },
    );
  });
  test("an answer is advice that never says what it is, and asks for a sign nobody recorded", () => {
    fc.assert(
      fc.property(anySigns, (signs) => {
        const a = advice("look-closer", seen(signs));
        expect(a.cautions.map((c) => c.id)).toContain("possibilities-only");
        const said = render(a.decision.text, { language: "en", units: "metric" });
        expect(said).toMatch(/^What was seen fits .* Look (?:closer|again)/);
        const asked = a.steps.flatMap((s) =>
          s.text.key === "look-closer.step.look-for" ? [s.text.params.sign as { word: string }] : [],
        );
        for (const { word } of asked) expect(signs).not.toContain(word.replace("look-closer.sign.", ""));
      }),
      { numRuns: 30 },
    );
  });
});

describe("what is said beside it", () => {
  const keys = (a: Advice) => a.limits.map((m) => m.key);

  test("nothing recorded: does not apply, and says what to record", () => {
    expect(answer("look-closer", field())).toMatchObject({
      kind: "does-not-apply",
      reason: { key: "look-closer.not.no-signs" },
    });
  });
  test("somebody noted sick plants and no sign: asks which", () => {
    const found = answer("look-closer", field({ notes: [{ on: TODAY, kind: "disease-signs" }] }));
    expect(found).toMatchObject({ kind: "needs-more", missing: [{ field: "signs" }] });
  });
  test("a note of mites counts as mites seen, one of end rot as end rot: 2 each", () => {
    const of = (kind: "mites" | "end-rot") => field({ notes: [{ on: TODAY, kind }] });
    expect(points(of("mites"), "spider-mites")).toBe(points(seen(["mites-seen"]), "spider-mites"));
    expect(points(of("end-rot"), "blossom-end-rot")).toBe(
      points(seen(["fruit-end-dark"]), "blossom-end-rot"),
    );
  });
  test("cleared, and not sown yet: does not apply", () => {
    const base = seen(["leaves-curled"]);
    const at = (change: Partial<PlantingState["planting"]>) =>
      answer("look-closer", { ...base, planting: { ...base.planting, ...change } });
    expect(at({ endedOn: TODAY })).toMatchObject({ reason: { key: "look-closer.not.ended" } });
    expect(
      answer("look-closer", { ...base, planting: { ...planting().planting, sownOn: "2026-08-01" } }),
    ).toMatchObject({ reason: { key: "look-closer.not.unsown" } });
  });
  test("a sign of tomorrow is refused by its field", () => {
    const found = answer("look-closer", field({ signs: [{ on: "2026-07-21", sign: "leaves-curled" }] }));
    expect(found).toMatchObject({ kind: "refused", problems: [{ field: "signs.0.on" }] });
  });
  test("a sign 25 days before the newest is set aside and said; 21 days before it still counts", () => {
    const old = (on: string) =>
      advice(
        "look-closer",
        field({
          signs: [
            { on, sign: "leaves-dark-limp" },
            { on: TODAY, sign: "fruit-end-dark" },
          ],
        }),
      );
    expect([line(old("2026-06-25"), "n"), keys(old("2026-06-25"))]).toEqual([
      1,
      expect.arrayContaining(["look-closer.limit.set-aside"]),
    ]);
    expect(line(old("2026-06-29"), "n")).toBe(2);
  });
  test("signs 22 days old are weighed and said to be old; 21 days are not", () => {
    const of = (on: string) => keys(advice("look-closer", field({ signs: [{ on, sign: "leaves-curled" }] })));
    expect(of("2026-06-28")).toContain("look-closer.limit.old");
    expect(of("2026-06-29")).not.toContain("look-closer.limit.old");
  });
  test("3 and 2 photographs: 5 are attached; with none it asks for some", () => {
    const a = advice(
      "look-closer",
      field({
        signs: [
          { on: TODAY, sign: "leaves-curled", photos: 3 },
          { on: TODAY, sign: "leaves-mottled", photos: 2 },
        ],
      }),
    );
    expect(a.steps.find((s) => s.text.key === "look-closer.step.photos")?.text.params.photos).toBe(5);
    expect(stepKeys(advice("look-closer", seen(["leaves-curled"])))).toContain("look-closer.step.photograph");
  });
  test("under a tunnel the weather outside is not weighed", () => {
    const covered = { ...field().bed, covers: [{ cover: "high-tunnel" as const, from: "2026-05-01" }] };
    const spots: SignKind[] = ["leaf-spots-water-soaked"];
    const inside = seen(spots, {}, { weather: WARM_RAIN, bed: covered });
    expect(points(seen(spots, {}, { weather: WARM_RAIN }), "bacterial-leaf-spot")).toBe(
      points(inside, "bacterial-leaf-spot") + 1,
    );
    expect(keys(advice("look-closer", inside))).toContain("look-closer.limit.sheltered");
  });
  test("a spraying of this morning closes the bed first, and holds picking: 20 July + 7 days = 27 July", () => {
    const a = advice(
      "look-closer",
      seen(
        ["leaves-curled"],
        {},
        {
          sprays: [{ at: "2026-07-20T12:00:00Z", target: "insects", reEntryHours: 24, preHarvestDays: 7 }],
        },
      ),
    );
    expect(stepKeys(a).slice(0, 2)).toEqual(["closed.step", "look-closer.step.no-picking"]);
    expect(a.steps[1]?.text.params.day).toEqual({ day: "2026-07-27" });
    expect(a.cautions.map((c) => c.id)).toContain("label-intervals");
    expect(a.expected).toEqual({ kind: "look", date: "2026-07-21" });
  });
  test("possible drift: pull nothing, pick nothing, and the caution says that the fruit may not be fit to eat", () => {
    const a = advice("look-closer", seen(["leaves-narrow", "leaves-curled"], { pattern: "windward" }));
    expect(stepKeys(a)).toContain("look-closer.safe.drift");
    expect(a.cautions[0]?.id).toBe("drift-fruit");
  });
  test("one sign that guides hardly tie to anything: unclear, and a sample is asked for", () => {
    const a = advice(
      "look-closer",
      seen(["eggs-seen"], { part: "roots", pattern: "low-spot", speed: "since-planting" }),
    );
    expect(a.decision.code).toBe("unclear");
    expect(stepKeys(a)).toContain("look-closer.step.sample-today");
  });
  test("Fahrenheit that claims Celsius is refused", () => {
    const hot = fortnight(58, 40, 0);
    expect(answer("look-closer", seen(["leaves-curled"], {}, { weather: hot }))).toMatchObject({
      kind: "refused",
    });
  });
});

test("the example: spots often 2, dropping often 2, old leaves 1, patch 1, in days 1, warm rain 1 = 8", async () => {
  const { readFileSync } = await import("node:fs");
  const path = new URL("../../docs/examples/planting-spots-after-rain.json", import.meta.url);
  const found = advise(JSON.parse(readFileSync(path, "utf8"))).find((a) => a.rule.id === "look-closer");
  if (found?.kind !== "advice") throw new Error("the example gives no advice");
  expect([found.decision.code, line(found, "W(bacterial-leaf-spot)")]).toEqual(["bacterial-leaf-spot", 8]);
});
