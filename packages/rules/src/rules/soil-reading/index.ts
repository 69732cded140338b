import { cautionsFor } from "../../cautions/register.ts";
import { addDays, daysBetween, localDay } from "../../core/days.ts";
import { DomainError, refuse } from "../../core/errors.ts";
import type { AnswerBody, Rule } from "../../core/rule.ts";
import { latestTest } from "../../food/latestTest.ts";
import { chosenGuide } from "../../guides/held.ts";
import type { SoilTest } from "../../states/parts.ts";
import type { BedState } from "../../states/states.ts";
import { type Message, measure, onDay, say } from "../../text/message.ts";
import { cationsOf } from "./cations.ts";
import type { SoilReading } from "./reading.ts";
import { readSalts } from "./salts.ts";
import { stepsOf } from "./steps.ts";
import { isRead, type OfficeGuides, type RefusedValue, readValue } from "./values.ts";
import { writeWorking } from "./working.ts";

/** A test older than this is flagged (common practice: every two to three years). */
const TEST_HOLDS_DAYS = 3 * 365;
/** The plough slice behind the guides' pounds per acre is 6 to 8 in deep (SN-115, SN-119). */
const GUIDE_DEPTH_CM = { low: 15, high: 20 };

/** What a laboratory's soil test says. */
export const soilReadingRule: Rule<"bed"> = {
  id: "soil-reading",
  version: 1,
  question: "What does this soil test say?",
  subject: "bed",
  needs: ["a soil test with the extractant of each value", "what was sampled, how deep, and when"],
  run,
};

function run(state: BedState): AnswerBody {
  const today = localDay(state.asOf, state.site.timeZone);
  const newest = latestTest(state.soilTests, today);
  const chosen = chosenGuide(state.settings.soilGuide, state.guides);
  if (!newest) {
    const missing = {
      field: "soilTests",
      measure: say("soil-reading.missing.test"),
      couldMove: say("soil-reading.missing.test-moves"),
    };
    return { kind: "needs-more", missing: [missing], working: [], estimated: [] };
  }
  return adviceFrom(state, readTest(newest.test, newest.index, { chosen, own: state.guides }), today);
}

function readTest(test: SoilTest, index: number, office: OfficeGuides): SoilReading {
  const path = `soilTests.${index}`;
  if (test.medium !== "mineral-soil") {
    const message = "the guides held here are for mineral soil; they do not read this medium";
    refuse(`${path}.medium`, message, "mineral-soil", test.medium);
  }
  const cations = cationsOf(test);
  const context = { waterPh: test.waterPh, cecCmolPerKg: test.cecCmolPerKg ?? cations?.cecCmolPerKg };
  const values = test.values.map((value, i) =>
    readValue(test, value, `${path}.values.${i}`, context, office),
  );
  const read = values.filter(isRead);
  const refused = values.filter((v): v is RefusedValue => !isRead(v));
  const salts = test.ec && readSalts(test.ec);
  const something = read.length > 0 || test.waterPh !== undefined || salts?.kind === "read";
  if (!something) throw new DomainError(problemsOf(refused, salts, path, test));
  return { test, read, refused, cations, salts };
}

/** Nothing could be read: every reason at once, so that the report is asked for only once. */
function problemsOf(refused: RefusedValue[], salts: SoilReading["salts"], path: string, test: SoilTest) {
  const problems = refused.map((r) => r.problem);
  if (salts?.kind === "no-extraction") {
    const message = "must be named: electrical conductivity without its extraction cannot be read";
    problems.push({ field: `${path}.ec.extraction`, message, accepted: "saturated-paste, 1:1, 1:2, 1:5" });
  }
  if (salts?.kind === "no-bound") {
    const message = "no published bound is held for this extraction";
    problems.push({
      field: `${path}.ec.extraction`,
      message,
      accepted: "saturated-paste, 1:2",
      received: test.ec?.extraction,
    });
  }
  if (problems.length === 0) {
    problems.push({
      field: `${path}.values`,
      message: "the test holds no value to read",
      accepted: "at least one",
    });
  }
  return problems;
}

function adviceFrom(state: BedState, reading: SoilReading, today: string): AnswerBody {
  const { test, read, refused } = reading;
  const short = read.filter((r) => r.read.response === "responds");
  const w = writeWorking(reading);
  const over = read.filter((r) => r.read.optimum === "above");
  return {
    kind: "advice",
    decision: {
      code: short.length > 0 ? "short" : over.length > 0 ? "enough-and-over" : "enough",
      text: say("soil-reading.decision", { short: short.length, read: read.length, refused: refused.length }),
    },
    steps: stepsOf(reading),
    window: {
      from: test.sampledOn,
      to: addDays(test.sampledOn, TEST_HOLDS_DAYS),
      endsBy: say("soil-reading.ends"),
    },
    stakes: {
      // Common practice: a nutrient that is short matters more than one that is not, and nothing here is urgent.
      harm: short.length > 0 ? 0.2 : 0.05,
      reason: say(short.length > 0 ? "soil-reading.stakes.short" : "soil-reading.stakes.enough"),
      actBy: null,
    },
    working: w.lines,
    estimated: w.estimated,
    evidence: [
      "soil-reading.extractant",
      "soil-reading.guides",
      "soil-reading.ph",
      "soil-reading.salts",
      "soil-reading.cec",
    ],
    grade: "moderate",
    limits: limitsOf(reading, today),
    cautions: cautionsFor("soil-no-conversion"),
    wouldChange: [
      ...(daysBetween(test.sampledOn, today) > TEST_HOLDS_DAYS ? [say("soil-reading.change.new-test")] : []),
      ...(refused.length > 0 ? [say("soil-reading.change.extractant")] : []),
      ...(reading.cations?.cecIsMinimum ? [say("soil-reading.change.acidity")] : []),
      ...(state.settings.soilGuide === undefined ? [say("soil-reading.change.guide")] : []),
    ],
    cases: [],
    expected: null,
    amounts: { short: short.length, read: read.length, refused: refused.length, ph: test.waterPh ?? 0 },
    charts: [],
  };
}

function limitsOf({ test, read }: SoilReading, today: string): Message[] {
  const taken = new Map(read.map((r) => [r.read.guide.id, r.read.guide]));
  const limits = [...taken.values()].map((g) =>
    say(g.status === "seen" ? "soil-reading.limit.guide" : "soil-reading.limit.unverified", {
      guide: g.title,
      region: g.region,
    }),
  );
  if (daysBetween(test.sampledOn, today) > TEST_HOLDS_DAYS) {
    limits.push(
      say("soil-reading.limit.old", { day: onDay(test.sampledOn), year: test.sampledOn.slice(0, 4) }),
    );
  }
  if (test.depthCm < GUIDE_DEPTH_CM.low || test.depthCm > GUIDE_DEPTH_CM.high) {
    limits.push(say("soil-reading.limit.depth", { depth: measure(test.depthCm, "cm") }));
  }
  return limits;
}
