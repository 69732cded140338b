/** One place in which two JSON values differ. */
export interface Difference {
  path: string;
  stored: unknown;
  now: unknown;
}

/** Engines differ in the last digits of exp, sin and pow; beyond this share of a number it is a real difference. */
const RELATIVE_TOLERANCE = 1e-9;

/**
 * Every place in which two JSON values differ, as dotted paths. With `tolerant`, numbers that differ by at most
 * {@link RELATIVE_TOLERANCE} of the larger are the same; everything else is always compared exactly.
 */
export function differencesOf(stored: unknown, now: unknown, tolerant: boolean, path = ""): Difference[] {
  if (Object.is(stored, now)) return [];
  if (typeof stored === "number" && typeof now === "number") {
    const close = Math.abs(stored - now) <= RELATIVE_TOLERANCE * Math.max(Math.abs(stored), Math.abs(now));
    // -0 and 0 are one number in JSON.
    return stored === now || (tolerant && close) ? [] : [{ path, stored, now }];
  }
  if (!isObject(stored) || !isObject(now) || Array.isArray(stored) !== Array.isArray(now)) {
    return [{ path, stored, now }];
  }
  const names = new Set([...Object.keys(stored), ...Object.keys(now)]);
  return [...names].flatMap((name) =>
    differencesOf(stored[name], now[name], tolerant, path ? `${path}.${name}` : name),
  );
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null;
