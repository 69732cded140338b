import { Working } from "../core/working.ts";
import type { DateRange } from "../growth/dates.ts";
import { leafWindowOf } from "../rules/topping/leaves.ts";
import { seasonOf } from "../rules/topping/season.ts";
import { ACCEPTED_RISK, DELAY_DAYS } from "../rules/topping/thresholds.ts";
import type { PlantingState } from "../states/states.ts";
import type { ToppedStep } from "../states/whatIf.ts";
import { type Message, measure, onDay, say } from "../text/message.ts";
import { type Saying, saying } from "./saying.ts";
import { todayOf } from "./subjects.ts";

const DELAY = { key: "acta-hort-1060-249", locator: "abstract" };

/** When the first fruit would be ripe with tips taken of none, half or all of the plants, against the first frost. */
export function sayTopping(state: PlantingState, topped: ToppedStep): Saying {
  const window = leafWindowOf(state, todayOf(state));
  if (!window) return saying();
  const season = seasonOf(state, window.forecast.growth);
  const w = new Working();
  const ways = { none: ["left"], half: ["left", "taken"], all: ["taken"] } as const;
  const said = ways[topped].flatMap((way) => {
    const chance = way === "left" ? season.chanceLeft : season.chanceTaken;
    w.line(
      `t ${way}`,
      `first ripe fruit, tip ${way}`,
      way === "taken" ? `${DELAY_DAYS.counted} days at 24 C later` : "heat sum of the stage",
      season[way].likely,
      "",
    );
    w.line(
      `P ${way}`,
      `chance that it is ripe before frost, tip ${way}`,
      `${season.years} years`,
      chance,
      "fraction",
    );
    return [ripeSaid(way, season[way]), ...(chance === null ? [] : [chanceSaid(way, chance)])];
  });
  if (topped !== "none") {
    w.line(
      "delay",
      "days by which fruit came later on plants cut back",
      "the longer of two genotypes",
      DELAY_DAYS.counted,
      "days",
      DELAY,
    );
  }
  return saying(said, { working: w });
}

function ripeSaid(way: "left" | "taken", { low, likely, high }: DateRange): Message {
  if (likely === null) return say(`what-if.topping.never-${way}`);
  if (low === null || high === null) return say(`what-if.topping.late-${way}`, { likely: onDay(likely) });
  return say(`what-if.topping.ripe-${way}`, { low: onDay(low), likely: onDay(likely), high: onDay(high) });
}

const chanceSaid = (way: "left" | "taken", chance: number): Message =>
  say(`what-if.topping.chance-${way}`, {
    chance: measure(100 * chance, "pct"),
    wanted: measure(100 * (1 - ACCEPTED_RISK), "pct"),
  });
