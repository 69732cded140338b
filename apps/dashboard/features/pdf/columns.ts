/** How wide a column must be for its longest word, and how wide it would like to be for its longest cell. */
export interface Asked {
  least: number;
  best: number;
}

/**
 * The widths of a table's columns in so much room: each what it would like where there is room for all, else what its
 * words need, and the rest so that no cell is much taller than another. Where not even the words find room, those of the
 * widest columns are broken and no others.
 */
export function widthsOf(asked: readonly Asked[], room: number): number[] {
  const sum = (widths: readonly number[]) => widths.reduce((total, one) => total + one, 0);
  const best = asked.map((one) => one.best);
  if (sum(best) <= room) return best;
  const least = asked.map((one) => one.least);
  // All words below this are whole.
  if (sum(least) >= room) return closest((most) => least.map((one) => Math.min(one, most)), sum, room);
  const inLines = (lines: number) => asked.map((one) => Math.max(one.least, one.best / lines));
  return closest((share) => inLines(1 / share), sum, room);
}

/** The widths that grow with a number and come closest to the room without going over. */
function closest(
  of: (by: number) => number[],
  sum: (widths: readonly number[]) => number,
  room: number,
): number[] {
  let [low, high] = [1e-6, Math.max(1, room)];
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (sum(of(middle)) > room) high = middle;
    else low = middle;
  }
  return of(low);
}
