import { refuse } from "@pith/rules";
import { type Given, MOST_READINGS } from "./given.ts";

const INSTANT = /^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d(\.\d+)?)?(Z|[+-]\d\d:\d\d)$/i;

/**
 * The plain form: `{"readings": [{"series": "mast:air", "at": "2026-05-10T06:00:00Z", "value": 8.4, "unit": "Cel"}]}`.
 * Without `at` it is now; without `unit` the series' own.
 *
 * @throws DomainError where it is no such object
 */
export function readPlain(body: unknown, now: Date): Given[] {
  const list =
    typeof body === "object" && body !== null ? (body as { readings?: unknown }).readings : undefined;
  if (!Array.isArray(list)) refuse("readings", "must be an array of readings", "an array", list);
  if (list.length === 0 || list.length > MOST_READINGS) {
    refuse("readings", "has too few or too many readings", `1 to ${MOST_READINGS}`, list.length);
  }
  const nowMs = now.getTime();
  return list.map((one: unknown) => readingOf(one, nowMs));
}

/** The engine reads the 30th of February as the 2nd of March. */
const isADay = (at: string): boolean =>
  new Date(`${at.slice(0, 10)}T00:00:00Z`).getUTCDate() === Number(at.slice(8, 10));

function readingOf(one: unknown, nowMs: number): Given {
  if (typeof one !== "object" || one === null) return { refused: "is no object" };
  const { series, at, value, unit } = one as Record<string, unknown>;
  if (typeof series !== "string") return { refused: "series must be the name of a series" };
  if (typeof value !== "number" || !Number.isFinite(value)) return { refused: "value must be a number" };
  if (unit !== undefined && unit !== null && typeof unit !== "string") {
    return { refused: "unit must be the name of a unit" };
  }
  let atMs = nowMs;
  if (at !== undefined && at !== null) {
    atMs = typeof at === "string" && INSTANT.test(at) && isADay(at) ? Date.parse(at) : Number.NaN;
    if (Number.isNaN(atMs)) return { refused: "at must be an instant like 2026-05-10T06:00:00Z" };
  }
  return { name: series, unit: (unit as string | undefined) ?? null, value, atMs };
}
