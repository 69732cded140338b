import { addDays } from "@pith/rules";
import type { Drawn } from "./drawn.ts";

/** Before this hour a cold hour belongs to the night that began the evening before. */
const NOON = "12";

/**
 * Nights with an hour below what the plants may have, measured or reckoned at the plants, as the record of cold drew them;
 * a night is named by the evening it begins.
 */
export function coldNightsOf(drawn: Drawn[]): string[] {
  const answer = drawn.find((one) => one.ruleId === "cold-record")?.answer;
  if (answer?.kind !== "advice") return [];
  const series = answer.charts.find((chart) => chart.id === "hours-at-plants")?.series ?? [];
  const floorC = series.find((one) => one.id === "floor")?.points[0]?.[1];
  if (typeof floorC !== "number") return [];
  const nights = series
    .filter((one) => one.id === "measured" || one.id === "reconstructed")
    .flatMap((one) => one.points)
    .flatMap(([hour, valueC]) => {
      if (valueC === null || valueC >= floorC || typeof hour !== "string") return [];
      const day = hour.slice(0, 10);
      return [hour.slice(11, 13) < NOON ? addDays(day, -1) : day];
    });
  return [...new Set(nights)].sort();
}
