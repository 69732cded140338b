import { readFileSync } from "node:fs";
import type { WhatIfState } from "@pith/rules";
import { bench, describe } from "vitest";
import { bundledWhatIf } from "../support/bundledRules.ts";

/**
 * One move of a handle: every rule that is asked, with its words, working and charts. Stated limit: 50 ms median, beside
 * reading the same states from JSON in the same run, because the machine is shared.
 */
const LIMIT_MS = 50;
const { whatIfOf } = await bundledWhatIf();

describe.each([
  ["before setting out", "what-if-before-setting-out"],
  ["on a standing bed", "what-if-on-a-standing-bed"],
])(`what-if %s: one move (limit ${LIMIT_MS} ms median)`, (where, name) => {
  const text = readFileSync(new URL(`../../../docs/examples/${name}.json`, import.meta.url), "utf8");
  const state: WhatIfState = JSON.parse(text);
  const desk = whatIfOf(state);
  let moves = 0;
  const times: number[] = [];
  bench("reading the states from JSON", () => {
    JSON.parse(text);
  });
  bench(
    "one move",
    () => {
      moves += 1;
      const start = performance.now();
      // Never the same move twice, so that nothing that was kept of the last one answers.
      desk.explore({
        ...state.choices,
        k2oKgPerHa: 5 * (moves % 80),
        withheldPct: 2 * (1 + (moves % 24)),
        buriedStemCm: (moves % 20) / 2,
        setOutOn: `2026-06-${String(1 + (moves % 30)).padStart(2, "0")}`,
      });
      times.push(performance.now() - start);
    },
    {
      time: 1500,
      teardown: (_, mode) => {
        if (mode !== "run") return;
        const medianMs = times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)] ?? Number.NaN;
        process.stdout.write(`what-if ${where}: one move ${medianMs.toFixed(1)} ms (limit ${LIMIT_MS})\n`);
        if (medianMs > LIMIT_MS) throw new Error(`a move takes ${medianMs.toFixed(1)} ms`);
      },
    },
  );
});
