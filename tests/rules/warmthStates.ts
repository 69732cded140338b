import {
  type Advice,
  type Answer,
  advise,
  claims,
  type Message,
  type PlantingState,
  render,
  sources,
} from "@pith/rules";
import { expect } from "vitest";

/** A planting with nothing known about its weather; each test adds what it is about. Invented. */
export function planting(change: Partial<PlantingState> = {}): PlantingState {
  return {
    kind: "planting",
    version: 1,
    asOf: "2026-05-15T12:00:00Z",
    settings: {},
    site: { latitudeDeg: 45, longitudeDeg: -90, elevationM: 300, timeZone: "America/Chicago" },
    bed: {
      id: "bed",
      kind: "ground",
      lengthM: 30,
      widthM: 1,
      spacingM: 1.8,
      soil: {},
      covers: [],
      mulches: [],
      certification: "none",
    },
    planting: {
      id: "planting",
      species: "annuum",
      marketType: "bell",
      sownOn: "2026-03-10",
      plants: 100,
      rowsPerBed: 2,
      plantSpacingM: 0.4,
    },
    notes: [],
    weather: [],
    plantTemperatures: [],
    soilTests: [],
    feeding: { method: "drip", credits: [] },
    shed: [],
    applications: [],
    unanswered: [],
    ...change,
  };
}

/** Extremes of each day of each year, by the year's number in the series and the day's index in the year. */
export function climatology(
  years: number,
  day: (year: number, dayIndex: number) => { tMinC: number; tMaxC: number },
): NonNullable<PlantingState["climatology"]> {
  return {
    stationId: "station",
    years: Array.from({ length: years }, (_, y) => {
      const days = Array.from({ length: 366 }, (_, d) => day(y, d));
      return { year: 2026 - years + y, tMinC: days.map((d) => d.tMinC), tMaxC: days.map((d) => d.tMaxC) };
    }),
  };
}

/** Outdoor days from a first day on. */
export const days = (first: string, extremes: { tMinC: number; tMaxC: number }[]): PlantingState["weather"] =>
  extremes.map((e, i) => ({ date: dayAfter(first, i), ...e }));

export const dayAfter = (day: string, n: number): string =>
  new Date(Date.parse(`${day}T00:00:00Z`) + n * 86_400_000).toISOString().slice(0, 10);

/** One rule's answer. */
export function answer(ruleId: string, state: PlantingState): Answer {
  const found = advise(state).find((a) => a.rule.id === ruleId);
  if (!found) throw new Error(`no rule ${ruleId}`);
  return found;
}

/** One rule's advice; fails, saying what came, where there is another kind of answer. */
export function advice(ruleId: string, state: PlantingState): Advice {
  const found = answer(ruleId, state);
  if (found.kind !== "advice") throw new Error(`${ruleId} answered ${JSON.stringify(found)}`);
  expectSound(found);
  return found;
}

/** What a working line says. */
export const line = (a: Advice, symbol: string): unknown => a.working.find((l) => l.symbol === symbol)?.value;

export const stepKeys = (a: Advice): string[] => a.steps.map((s) => s.text.key);

/** Every text can be said, every source and claim stands in the register, and the standing caution is last. */
function expectSound(a: Advice): void {
  const messages: Message[] = [
    a.decision.text,
    a.window.endsBy,
    a.stakes.reason,
    ...a.steps.map((s) => s.text),
    ...a.limits,
    ...a.wouldChange,
    ...a.cases.flatMap((c) => [c.when, c.decision, ...c.steps.map((s) => s.text)]),
    ...a.charts.flatMap((c) => [c.title, c.x.name, c.y.name, ...c.series.map((s) => s.name)]),
  ];
  for (const message of messages) {
    for (const units of ["metric", "us"] as const) {
      expect(render(message, { language: "en", units })).not.toMatch(/NaN|undefined|Infinity|^$/);
    }
  }
  const keys = [...a.working, ...a.estimated].flatMap((l) => (l.source ? [l.source.key] : []));
  expect(keys.filter((key) => !sources.has(key))).toEqual([]);
  expect(a.evidence.filter((id) => claims.get(id)?.rule !== a.rule.id)).toEqual([]);
  expect(a.cautions.at(-1)?.id).toBe("local-rules-first");
  expect(a.stakes.harm).toBeGreaterThanOrEqual(0);
  expect(a.stakes.harm).toBeLessThanOrEqual(1);
}
