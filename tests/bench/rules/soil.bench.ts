import { bench, describe } from "vitest";
import { recommendationOf } from "../../../packages/rules/src/guides/recommend.ts";
import { guides } from "../../../packages/rules/src/guides/register.ts";
import { soilReadingRule } from "../../../packages/rules/src/rules/soil-reading/index.ts";
import type { SoilTest } from "../../../packages/rules/src/states/parts.ts";
import type { BedState } from "../../../packages/rules/src/states/states.ts";

/**
 * A laboratory's whole test of ten nutrients, pH, buffer, salts and organic matter: read by the rule, every class and
 * range with it, and a rate for each nutrient by a guide's grid; beside reading the same states as JSON in the same run.
 * Stated limit: 10,000 tests a second on one core. What counts is the core's own time: the machine is shared, and the clock
 * also runs while others have the core. The ratio to reading JSON in the same run is printed beside it.
 */
const TESTS = 1000;
const LIMIT_PER_SECOND = 10_000;

const value = (nutrient: SoilTest["values"][number]["nutrient"], mgPerKg: number) =>
  ({ nutrient, extractant: "mehlich-3", mgPerKg }) as const;

/** Contents that wander over all classes from test to test. */
const spread = (middle: number, i: number, step: number) => middle * (0.2 + ((i * step) % 97) / 50);

const states = Array.from(
  { length: TESTS },
  (_, i): BedState => ({
    kind: "bed",
    version: 1,
    asOf: "2025-06-15T12:00:00Z",
    settings: i % 2 === 0 ? {} : { soilGuide: "mid-atlantic-peppers" },
    site: { latitudeDeg: 45, longitudeDeg: -93, elevationM: 250, timeZone: "America/Chicago" },
    bed: {
      id: "bed-a",
      kind: "ground",
      lengthM: 50,
      widthM: 0.8,
      spacingM: 1.6,
      soil: { texture: "loam" },
      covers: [],
      mulches: [],
      certification: "none",
    },
    soilTests: [
      {
        id: "test-a",
        sampledOn: "2025-04-10",
        depthCm: 17,
        medium: "mineral-soil",
        waterPh: 5 + ((i * 7) % 25) / 10,
        bufferPh: { method: "mehlich", value: 6.4 },
        organicMatterPct: 3,
        ec: { dSPerM: 0.4, extraction: "1:2" },
        values: [
          value("P", spread(40, i, 3)),
          value("K", spread(80, i, 5)),
          value("Ca", spread(700, i, 7)),
          value("Mg", spread(70, i, 11)),
          value("Zn", spread(3, i, 13)),
          value("Cu", spread(1, i, 17)),
          value("Mn", spread(20, i, 19)),
          value("Fe", spread(80, i, 23)),
          value("B", spread(0.8, i, 29)),
          value("S", spread(12, i, 31)),
        ],
      },
    ],
  }),
);
const texts = states.map((state) => JSON.stringify(state));
const grid = guides.get("mid-atlantic-peppers");
if (!grid) throw new Error("the guide with a grid is not held");

/** Tests whose phosphorus got a rate: what keeps the loop honest. */
function readAll(): number {
  let rated = 0;
  for (const state of states) {
    const answer = soilReadingRule.run(state);
    if (answer.kind !== "advice") throw new Error(`a test was not read: ${answer.kind}`);
    for (const range of answer.ranges ?? []) {
      const soilClass = grid?.nutrients.P?.classes[range.class]?.class;
      if (grid && range.id === "P" && soilClass && recommendationOf(grid, "P", soilClass)) rated++;
    }
  }
  return rated;
}
// Of the five classes all but very low have a rate (SN-235).
const rated = readAll();
if (!(rated > TESTS / 2 && rated < TESTS)) throw new Error(`${rated} of ${TESTS} tests got a rate`);

/** Milliseconds that the core worked for this process. */
function coreMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

describe(`${TESTS} soil tests read and rated (limit ${LIMIT_PER_SECOND} a second on one core)`, () => {
  let times: number[] = [];
  let jsonMs = Number.NaN;
  const median = () => times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)] as number;
  const timed = (name: string, run: () => unknown, then: (medianMs: number) => void) =>
    bench(
      name,
      () => {
        const start = coreMs();
        run();
        times.push(coreMs() - start);
      },
      {
        setup: () => {
          times = [];
        },
        teardown: (_, mode) => {
          if (mode === "run") then(median());
        },
      },
    );
  timed(
    "read the states as JSON",
    () => texts.map((text) => JSON.parse(text)),
    (ms) => {
      jsonMs = ms;
    },
  );
  timed("soil-reading and recommendation", readAll, (ms) => {
    const perSecond = (1000 * TESTS) / ms;
    const ofLimit = (perSecond / LIMIT_PER_SECOND).toFixed(1);
    console.info(
      `${Math.round(perSecond)} tests a second of one core, ${ofLimit} times the limit; ${(ms / jsonMs).toFixed(1)} times reading JSON`,
    );
  });
});
