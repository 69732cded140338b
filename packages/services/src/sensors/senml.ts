import { refuse } from "@pith/rules";
import { type Given, MOST_READINGS } from "./given.ts";

/** Below, a time is relative to now; from there on it counts from 1970 (RFC 8428 section 4.5.3). */
const ABSOLUTE_FROM_S = 2 ** 28;
/** Versions up to this are RFC 8428's own; it takes 10 where none is said. */
const VERSION = 10;
/** RFC 9100 reads a version as a set of features; this one is 10 and secondary units. */
const WITH_SECONDARY_UNITS = 26;
const NAME = /^[A-Za-z0-9][-A-Za-z0-9:./_]*$/;

/** Labels of RFC 8428 section 4.3, with what each must be. */
const TYPES: Record<string, "string" | "number" | "boolean"> = {
  bn: "string",
  bt: "number",
  bu: "string",
  bv: "number",
  bs: "number",
  bver: "number",
  n: "string",
  u: "string",
  v: "number",
  vs: "string",
  vb: "boolean",
  vd: "string",
  s: "number",
  t: "number",
  ut: "number",
};
const VALUES = ["v", "vs", "vb", "vd"] as const;
const BASES = ["bn", "bt", "bu", "bv", "bs", "bver"] as const;

/** What a record takes over from those before it. */
interface Base {
  name: string;
  timeS: number;
  unit: string | null;
  value: number;
}

/**
 * A SenML pack resolved (RFC 8428 section 4.6): base fields applied, times made absolute against the server's clock.
 *
 * Refused whole, because nothing in it can be trusted then: what is no array of objects, a version this does not know or
 * that changes within the pack, a field it does not know whose label ends in "_" (section 4.4), a base field of another
 * type. Unknown other fields are left aside. A record that is wrong by itself is refused alone.
 *
 * @throws DomainError naming the record and field
 */
export function resolveSenml(pack: unknown, now: Date): Given[] {
  if (!Array.isArray(pack)) refuse("", "a SenML pack is an array of records", "an array", typeof pack);
  if (pack.length === 0 || pack.length > MOST_READINGS) {
    refuse("", "has too few or too many records", `1 to ${MOST_READINGS}`, pack.length);
  }
  const base: Base = { name: "", timeS: 0, unit: null, value: 0 };
  const nowMs = now.getTime();
  let version: number | undefined;
  return pack.map((record: unknown, i) => {
    if (typeof record !== "object" || record === null || Array.isArray(record)) {
      refuse(String(i), "is no SenML record", "an object", record);
    }
    const r = record as Record<string, unknown>;
    let wrong: string | undefined;
    for (const label in r) {
      const type = TYPES[label];
      if (type === undefined) {
        if (label.endsWith("_")) {
          refuse(`${i}.${label}`, "must be understood, and is not", "no field ending in _", r[label]);
        }
      } else if (typeof r[label] !== type || (type === "number" && !Number.isFinite(r[label] as number))) {
        if ((BASES as readonly string[]).includes(label)) {
          refuse(`${i}.${label}`, `must be a ${type}`, type, r[label]);
        }
        wrong ??= `${label} must be a ${type}`;
      }
    }
    version = versionOf(r.bver as number | undefined, version, i);
    if (r.bn !== undefined) base.name = r.bn as string;
    if (r.bt !== undefined) base.timeS = r.bt as number;
    if (r.bu !== undefined) base.unit = r.bu as string;
    if (r.bv !== undefined) base.value = r.bv as number;
    return wrong === undefined ? readingOf(r, base, nowMs) : { refused: wrong };
  });
}

/** All records of a pack have one version (section 4.4); what is above this one's, or has unknown features, is not used. */
function versionOf(said: number | undefined, before: number | undefined, i: number): number {
  if (said === undefined) return before ?? VERSION;
  if (before !== undefined && said !== before) {
    refuse(`${i}.bver`, "must be the same in the whole pack", String(before), said);
  }
  if (!Number.isInteger(said) || said < 1 || (said > VERSION && said !== WITH_SECONDARY_UNITS)) {
    refuse(
      `${i}.bver`,
      "is a version of SenML that is not understood here",
      `up to ${VERSION}, or ${WITH_SECONDARY_UNITS} with secondary units`,
      said,
    );
  }
  return said;
}

function readingOf(r: Record<string, unknown>, base: Base, nowMs: number): Given {
  let held: (typeof VALUES)[number] | undefined;
  for (const label of VALUES) {
    if (r[label] === undefined) continue;
    if (held !== undefined) return { refused: `has two values, ${held} and ${label}` };
    held = label;
  }
  if (held === undefined) {
    if (r.s !== undefined) return { refused: "has a sum and no value: send v" };
    if (BASES.some((label) => r[label] !== undefined)) return "no-reading";
    return { refused: "has no value" };
  }
  if (held !== "v") return { refused: `${held} is no measurement: a series takes numbers, in v` };
  const name = base.name + ((r.n as string | undefined) ?? "");
  if (!NAME.test(name)) {
    return {
      refused: `"${name.slice(0, 80)}" is no SenML name: letters, digits and - : . / _, a letter or digit first`,
    };
  }
  const timeS = base.timeS + ((r.t as number | undefined) ?? 0);
  const value = base.value + (r.v as number);
  return {
    name,
    unit: (r.u as string | undefined) ?? base.unit,
    value,
    // To the millisecond: a float of seconds since 1970 says no more.
    atMs: Math.round(timeS < ABSOLUTE_FROM_S ? nowMs + timeS * 1000 : timeS * 1000),
  };
}
