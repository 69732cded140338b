import { refuse } from "../../core/errors.ts";

/** Coefficients of a ratio of polynomials, highest power first. */
type Ratio = { over: readonly number[]; under: readonly number[] };

const CENTRE: Ratio = {
  over: [
    2509.0809287301227, 33430.57558358813, 67265.7709270087, 45921.95393154987, 13731.69376550946,
    1971.5909503065513, 133.14166789178438, 3.3871328727963665,
  ],
  under: [
    5226.495278852854, 28729.085735721943, 39307.89580009271, 21213.794301586597, 5394.196021424751,
    687.1870074920579, 42.31333070160091, 1,
  ],
};
const TAIL: Ratio = {
  over: [
    0.0007745450142783414, 0.022723844989269184, 0.2417807251774506, 1.2704582524523684, 3.6478483247632045,
    5.769497221460691, 4.630337846156546, 1.4234371107496835,
  ],
  under: [
    1.0507500716444169e-9, 0.0005475938084995345, 0.015198666563616457, 0.14810397642748008, 0.6897673349851,
    1.6763848301838038, 2.053191626637759, 1,
  ],
};

const ratioAt = ({ over, under }: Ratio, r: number): number => {
  const at = (coefficients: readonly number[]) => coefficients.reduce((sum, c) => sum * r + c, 0);
  return at(over) / at(under);
};

/**
 * The standard normal deviate below which a share `p` lies, to about 1e-15 relative.
 * Stated for 1e-10 <= p <= 1 - 1e-10, more than any weather record can carry; refuses others.
 *
 * Source: Wichura 1988, algorithm AS 241 (PPND16), without its outermost tail.
 */
export function normalQuantile(p: number): number {
  if (!(p >= 1e-10 && p <= 1 - 1e-10))
    refuse("probability", "must be between 0 and 1", "1e-10 to 1 - 1e-10", p);
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) return q * ratioAt(CENTRE, 0.180625 - q * q);
  const z = ratioAt(TAIL, Math.sqrt(-Math.log(q < 0 ? p : 1 - p)) - 1.6);
  return q < 0 ? -z : z;
}
