import { uniformInt } from "pure-rand/distribution/uniformInt";
import { mersenne } from "pure-rand/generator/mersenne";

/**
 * Puts things in an order that the seed alone decides, every order as likely as any other (Fisher and Yates; draws by
 * rejection, so that no remainder favours one). The Mersenne twister spreads its seed over its whole state, so that seeds
 * that lie side by side give orders that have nothing to do with each other.
 */
export function shufflerOf(seed: number): <T>(things: readonly T[]) => T[] {
  const generator = mersenne(seed);
  return <T>(things: readonly T[]) => {
    const out = [...things];
    for (let i = out.length - 1; i > 0; i--) {
      const j = uniformInt(generator, 0, i);
      [out[i], out[j]] = [out[j] as T, out[i] as T];
    }
    return out;
  };
}
