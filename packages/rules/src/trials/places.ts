/** A bed as a layout sees it. */
interface TrialBed {
  id: string;
  lengthM: number;
}

/** Where one plot can stand. */
export interface Place {
  bedId: string;
  fromM: number;
}

/** Lengths are entered in centimetres; what a sum of them loses in the sixteenth digit is not worth a plot. */
const HAIR_M = 1e-6;

/** Plots that a bed takes, one behind the other, with a gap between two but none at its ends. */
const plotsIn = ({ lengthM }: TrialBed, plotLengthM: number, gapM: number): number =>
  Math.max(0, Math.floor((lengthM + gapM + HAIR_M) / (plotLengthM + gapM)));

/**
 * Places for so many blocks of so many plots, block by block; null where the beds do not hold them. Blocks lie whole in one
 * bed as long as a bed takes one more. Only if `mayPart`, what is left over at the ends of beds is then put together, in the
 * order of the beds.
 */
export function placesFor(
  beds: readonly TrialBed[],
  { blocks, plots, mayPart }: { blocks: number; plots: number; mayPart: boolean },
  { plotLengthM, gapM }: { plotLengthM: number; gapM: number },
): Place[][] | null {
  const whole: Place[][] = [];
  const left: Place[] = [];
  for (const bed of beds) {
    const places = Array.from({ length: plotsIn(bed, plotLengthM, gapM) }, (_, i) => ({
      bedId: bed.id,
      fromM: round(i * (plotLengthM + gapM)),
    }));
    while (places.length >= plots && whole.length < blocks) whole.push(places.splice(0, plots));
    left.push(...places);
  }
  while (mayPart && whole.length < blocks && left.length >= plots) whole.push(left.splice(0, plots));
  return whole.length < blocks ? null : whole;
}

/** A tape is not read closer than a millimetre. */
const round = (m: number): number => Math.round(m * 1000) / 1000;
