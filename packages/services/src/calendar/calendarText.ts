import type { Said } from "@pith/contract";
import { addDays, type Language } from "@pith/rules";
import ical, { escape as escaped, ICalEventStatus, ICalEventTransparency } from "ical-generator";
import { Temporal } from "temporal-polyfill";
import { tzlib_get_ical_block } from "timezones-ical-library";
import { labelOf, WORDS } from "../delivery/languages.ts";

/** One issued advice with its days. */
export interface Dated {
  id: string;
  said: Said;
  from: string | null;
  to: string | null;
  actBy: string | null;
  issuedAt: string;
  /** Withdrawn, or replaced by a later one. */
  cancelledAt: string | null;
}

/** A deadline is drawn so long before its instant, or a calendar would show nothing of it. */
const SHOWN_MINUTES = 30;

/**
 * A farm's windows and deadlines (RFC 5545): a window as whole days, which are the site's; a deadline as the half hour
 * before it, by the site's clock. An event's UID is the advice's for good; taking the advice back is its one revision.
 */
export function calendarText(
  farm: { name: string; timeZone: string },
  dated: readonly Dated[],
  linkTo: (advisoryId: string) => string,
  language: Language,
): string {
  const t = WORDS[language];
  const calendar = ical({
    // The library escapes the texts of events, but not this one.
    name: escaped(farm.name.replace(/\s+/g, " "), false),
    prodId: { company: "Pith", product: "Advice", language: language.toUpperCase() },
    // Zones of events are described; one of the whole calendar would take the Z from its stamps, which are in UTC.
    timezone: { name: null, generator: zoneBlock },
    ttl: 60 * 60,
  });
  for (const each of dated) {
    const common = {
      stamp: Temporal.Instant.from(each.cancelledAt ?? each.issuedAt),
      sequence: each.cancelledAt === null ? 0 : 1,
      status: each.cancelledAt === null ? ICalEventStatus.CONFIRMED : ICalEventStatus.CANCELLED,
      description: describe(each.said, language),
      url: linkTo(each.id),
      // It says what is to be done, not that nobody has time.
      transparency: ICalEventTransparency.TRANSPARENT,
    };
    if (each.from !== null || each.to !== null) {
      const [from, to] = [each.from ?? each.to ?? "", each.to ?? each.from ?? ""];
      calendar.createEvent({
        ...common,
        id: `${each.id}-window`,
        start: Temporal.PlainDate.from(from),
        end: Temporal.PlainDate.from(addDays(to, 1)),
        allDay: true,
        summary: each.said.decision,
      });
    }
    if (each.actBy !== null) {
      const end = Temporal.Instant.from(each.actBy).toZonedDateTimeISO(farm.timeZone);
      calendar.createEvent({
        ...common,
        id: `${each.id}-deadline`,
        start: end.subtract({ minutes: SHOWN_MINUTES }),
        end,
        timezone: farm.timeZone,
        summary: t.byNow(each.said.decision),
      });
    }
  }
  return calendar.toString();
}

const zoneBlock = (name: string): string | null => tzlib_get_ical_block(name)[0] ?? null;

/** Cautions come first and whole: a calendar may cut what is long at its end. */
const describe = ({ cautions, steps, window }: Said, language: Language): string =>
  [
    ...cautions.map((c) => `${labelOf(c.severity, language)}: ${c.text}`),
    ...(window === null ? [] : [window]),
    ...steps.map((step, at) => `${at + 1}. ${step}`),
  ].join("\n");
