import type { Language } from "@pith/rules";
import { localeOf } from "../../format/language.ts";

const DAYS_NAMED = 6;

/** `Tuesday 07:10`, or the date where the day's name alone could be that of another week; on this phone's clock. */
export function whenText(at: string, language: Language): string {
  const then = new Date(at);
  const recent = Date.now() - then.getTime() < DAYS_NAMED * 86_400_000;
  return new Intl.DateTimeFormat(
    localeOf(language),
    recent
      ? { weekday: "long", hour: "2-digit", minute: "2-digit", hourCycle: "h23" }
      : { dateStyle: "medium", timeStyle: "short", hourCycle: "h23" },
  ).format(then);
}
