import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

/** Numbers from 0 up to 1 that the seed alone decides. */
export interface Draw {
  (): number;
  /** A whole number from 0 up to `n`, `n` left out. */
  below(n: number): number;
}

export function drawFrom(seed: number): Draw {
  const generator = xoroshiro128plus(seed);
  const next = () => uniformFloat64(generator);
  return Object.assign(next, { below: (n: number) => Math.floor(next() * n) });
}

/** The same things in an order that the draw decides (Fisher and Yates). */
export function shuffled<T>(things: readonly T[], draw: Draw): T[] {
  const out = [...things];
  for (let i = out.length - 1; i > 0; i--) {
    const j = draw.below(i + 1);
    [out[i], out[j]] = [out[j] as T, out[i] as T];
  }
  return out;
}
