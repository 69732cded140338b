import { cautionsFor } from "../../cautions/register.ts";
import { addDays, daysBetween, localDay } from "../../core/days.ts";
import { refuse } from "../../core/errors.ts";
import type { AdviceBody, AnswerBody, Rule } from "../../core/rule.ts";
import { chosenGuide } from "../../guides/held.ts";
import { TEST_HOLDS_DAYS } from "../../soil-acidity/soil.ts";
import type { SoilTest } from "../../states/parts.ts";
import type { BedState } from "../../states/states.ts";
import { type Message, measure, onDay, say, wordOf } from "../../text/message.ts";
import { evidenceOf } from "./evidence.ts";
import { harmOf } from "./harm.ts";
import { rangesOf } from "./ranges.ts";
import { type PlacedTest, readNewest, type SoilReading } from "./reading.ts";
import { stepsOf } from "./steps.ts";
import { trendCharts, trendsOf } from "./trend.ts";
import { writeWorking } from "./working.ts";

/** The plough slice behind the guides' pounds per acre is 6 to 8 in deep (SN-115, SN-119). */
const GUIDE_DEPTH_CM = { low: 15, high: 20 };

/** What a laboratory's soil test says. */
export const soilReadingRule: Rule<"bed"> = {
  id: "soil-reading",
  version: 3,
  question: "What does this soil test say?",
  subject: "bed",
  needs: [
    "a soil test with the extractant of each value",
    "what was sampled, how deep, and when",
    "older tests by the same extractant, to set beside it",
    "a guide of your own region, where the office has one",
  ],
  run,
};

function run(state: BedState): AnswerBody {
  const today = localDay(state.asOf, state.site.timeZone);
  const newestFirst = inOrder(state.soilTests, today);
  const chosen = chosenGuide(state.settings.soilGuide, state.guides);
  if (newestFirst.length === 0) {
    const missing = {
      field: "soilTests",
      measure: say("soil-reading.missing.test"),
      couldMove: say("soil-reading.missing.test-moves"),
    };
    return { kind: "needs-more", missing: [missing], working: [], estimated: [] };
  }
  const reading = readNewest(newestFirst, { chosen, own: state.guides });
  return adviceFrom(state, reading, newestFirst, today);
}

/** Newest first. Refuses a sample from a day to come. */
function inOrder(tests: readonly SoilTest[], today: string): PlacedTest[] {
  for (const [i, t] of tests.entries()) {
    if (t.sampledOn <= today) continue;
    const message = "is after the day the advice is for";
    refuse(`soilTests.${i}.sampledOn`, message, `at most ${today}`, t.sampledOn);
  }
  return tests
    .map((test, index) => ({ test, index }))
    .sort((a, b) => (a.test.sampledOn < b.test.sampledOn ? 1 : a.test.sampledOn > b.test.sampledOn ? -1 : 0));
}

function adviceFrom(
  state: BedState,
  reading: SoilReading,
  newestFirst: readonly PlacedTest[],
  today: string,
): AnswerBody {
  const { test, read, refused } = reading;
  const short = read.filter((r) => r.read.response === "responds");
  const over = read.filter((r) => r.read.optimum === "above");
  const trends = trendsOf(reading, newestFirst);
  const harm = harmOf(read);
  const w = writeWorking(reading, harm);
  return {
    kind: "advice",
    decision:
      read.length === 0
        ? nothingRead(reading)
        : {
            code: short.length > 0 ? "short" : over.length > 0 ? "enough-and-over" : "enough",
            text: say("soil-reading.decision", {
              short: short.length,
              read: read.length,
              refused: refused.length,
            }),
          },
    steps: stepsOf(reading, trends, today, state.bed.soil),
    window: {
      from: test.sampledOn,
      to: addDays(test.sampledOn, TEST_HOLDS_DAYS),
      endsBy: say("soil-reading.ends"),
    },
    stakes: {
      harm: harm?.value ?? 0,
      reason: say(`soil-reading.stakes.${harm ? "short" : read.length === 0 ? "nothing-read" : "enough"}`),
      actBy: null,
    },
    working: w.lines,
    estimated: w.estimated,
    evidence: evidenceOf(reading),
    grade: "moderate",
    limits: limitsOf(reading, today),
    cautions: cautionsFor("soil-no-conversion"),
    wouldChange: wouldChange(state, reading, today),
    cases: [],
    expected: null,
    amounts: { short: short.length, read: read.length, refused: refused.length, ph: test.waterPh ?? 0 },
    charts: trendCharts(trends, reading),
    ranges: rangesOf(reading),
  };
}

/** Its pH or its salts were read, or the test would have been refused; of its nutrients none. */
function nothingRead({ test, refused, salts }: SoilReading): AdviceBody["decision"] {
  const ph = test.waterPh !== undefined && test.medium === "mineral-soil";
  const what = ph && salts?.kind === "read" ? "ph-and-salts" : ph ? "ph" : "salts";
  return {
    code: "nothing-read",
    text: say("soil-reading.decision.nothing-read", {
      refused: refused.length,
      what: wordOf(`soil-reading.said.${what}`),
    }),
  };
}

const isOld = (test: SoilTest, today: string) => daysBetween(test.sampledOn, today) > TEST_HOLDS_DAYS;
const isOffDepth = (test: SoilTest) =>
  test.depthCm < GUIDE_DEPTH_CM.low || test.depthCm > GUIDE_DEPTH_CM.high;

function limitsOf({ test, read }: SoilReading, today: string): Message[] {
  const taken = new Map(read.map((r) => [r.read.guide.id, r.read.guide]));
  const limits: Message[] = [];
  for (const { status, title, region, source, note } of taken.values()) {
    const said = { guide: title, region };
    if (status === "office")
      limits.push(say("soil-reading.limit.office", { ...said, source: source.locator ?? "" }));
    else
      limits.push(
        say(status === "seen" ? "soil-reading.limit.guide" : "soil-reading.limit.unverified", said),
      );
    if (note !== undefined) limits.push(say("soil-reading.limit.note", { guide: title, note }));
  }
  for (const { value, read: by } of read) {
    const note = by.guide.nutrients[value.nutrient]?.note;
    if (note !== undefined) limits.push(say("soil-reading.limit.note", { guide: by.guide.title, note }));
  }
  if (isOld(test, today)) {
    limits.push(
      say("soil-reading.limit.old", { day: onDay(test.sampledOn), year: test.sampledOn.slice(0, 4) }),
    );
  }
  if (isOffDepth(test)) limits.push(say("soil-reading.limit.depth", { depth: measure(test.depthCm, "cm") }));
  return limits;
}

function wouldChange(state: BedState, { test, refused, cations }: SoilReading, today: string): Message[] {
  const unnamed = refused.some((r) => r.why === "no-extractant");
  const misfit = refused.some((r) => r.why === "guide-does-not-fit");
  const unverified = refused.some((r) => r.why === "only-unverified");
  return [
    ...(isOld(test, today) ? [say("soil-reading.change.new-test")] : []),
    ...(isOffDepth(test) ? [say("soil-reading.change.depth")] : []),
    ...(unnamed ? [say("soil-reading.change.extractant")] : []),
    ...(misfit || unverified ? [say("soil-reading.change.fitting-guide")] : []),
    ...(cations?.cecIsMinimum ? [say("soil-reading.change.acidity")] : []),
    ...(state.settings.soilGuide === undefined ? [say("soil-reading.change.guide")] : []),
  ];
}
