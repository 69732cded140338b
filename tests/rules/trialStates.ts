import {
  advise,
  type Plot,
  type PlotValue,
  type ResponseKind,
  type Trial,
  type TrialState,
} from "@pith/rules";
import { expect } from "vitest";

type Given = number | PlotValue["missing"] | null;

/** A trial of one factor whose levels are called by their letters: plots from rows of block, level and value. */
export function trialState(
  rows: readonly (readonly [block: number, level: string, value: Given])[],
  change: Partial<Trial> & { kind?: ResponseKind } = {},
): TrialState {
  const { kind = "marketable-kg", ...rest } = change;
  const levels = [...new Set(rows.map(([, level]) => level))].sort();
  const plots: Plot[] = rows.map(([block, level], i) => ({
    id: `plot-${i + 1}`,
    number: i + 1,
    ...(rest.design === "completely-randomised" ? {} : { block }),
    levels: [level],
    bedId: "north",
    fromM: 3 * i,
    lengthM: 2.5,
  }));
  return {
    kind: "trial",
    version: 1,
    asOf: "2026-10-05T15:00:00Z",
    settings: {},
    timeZone: "America/New_York",
    trial: {
      id: "t",
      design: "randomised-blocks",
      seed: 7,
      factors: [{ id: "f", levels: levels.map((id) => ({ id })) }],
      blocks: rows.length / levels.length,
      plots,
      responses: [{ id: "y", kind, better: "more" }],
      values: rows.flatMap(([, , value], i): PlotValue[] =>
        value === null
          ? []
          : [
              {
                plotId: `plot-${i + 1}`,
                responseId: "y",
                on: "2026-09-20",
                ...(typeof value === "number" ? { value } : { missing: value }),
              },
            ],
      ),
      alpha: 0.05,
      startedOn: "2026-05-28",
      endedOn: "2026-09-30",
      ...rest,
    },
  };
}

/** The rule's advice. */
export function adviceOn(state: TrialState) {
  const [answer] = advise(JSON.parse(JSON.stringify(state)));
  if (answer?.kind !== "advice") throw new Error(`answered ${answer?.kind}: ${JSON.stringify(answer)}`);
  return answer;
}
export function refusalOf(state: TrialState) {
  const [answer] = advise(JSON.parse(JSON.stringify(state)));
  if (answer?.kind !== "refused") throw new Error(`answered ${answer?.kind}`);
  return answer.problems[0];
}

/** The rows of one of its tables. */
export function rowsOf(advice: ReturnType<typeof adviceOn>, id: string) {
  const table = advice.table?.find((t) => t.id === id);
  expect(table?.id).toBe(id);
  return table?.rows ?? [];
}
