import type { getTranslations } from "next-intl/server";
import { dayText } from "../../format/dates.ts";
import type { Mark } from "./marks.ts";
import type { Lane } from "./timeline.ts";

type Words = Awaited<ReturnType<typeof getTranslations<"timeline">>>;

/** When, of a lane: its one mark told, or how often and when last. The axis beside it shows the year. */
export function whenOf({ marks }: Lane, t: Words): string {
  const text = (day: string) => dayText(day, day);
  const last = marks.at(-1);
  if (!last) return t("none");
  const events = marks.filter((mark) => mark.kind === "event");
  if (events.length > 1) {
    const newest = events.at(-1) as Extract<Mark, { kind: "event" }>;
    return t("times", { count: events.length, day: text(newest.on) });
  }
  const planned = marks.find((mark) => mark.kind === "planned");
  if (planned?.kind === "planned" && last.kind === "done") {
    return t("plannedAndDone", { day: text(last.on), planned: text(planned.on) });
  }
  return markText(last, text, t);
}

export function markText(mark: Mark, text: (day: string) => string, t: Words): string {
  switch (mark.kind) {
    case "planned":
      return t("planned", { day: text(mark.on) });
    case "forecast":
      return mark.high === null
        ? t("likelyOpen", { likely: text(mark.likely), low: text(mark.low) })
        : t("likely", { likely: text(mark.likely), low: text(mark.low), high: text(mark.high) });
    case "window":
      return mark.to === null
        ? t("from", { from: text(mark.from) })
        : t("span", { from: text(mark.from), to: text(mark.to) });
    case "closed":
      return mark.from === mark.to
        ? text(mark.from)
        : t("span", { from: text(mark.from), to: text(mark.to) });
    default:
      return text(mark.on);
  }
}
