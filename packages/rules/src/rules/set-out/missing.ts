import type { NeedsMoreBody } from "../../core/rule.ts";
import { measure, say } from "../../text/message.ts";
import { shareOfYears } from "../../warmth/shareOfYears.ts";
import { FEWEST_YEARS } from "./line.ts";

/** Fewer than eight years: how wide the risk stays, against what eight years would leave. */
export function missingYears(n: number): NeedsMoreBody {
  const high = n === 0 ? 1 : shareOfYears(0, n).high;
  const highWithEnough = shareOfYears(0, FEWEST_YEARS).high;
  return {
    kind: "needs-more",
    missing: [
      {
        field: "climatology.years",
        measure: say("set-out.missing.years", { n, fewest: FEWEST_YEARS }),
        couldMove: say("set-out.missing.years-move", {
          n,
          high: measure(100 * high, "pct"),
          enough: measure(100 * highWithEnough, "pct"),
        }),
      },
    ],
    working: [
      {
        symbol: "p_high",
        meaning: "upper end of the risk if no year in the series had been too cold",
        expression: n === 0 ? "no years: anything up to 1" : `80 % score interval of 0 in ${n} years`,
        value: high,
        unit: "fraction",
        source: { key: "wilson-1927" },
      },
    ],
    estimated: [],
  };
}

/** A heated house: its heater decides, and nothing outside tells. */
export function missingHeat(): NeedsMoreBody {
  return {
    kind: "needs-more",
    missing: [
      {
        field: "bed.covers",
        measure: say("set-out.missing.heat"),
        couldMove: say("set-out.missing.heat-move"),
      },
    ],
    working: [],
    estimated: [],
  };
}
