import { render, type Spray } from "@pith/rules";
import { describe, expect, test } from "vitest";
import { advice, planting, stepKeys } from "./warmthStates.ts";

/** Advice on a bed that a label closes waits for the label: 40 CFR 170.112(a), nobody enters during the re-entry interval. */

const spray = (at: string, reEntryHours: number): Spray => ({
  at,
  target: "insects",
  reEntryHours,
  preHarvestDays: 7,
});
// The state stands at 15 May 2026, 14:00 UTC, which is 9:00 in the morning in Chicago.
const asOf = "2026-05-15T14:00:00Z";
const depth = (sprays: Spray[]) => advice("setting-depth", planting({ asOf, sprays }));

describe("a bed that was sprayed", () => {
  test("48 hours from 8:00 yesterday: closed until 8:00 tomorrow, and everything waits for that day", () => {
    const a = depth([spray("2026-05-14T13:00:00Z", 48)]);
    expect(stepKeys(a)[0]).toBe("closed.step");
    expect(render(a.steps[0]?.text ?? { key: "", params: {} }, { language: "en", units: "metric" })).toBe(
      "First wait: the bed is closed after spraying until May 16, 08:00. Nobody goes in before, for this or anything else.",
    );
    expect(a.window.from).toBe("2026-05-16");
    expect(a.cautions[0]).toMatchObject({ id: "bed-closed", severity: "danger" });
  });

  test("an interval that has passed changes nothing: the same bytes as without a spray", () => {
    expect(JSON.stringify(depth([spray("2026-05-14T01:00:00Z", 12)]))).toBe(JSON.stringify(depth([])));
  });

  test("what was decided stays decided; of two sprayings the longer interval holds", () => {
    const open = depth([]);
    const closed = depth([spray("2026-05-15T12:00:00Z", 12), spray("2026-05-15T00:00:00Z", 72)]);
    expect(closed.decision).toEqual(open.decision);
    expect(closed.window.from).toBe("2026-05-17");
    expect(closed.steps.slice(1)).toEqual(open.steps);
  });
});
