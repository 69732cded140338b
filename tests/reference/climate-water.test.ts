import { quantities } from "@pith/rules";
import { describe, expect, test } from "vitest";
import { airPressureKpa } from "../../packages/rules/src/quantities/climate/airPressure.ts";
import { psychrometricConstantKpaPerC } from "../../packages/rules/src/quantities/climate/psychrometricConstant.ts";
import {
  cabindaRows,
  cropCoefficientRows,
  evapotranspirationRows,
  heatAndRunTimeRows,
  type ReferenceRow,
  rootZoneRows,
  tableCellRows,
  yieldRows,
} from "./climate-water.rows.ts";

const within = (id: string, name: string, got: unknown, [value, tolerance]: readonly [number, number]) => {
  const off = Math.abs(Number(got) - value);
  expect(off, `${id}: ${name} is ${got}, published ${value}`).toBeLessThanOrEqual(tolerance + 1e-12);
};

function check(row: ReferenceRow): void {
  const quantity = quantities[row.quantity];
  if (!quantity) throw new Error(`no quantity ${row.quantity}`);
  const answer = quantity.compute(row.inputs);
  for (const [name, expected] of Object.entries(row.expect)) {
    const got = name.startsWith("~")
      ? answer.working.find((line) => line.symbol === name.slice(1))?.value
      : answer.value[name];
    within(row.id, name, got, expected);
  }
}

const titleOf = (row: ReferenceRow): string => {
  const numbers = Object.entries(row.expect).map(
    ([name, [value, tolerance]]) => `${name} ${value} ± ${tolerance}`,
  );
  return `${row.id} (${row.status}; ${row.source}): ${row.quantity}: ${numbers.join(", ")}`;
};

const groups: Record<string, ReferenceRow[]> = {
  "reference evapotranspiration": evapotranspirationRows,
  "a published monthly table": cabindaRows,
  "crop coefficient": cropCoefficientRows,
  "root zone and stress": rootZoneRows,
  "yield, salt and leaching": yieldRows,
  "heat, run time and frost": heatAndRunTimeRows,
  "table cells": tableCellRows,
};

for (const [name, rows] of Object.entries(groups)) {
  describe(name, () => {
    for (const row of rows) test(titleOf(row), () => check(row));
  });
}

describe("table cells of gamma by height (FAO-56 Annex 2 Table 2.2, tolerance 0.0005)", () => {
  const cells = [
    [0, 0.067],
    [500, 0.064],
    [1000, 0.06],
    [2000, 0.053],
    [3000, 0.047],
    [4000, 0.041],
  ] as const;
  test.each(cells)("2.4 gamma at %d m: %d kPa/C", (elevationM, gamma) => {
    within("2.4", "gamma", psychrometricConstantKpaPerC(airPressureKpa(elevationM)), [gamma, 0.0005]);
  });
});
