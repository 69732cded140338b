import type { Wishes } from "@pith/contract";
import { addDays, clockAt, instantOfClock } from "@pith/rules";

/** When somebody is told. */

interface News {
  now: Date;
  frost: boolean;
  actBy: string | null;
}
type Clockwork = Pick<Wishes, "dailyAt" | "quiet" | "timeZone">;

/**
 * The instant at which it goes out, or null where it does not go this way at all. Frost goes at once, whatever the hour. A
 * day's round-up that would come after the hour to act by does not wait for it. Quiet hours hold everything else back.
 */
export function dueAt(news: News, timing: "off" | "at-once" | "daily", clock: Clockwork): Date | null {
  if (timing === "off") return null;
  if (news.frost || timing === "at-once") return news.frost ? news.now : afterQuiet(news.now, clock);
  const daily = afterQuiet(nextAt(news.now, clock.dailyAt, clock.timeZone), clock);
  const tooLate = news.actBy !== null && Date.parse(news.actBy) <= daily.getTime();
  return tooLate ? afterQuiet(news.now, clock) : daily;
}

/** The same instant, or the end of the quiet hours it falls into. */
function afterQuiet(at: Date, { quiet, timeZone }: Clockwork): Date {
  const shown = clockAt(at.toISOString(), timeZone).slice(11, 16);
  if (quiet === null || !isWithin(shown, quiet.from, quiet.to)) return at;
  return nextAt(at, quiet.to, timeZone);
}

/** Clock times compare as they are written. Quiet hours mostly go over midnight; from and to alike are no hours. */
const isWithin = (clock: string, from: string, to: string): boolean =>
  from <= to ? from <= clock && clock < to : clock >= from || clock < to;

/** The next instant after `at` at which a clock of the zone shows this time. */
function nextAt(at: Date, clock: string, timeZone: string): Date {
  const today = clockAt(at.toISOString(), timeZone).slice(0, 10);
  const found = [today, addDays(today, 1)]
    .map((day) => Date.parse(instantOfClock(`${day}T${clock}`, timeZone)))
    .find((ms) => ms > at.getTime());
  return new Date(found ?? at.getTime());
}
