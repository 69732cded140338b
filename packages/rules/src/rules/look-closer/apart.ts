import { SIGNS, type SignKind } from "../../states/plant.ts";
import type { Cause } from "../../tables/diagnosisTypes.ts";
import { pointsOfSign } from "./weigh.ts";

/** A sign not recorded yet that tells two causes apart: it speaks for the first named. */
interface Separator {
  sign: SignKind;
  speaksFor: Cause;
  against: Cause;
}

/**
 * For each of two causes, the sign nobody has recorded that would raise it most above the other. Equal ones in the order of
 * the vocabulary. Fewer where every sign that parts them is recorded.
 */
export function tellApart(a: Cause, b: Cause, seen: ReadonlySet<SignKind>): Separator[] {
  return [best(a, b, seen), best(b, a, seen)].filter((s) => s !== null);
}

function best(of: Cause, over: Cause, seen: ReadonlySet<SignKind>): Separator | null {
  let found: SignKind | null = null;
  let most = 0;
  for (const sign of SIGNS) {
    if (seen.has(sign) || of.signs[sign] === undefined) continue;
    const gain = pointsOfSign(of, sign) - pointsOfSign(over, sign);
    if (gain > most) {
      most = gain;
      found = sign;
    }
  }
  return found === null ? null : { sign: found, speaksFor: of, against: over };
}
