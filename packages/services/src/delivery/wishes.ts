import type { Role, Wishes } from "@pith/contract";
import type { deliveryPreferences } from "@pith/db";
import type { Language } from "@pith/rules";

/** What a person wants, as it is stored and as it is said. */

type Row = typeof deliveryPreferences.$inferSelect;

/**
 * Where somebody has not said: a farmer is told by mail at once, but not at night (common practice); whoever only reads,
 * and staff, who issue it themselves, are not.
 */
export const ordinaryWishes = (role: Role, timeZone: string, language: Language = "en"): Wishes => ({
  mail: role === "farmer" ? "at-once" : "off",
  // Turned on by the first browser that lets itself be told.
  push: "off",
  text: "off",
  textTo: null,
  dailyAt: "06:00",
  quiet: { from: "21:00", to: "06:00" },
  timeZone,
  language,
});

export const wishesOf = (row: Row): Wishes => ({
  mail: row.mail,
  push: row.push,
  text: row.text,
  textTo: row.textTo,
  dailyAt: clock(row.dailyAtMinute),
  quiet:
    row.quietFromMinute === null || row.quietToMinute === null
      ? null
      : { from: clock(row.quietFromMinute), to: clock(row.quietToMinute) },
  timeZone: row.timeZone,
  language: row.language,
});

export const storedWishes = (wishes: Wishes) => ({
  mail: wishes.mail,
  push: wishes.push,
  text: wishes.text,
  textTo: wishes.textTo,
  dailyAtMinute: minutes(wishes.dailyAt),
  quietFromMinute: wishes.quiet === null ? null : minutes(wishes.quiet.from),
  quietToMinute: wishes.quiet === null ? null : minutes(wishes.quiet.to),
  timeZone: wishes.timeZone,
  language: wishes.language,
});

const clock = (minute: number): string =>
  `${String(Math.floor(minute / 60)).padStart(2, "0")}:${String(minute % 60).padStart(2, "0")}`;
const minutes = (said: string): number => Number(said.slice(0, 2)) * 60 + Number(said.slice(3));
