import type { StageForecast } from "../../growth/stages.ts";
import { type Message, onDay, say } from "../../text/message.ts";

/** A stage's days in words: noted, all three, without a latest, or not this season. */
export function windowMessage(at: "green" | "colour", s: StageForecast): Message {
  const { low, likely, high } = s.dates;
  if (s.notedOn !== null) return say(`ripe.window.${at}-noted`, { day: onDay(s.notedOn) });
  if (low === null || likely === null) return say(`ripe.window.${at}-none`);
  const days = { low: onDay(low), likely: onDay(likely) };
  return high === null
    ? say(`ripe.window.${at}-open`, days)
    : say(`ripe.window.${at}`, { ...days, high: onDay(high) });
}
