import { readFileSync } from "node:fs";
import { join } from "node:path";
import {
  type Advice,
  type Answer,
  addDays,
  answerOf,
  daysBetween,
  type PlantingState,
  render,
  rules,
  sources,
} from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bed, feedingState, planting } from "./waterAndFood.ts";

type Application = PlantingState["applications"][number];
type Material = PlantingState["shed"][number];

const OUT = "2025-06-01";
/** Seventy days from setting out: the first picking is expected on 10 August. */
const MATURITY = { days: 70, from: "transplanting", to: "green" } as const;
const PICK = "2025-08-10";

const given = (on: string, over: Partial<Application> = {}): Application => ({
  on,
  materialId: "heap",
  kind: "manure",
  composted: false,
  nPct: 0.5,
  p2o5Pct: 0.3,
  k2oPct: 0.5,
  amountKg: 200,
  areaM2: 80,
  ...over,
});
const heap = (over: Partial<Material> = {}): Material => ({
  id: "heap",
  kind: "manure",
  nPct: 1.05,
  p2o5Pct: 0.5,
  k2oPct: 0.5,
  soluble: false,
  certifiedUse: "restricted",
  manure: { animal: "cattle", composted: false, dryMatterPct: 25, ammoniumNPct: 0.4 },
  ...over,
});
const state = (over: Partial<PlantingState> = {}): PlantingState =>
  feedingState({
    asOf: "2025-07-01T12:00:00Z",
    bed: bed({ certification: "certified" }),
    planting: planting({ setOutOn: OUT, daysToMaturity: MATURITY }),
    feeding: { method: "broadcast", credits: [] },
    shed: [],
    ...over,
  });
/** Nothing stands in the bed yet: April, to go out on 1 June. */
const ahead = (over: Partial<PlantingState> = {}): PlantingState => {
  const { setOutOn: _, ...seedlings } = planting({ plannedSetOutOn: OUT, daysToMaturity: MATURITY });
  return state({ asOf: "2025-04-01T12:00:00Z", planting: seedlings, shed: [heap()], ...over });
};

const answer = (s: PlantingState): Answer => {
  const rule = rules.find((r) => r.id === "manure-timing");
  if (!rule) throw new Error("no manure-timing");
  return answerOf(rule, s);
};
const advice = (s: PlantingState): Advice => {
  const a = answer(s);
  if (a.kind !== "advice") throw new Error(JSON.stringify(a));
  return a;
};
const reason = (s: PlantingState): string => {
  const a = answer(s);
  return a.kind === "does-not-apply" ? a.reason.key.replace("manure-timing.not.", "") : a.kind;
};
const keys = (a: Advice) => a.steps.map((s) => s.text.key.replace("manure-timing.step.", ""));
const line = (a: Advice, symbol: string) => a.working.find((l) => l.symbol === symbol)?.value;
const text = (a: Advice, key: string, units: "metric" | "us" = "metric") => {
  const step = a.steps.find((s) => s.text.key === `manure-timing.step.${key}`);
  if (!step) throw new Error(`no step ${key}: ${keys(a).join(" ")}`);
  return render(step.text, { language: "en", units });
};

describe("7 CFR 205.203(c)(1): not less than 120 days, 90 where fruit stays clear of the soil", () => {
  test.each([
    ["exactly 120 days before the first picking is enough", addDays(PICK, -120), "clear-at-harvest"],
    ["119 days are not", addDays(PICK, -119), "hold-harvest"],
    ["a year before is over", addDays(PICK, -365), "passed"],
  ])("%s", (_, on, wanted) => {
    const a = answer(state({ applications: [given(on)] }));
    const got = a.kind === "advice" ? a.decision.code : reason(state({ applications: [given(on)] }));
    expect(got).toBe(wanted);
  });
  test("harvest may begin on the 120th day itself", () => {
    const a = advice(state({ applications: [given("2025-05-01")] }));
    expect(line(a, "t_h")).toBe("2025-08-29");
    expect(daysBetween("2025-05-01", "2025-08-29")).toBe(120);
    expect(a.window.to).toBe("2025-08-29");
  });
  test("the day before the interval ends it still holds; on the day itself it is over", () => {
    const applications = [given("2025-05-01")];
    const on = (day: string) => state({ applications, asOf: `${day}T12:00:00Z` });
    expect(advice(on("2025-08-28")).decision.code).toBe("hold-harvest");
    expect(reason(on("2025-08-29"))).toBe("passed");
  });
  test.each([
    ["upright fruit on stakes", { marketType: "thai-type", staked: true } as const, 90],
    ["upright fruit without stakes", { marketType: "thai-type", staked: false } as const, 120],
    ["hanging fruit on stakes", { marketType: "bell", staked: true } as const, 120],
    ["nobody said whether it is staked", { marketType: "thai-type" } as const, 120],
  ])("%s: %d days", (_, over, days) => {
    const a = advice(
      state({
        applications: [given("2025-05-20")],
        planting: planting({ daysToMaturity: MATURITY, ...over }),
      }),
    );
    expect(line(a, "n")).toBe(days);
    expect(line(a, "t_h")).toBe(addDays("2025-05-20", days));
  });
  test("hanging fruit on stakes hears what the certifier may allow, and keeps the longer time", () => {
    const a = advice(
      state({
        applications: [given("2025-05-20")],
        planting: planting({ staked: true, daysToMaturity: MATURITY }),
      }),
    );
    expect(text(a, "staked")).toContain("August 18");
    expect(line(a, "t_h")).toBe("2025-09-17");
  });
  test("the regulation is registered as quoted by others, and as a standard", () => {
    expect(sources.get("cfr-7-205-203")).toMatchObject({ kind: "standard", status: "secondary" });
  });
});

describe("which rule", () => {
  test.each([
    ["certified", undefined, "rule-us-certified"],
    ["transition", undefined, "rule-us-certified"],
    ["none", undefined, "rule-office-days"],
    ["none", "us-certified", "rule-us-certified"],
    ["certified", "office-days", "rule-office-days"],
  ] as const)("certification %s, office's rule %s: %s", (certification, rawManureRule, step) => {
    const settings = rawManureRule ? { rawManureRule } : {};
    const a = advice(state({ bed: bed({ certification }), settings, applications: [given("2025-05-01")] }));
    expect(keys(a)).toContain(step);
    expect(line(a, "n")).toBe(120);
  });
  test("on other ground the days are said to be a default after the local rule", () => {
    const a = advice(state({ bed: bed(), applications: [given("2025-05-01")] }));
    expect(text(a, "rule-office-days")).toMatch(/come first.*prudent default/);
    expect(a.wouldChange.map((m) => m.key)).toContain("manure-timing.change.office");
  });
});

describe("what was given", () => {
  test("raw and poultry manure count, composted and others do not", () => {
    const kinds = (over: Partial<Application>) =>
      reason(state({ applications: [given("2025-05-01", over)] }));
    expect(kinds({ kind: "poultry-manure" })).toBe("advice");
    expect(kinds({ composted: true })).toBe("composted");
    expect(kinds({ kind: "compost" })).toBe("none");
    expect(kinds({ kind: "urea" })).toBe("none");
  });
  test("manure of which nobody said that it was composted is raw, and that is said", () => {
    const { composted: _, ...unsaid } = given("2025-05-01");
    const a = advice(state({ applications: [unsaid] }));
    expect(keys(a)).toContain("assumed-raw");
    expect(a.estimated.map((e) => e.input)).toContain("composted");
    expect(a.wouldChange.map((m) => m.key)).toContain("manure-timing.change.composted");
  });
  test("where the application does not say, the shed's material does", () => {
    const { composted: _, kind: __, ...unsaid } = given("2025-05-01");
    const composted = heap({ manure: { animal: "cattle", composted: true } });
    expect(reason(state({ applications: [unsaid], shed: [composted] }))).toBe("composted");
    expect(advice(state({ applications: [unsaid], shed: [heap()] })).decision.code).toBe("hold-harvest");
  });
  test("the last of several decides", () => {
    const applications = [given("2025-05-10"), given("2025-03-01")];
    expect(line(advice(state({ applications })), "t_m")).toBe("2025-05-10");
  });
  test("on a standing crop it says that waiting does not make touched fruit safe", () => {
    expect(keys(advice(state({ applications: [given("2025-06-10")] })))).toContain("on-crop");
    expect(keys(advice(state({ applications: [given("2025-05-10")] })))).not.toContain("on-crop");
  });
  test("fruit picked before the day is named, with what to do about it by each rule", () => {
    const notes: PlantingState["notes"] = [{ on: "2025-08-12", kind: "first-pick" }];
    const early = { asOf: "2025-08-20T12:00:00Z", applications: [given("2025-05-01")], notes };
    const a = advice(state(early));
    expect(a.decision.code).toBe("picked-too-early");
    expect(text(a, "broken-us-certified")).toMatch(/August 12.*certifier.*August 29/);
    expect(keys(advice(state({ ...early, bed: bed() })))).toContain("broken-office-days");
  });
  test("fruit picked before the manure came is not touched by it; the rest is held", () => {
    const a = advice(
      state({
        asOf: "2025-08-25T12:00:00Z",
        applications: [given("2025-08-20")],
        notes: [{ on: "2025-08-12", kind: "first-pick" }],
      }),
    );
    expect(a.decision.code).toBe("hold-harvest");
    expect(line(a, "t_h")).toBe("2025-12-18");
  });
  test("without a first picking known the day is said all the same", () => {
    const a = advice(state({ planting: planting({ setOutOn: OUT }), applications: [given("2025-05-01")] }));
    expect(a.decision.code).toBe("hold-harvest");
    expect(a.window.to).toBe("2025-08-29");
    expect(a.limits.map((m) => m.key)).toContain("manure-timing.limit.no-pick");
    expect(a.stakes).toMatchObject({ harm: 0.3, actBy: null });
  });
});

describe("what may still be spread", () => {
  test("the last day is the first picking less 120 days, and that day itself will do", () => {
    const a = advice(ahead());
    expect(a.decision.code).toBe("spread-by");
    expect(line(a, "t_s")).toBe("2025-04-12");
    expect(daysBetween("2025-04-12", PICK)).toBe(120);
    expect(advice(ahead({ asOf: "2025-04-12T12:00:00Z" })).decision.code).toBe("spread-by");
    expect(advice(ahead({ asOf: "2025-04-13T12:00:00Z" })).decision.code).toBe("too-late");
  });
  test("days to maturity from sowing are counted from sowing", () => {
    const { setOutOn: _, ...seedlings } = planting({
      sownOn: "2025-03-20",
      daysToMaturity: { days: 140, from: "sowing", to: "colour" },
    });
    expect(line(advice(ahead({ planting: seedlings })), "t_p")).toBe("2025-08-07");
  });
  test("too late names compost and the day to which the first picking would move", () => {
    const a = advice(ahead({ asOf: "2025-05-01T12:00:00Z" }));
    expect(text(a, "compost-instead")).toMatch(/August 10.*August 29/);
  });
  test("rain ahead is waited for from 10 mm on", () => {
    const rain = (rainMm: number) =>
      keys(
        advice(
          ahead({ forecast: { issuedAt: "2025-04-01T10:00:00Z", days: [{ date: "2025-04-03", rainMm }] } }),
        ),
      );
    expect(rain(10)).toContain("rain");
    expect(rain(9)).not.toContain("rain");
  });
  test("SN-901, SN-902: a tonne's first-year nitrogen, worked in and left lying", () => {
    // Organic 6.5 kg x 25 % + 4 kg = 5.625; on the surface 0.66 x 4 kg: 4.265 kg, the worksheet's 8.53 lb a ton.
    const a = advice(ahead());
    expect(line(a, "Na,surface")).toBeCloseTo(4.265, 9);
    expect(text(a, "nitrogen")).toContain(
      "5.6 kg of nitrogen in the first year worked in, 4.3 kg left lying",
    );
    expect(text(a, "nitrogen")).toContain("25 %");
  });
  test("SN-910: an inch of excess water, 20 to 30 lb an acre", () => {
    expect(text(advice(ahead()), "nitrate", "us")).toMatch(/1 in of water.* 20 lb\/acre to 30 lb\/acre/);
  });
  test("SN-901: it is worked in the same day, or a third of its ammonium goes", () => {
    expect(text(advice(ahead()), "work-in")).toContain("a third of its ammonium");
  });
  test("an unanalysed lot is sent to the laboratory", () => {
    const { manure: _, ...plain } = heap();
    const a = advice(ahead({ shed: [plain] }));
    expect(keys(a)).toEqual(expect.arrayContaining(["analyse", "assumed-raw-shed"]));
  });
  test("beside raw manure the composted asks for its record, in the reader's degrees", () => {
    const a = advice(
      ahead({
        shed: [heap(), heap({ id: "done", manure: { animal: "cattle", composted: true } })],
      }),
    );
    expect(text(a, "compost-record", "us")).toContain("131 °F to 170 °F");
    expect(text(a, "compost-record")).toContain("five times");
  });
  test("needs the days to maturity, then the day of setting out, and says how far the day moves", () => {
    const { setOutOn: _, ...bare } = planting();
    const a = answer(ahead({ planting: bare }));
    expect(a).toMatchObject({ kind: "needs-more", missing: [{ field: "planting.daysToMaturity" }] });
    const { setOutOn: __, ...unplanned } = planting({ daysToMaturity: MATURITY });
    const b = answer(ahead({ planting: unplanned }));
    expect(b).toMatchObject({ kind: "needs-more", missing: [{ field: "planting.plannedSetOutOn" }] });
  });
});

describe("where the question does not arise", () => {
  test.each([
    ["nothing given, nothing in the shed", state(), "none"],
    ["the heap is used up", ahead({ shed: [heap({ stockKg: 0 })] }), "none"],
    ["raw manure in the shed beside a standing crop", state({ shed: [heap()] }), "standing"],
    [
      "only composted manure",
      ahead({ shed: [heap({ manure: { animal: "horse", composted: true } })] }),
      "composted",
    ],
    [
      "cleared",
      state({ planting: planting({ endedOn: "2025-06-20" }), applications: [given("2025-05-01")] }),
      "ended",
    ],
  ])("%s", (_, s, wanted) => {
    expect(reason(s)).toBe(wanted);
  });
});

test("manure given on a day to come is refused, naming field and bound", () => {
  expect(answer(state({ applications: [given("2025-07-02")] }))).toMatchObject({
    kind: "refused",
    problems: [{ field: "applications.0.on", accepted: "at most 2025-07-01", received: "2025-07-02" }],
  });
});

test("the raw-manure caution comes first, whatever the decision", () => {
  for (const s of [ahead(), state({ applications: [given("2025-05-01")] })]) {
    const ids = advice(s).cautions.map((c) => c.id);
    expect(ids[0]).toBe("manure-raw");
    expect(ids).toEqual(expect.arrayContaining(["nitrate-leaching", "nutrient-law", "local-rules-first"]));
  }
});

test("harm is the share of the harvest that is held, until the first picking", () => {
  // 10 to 29 August of 10 August to 4 October, 125 days after setting out.
  const a = advice(state({ applications: [given("2025-05-01")] }));
  expect(a.stakes.harm).toBeCloseTo(19 / 55, 9);
  expect(a.stakes.actBy).toBe("2025-08-10T12:00:00Z");
});

describe("properties", () => {
  const day = fc.integer({ min: -200, max: 29 }).map((n) => addDays(OUT, n));
  const harvestDay = (s: PlantingState): string => {
    const a = answer(s);
    return a.kind === "advice" ? (a.window.to ?? "") : "";
  };
  test("a later application never gives an earlier harvest, a further one neither", () => {
    fc.assert(
      fc.property(day, day, (a, b) => {
        const [first, second] = a <= b ? [a, b] : [b, a];
        const early = harvestDay(state({ applications: [given(first)] }));
        const late = harvestDay(state({ applications: [given(second)] }));
        const both = harvestDay(state({ applications: [given(first), given(second)] }));
        expect(late >= early).toBe(true);
        expect(both).toBe(late);
      }),
    );
  });
  test("a later first picking never asks for an earlier last day to spread", () => {
    fc.assert(
      fc.property(fc.integer({ min: 60, max: 120 }), fc.integer({ min: 0, max: 60 }), (days, more) => {
        const last = (n: number) => {
          const { setOutOn: _, ...seedlings } = planting({
            plannedSetOutOn: OUT,
            daysToMaturity: { ...MATURITY, days: n },
          });
          return line(advice(ahead({ planting: seedlings })), "t_s") as string;
        };
        expect(last(days + more) >= last(days)).toBe(true);
      }),
    );
  });
  test("what may be spread on the last day may be picked on the first", () => {
    const a = advice(ahead());
    const spread = line(a, "t_s") as string;
    const b = advice(ahead({ asOf: "2025-04-20T12:00:00Z", shed: [], applications: [given(spread)] }));
    expect(b.decision.code).toBe("clear-at-harvest");
    expect(line(b, "t_h")).toBe(line(a, "t_p"));
  });
});

test("the example is the worked example of the docs", () => {
  const path = join(import.meta.dirname, "../../docs/examples/planting-raw-manure.json");
  const a = advice(JSON.parse(readFileSync(path, "utf8")));
  expect([a.decision.code, line(a, "t_h"), line(a, "t_p")]).toEqual([
    "hold-harvest",
    "2025-08-29",
    "2025-08-12",
  ]);
});
