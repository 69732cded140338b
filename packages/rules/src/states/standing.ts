import type { Bed, Cover, Mulch } from "./parts.ts";

const stands = (period: { from: string; to?: string }, day: string): boolean =>
  period.from <= day && (period.to === undefined || day <= period.to);

/** Every cover that stands over a bed on a day, each once; a fleece may stand in a tunnel. */
export const coversOn = (bed: Bed, day: string): Cover[] => [
  ...new Set(bed.covers.filter((c) => c.cover !== "none" && stands(c, day)).map((c) => c.cover)),
];

/** The mulch on a bed on a day; where several are noted, the one laid last. */
export function mulchOn(bed: Bed, day: string): Mulch {
  let last: Bed["mulches"][number] | undefined;
  for (const mulch of bed.mulches) {
    if (stands(mulch, day) && (last === undefined || mulch.from >= last.from)) last = mulch;
  }
  return last?.mulch ?? "none";
}
