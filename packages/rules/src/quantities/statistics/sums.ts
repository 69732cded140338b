/** Sum with the lost low-order bits carried along (Neumaier 1974). */
function stableSum(values: Iterable<number>): number {
  let sum = 0;
  let lost = 0;
  for (const value of values) {
    const next = sum + value;
    lost += Math.abs(sum) >= Math.abs(value) ? sum - next + value : value - next + sum;
    sum = next;
  }
  return sum + lost;
}

/** Mean taken about the first value, so that constant leading digits cost nothing. */
export function stableMean(values: readonly number[]): number {
  const pivot = values[0] ?? Number.NaN;
  return pivot + stableSum(values.map((v) => v - pivot)) / values.length;
}

/** Deviations from the mean, taken about the first value and centred again: exact differences come before any rounding. */
export function deviations(values: readonly number[]): number[] {
  const pivot = values[0] ?? Number.NaN;
  const shifted = values.map((v) => v - pivot);
  const mean = stableSum(shifted) / shifted.length;
  return shifted.map((v) => v - mean);
}

export const sumOfSquares = (values: readonly number[]): number => stableSum(values.map((v) => v * v));

export const dot = (a: readonly number[], b: readonly number[]): number =>
  stableSum(a.map((v, i) => v * (b[i] ?? Number.NaN)));
