import { type RefObject, useEffect, useRef } from "react";
import type { FieldView } from "./plan.ts";

/**
 * A page that the phone had kept still says the day and hour it was kept on, and a watering or a spraying would be written
 * down on yesterday. What starts from now starts from now again, unless somebody has typed there.
 */
export function useStartNow(form: RefObject<HTMLFormElement | null>, fields: readonly FieldView[]): void {
  // Those it opens with: what is typed later stays.
  const opened = useRef(fields);
  useEffect(() => {
    if (document.documentElement.dataset.keptAt === undefined) return;
    for (const { name, kind, value, startsNowIn } of opened.current) {
      const input = form.current?.elements.namedItem(name);
      if (startsNowIn === undefined || !(input instanceof HTMLInputElement) || input.value !== value)
        continue;
      input.value = kind === "moment" ? clockNow(startsNowIn) : clockNow(startsNowIn).slice(0, 10);
    }
  }, [form]);
}

/** `2026-07-06T19:30`, as a field of a form takes it. */
function clockNow(timeZone: string): string {
  const parts = new Intl.DateTimeFormat("en", {
    timeZone,
    hourCycle: "h23",
    year: "numeric",
    month: "2-digit",
    day: "2-digit",
    hour: "2-digit",
    minute: "2-digit",
  }).formatToParts(new Date());
  const of = (type: Intl.DateTimeFormatPartTypes) => parts.find((part) => part.type === type)?.value ?? "";
  return `${of("year")}-${of("month")}-${of("day")}T${of("hour")}:${of("minute")}`;
}
