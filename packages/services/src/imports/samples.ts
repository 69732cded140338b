import type { SoilTest } from "@pith/rules";

/** Which sample a row is, and whether two rows of it say the same. */

export type SampleRow = Record<string, unknown> & {
  bedId: string;
  sampledOn: string;
  sampleRef: string;
  depthCm: number;
};

/** A sample is stored once: a bed, a day, the laboratory's number for it, and how deep it reaches. */
export const sampleKey = ({ bedId, sampledOn, sampleRef, depthCm }: SampleRow): string =>
  // A depth in inches comes back from the arithmetic with another last digit.
  [bedId, sampledOn, sampleRef, Number(depthCm.toPrecision(9))].join("|");

/** Everything a row says, each under the name a person knows it by. */
function said(row: Record<string, unknown>): Map<string, string | number | boolean> {
  const test = row as Partial<SoilTest>;
  const all: [string, string | number | boolean | undefined][] = [
    ["medium", test.medium],
    ["pH", test.waterPh],
    [`buffer pH (${test.bufferPh?.method})`, test.bufferPh?.value],
    ["organic matter", test.organicMatterPct],
    ["exchange capacity", test.cecCmolPerKg],
    ["acidity", test.acidityCmolPerKg],
    ["free lime", test.freeLime],
    [`salts (${test.ec?.extraction ?? "extraction not stated"})`, test.ec?.dSPerM],
    ...(test.values ?? []).map(
      (v) => [`${v.nutrient} (${v.extractant ?? "extractant not stated"})`, v.mgPerKg] as [string, number],
    ),
  ];
  return new Map(all.filter((pair): pair is [string, string | number | boolean] => pair[1] !== undefined));
}

const MOST_NAMED = 4;

/** What two rows of one sample say differently, in words; null where they say the same. */
export function differenceOf(
  before: Record<string, unknown>,
  now: Record<string, unknown>,
  there: string,
): string | null {
  const [old, fresh] = [said(before), said(now)];
  const names = [...new Set([...old.keys(), ...fresh.keys()])];
  const other = names.filter((name) => !isSame(old.get(name), fresh.get(name)));
  if (other.length === 0) return null;
  const told = other
    .slice(0, MOST_NAMED)
    .map((name) => `${name} ${shown(old.get(name))} ${there}, ${shown(fresh.get(name))} here`);
  return [...told, ...(other.length > MOST_NAMED ? [`and ${other.length - MOST_NAMED} more`] : [])].join(
    "; ",
  );
}

type Said = string | number | boolean | undefined;

function isSame(a: Said, b: Said): boolean {
  if (typeof a !== "number" || typeof b !== "number") return a === b;
  return Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));
}

const shown = (value: Said): string =>
  value === undefined
    ? "not given"
    : typeof value === "number"
      ? String(Number(value.toPrecision(6)))
      : String(value);
