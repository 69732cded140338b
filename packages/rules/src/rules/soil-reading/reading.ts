import { DomainError, type FieldProblem, refuse } from "../../core/errors.ts";
import type { SoilTest } from "../../states/parts.ts";
import { type Cations, cationsOf } from "./cations.ts";
import { readSalts, type SaltReading } from "./salts.ts";
import {
  isRead,
  type OfficeGuides,
  type ReadValue,
  type RefusedValue,
  readValue,
  type Value,
} from "./values.ts";

/** Everything read out of one test. */
export interface SoilReading {
  test: SoilTest;
  read: ReadValue[];
  refused: RefusedValue[];
  /** Not read into classes by anybody, and used elsewhere: nitrate in feeding, sodium in the sum of cations. */
  kept: Value[];
  cations: Cations | undefined;
  salts: SaltReading | undefined;
}

/** A test together with its place in the state. */
export interface PlacedTest {
  test: SoilTest;
  index: number;
}

const KEPT = new Set<Value["nutrient"]>(["NO3-N", "Na"]);

/**
 * Reads the newest test that has something to read, so that a nitrate quick test does not hide the spring's full one.
 * Where none has, the newest is refused with every reason at once, so that the report is asked for only once.
 */
export function readNewest(newestFirst: readonly PlacedTest[], office: OfficeGuides): SoilReading {
  let firstProblems: FieldProblem[] | undefined;
  for (const placed of newestFirst) {
    const reading = readTest(placed, office);
    if (hasSomething(reading)) return reading;
    firstProblems ??= problemsOf(reading, placed);
  }
  throw new DomainError(firstProblems ?? []);
}

const hasSomething = ({ read, test, salts }: SoilReading) =>
  read.length > 0 || (test.waterPh !== undefined && test.medium === "mineral-soil") || salts?.kind === "read";

function readTest({ test, index }: PlacedTest, office: OfficeGuides): SoilReading {
  const path = `soilTests.${index}`;
  const own = [...(office.own ?? []), ...(office.chosen ? [office.chosen] : [])];
  if (test.medium !== "mineral-soil" && !own.some((guide) => guide.medium === test.medium)) {
    const message = "the guides held here are for mineral soil; they do not read this medium";
    refuse(`${path}.medium`, message, "mineral-soil", test.medium);
  }
  const cations = cationsOf(test);
  const context = { waterPh: test.waterPh, cecCmolPerKg: test.cecCmolPerKg ?? cations?.cecCmolPerKg };
  const read: ReadValue[] = [];
  const refused: RefusedValue[] = [];
  const kept: Value[] = [];
  for (const [i, value] of test.values.entries()) {
    const answer = readValue(test, value, `${path}.values.${i}`, context, office);
    if (isRead(answer)) read.push(answer);
    else if (answer.why === "no-guide" && KEPT.has(value.nutrient)) kept.push(value);
    else refused.push(answer);
  }
  return { test, read, refused, kept, cations, salts: test.ec && readSalts(test.ec) };
}

function problemsOf({ test, refused, salts }: SoilReading, { index }: PlacedTest): FieldProblem[] {
  const path = `soilTests.${index}`;
  const problems = refused.map((r) => r.problem);
  if (salts?.kind === "no-extraction") {
    const message = "must be named: electrical conductivity without its extraction cannot be read";
    problems.push({ field: `${path}.ec.extraction`, message, accepted: "saturated-paste, 1:1, 1:2, 1:5" });
  }
  if (salts?.kind === "no-bound") {
    problems.push({
      field: `${path}.ec.extraction`,
      message: "no published bound is held for this extraction",
      accepted: "saturated-paste, 1:2",
      received: test.ec?.extraction,
    });
  }
  if (problems.length === 0) {
    const message = "the test holds no value to read";
    problems.push({ field: `${path}.values`, message, accepted: "at least one" });
  }
  return problems;
}
