import { type Asked, widthsOf } from "./columns.ts";
import type { Leaf, Style } from "./leaf.ts";

export interface PaperTable {
  /** Above it, and above its head again on each further page. */
  title: string | null;
  /** Said after the title where the table goes on. */
  goesOn: string;
  heads: readonly string[];
  /** Of a row's cell its lines. */
  rows: readonly (readonly (readonly string[])[])[];
  /** Columns of figures, which stand at the right of their column. */
  figures?: readonly boolean[];
}

/** Between two columns. */
const GAP = 8;
/** Largest first. */
const SIZES = [9.5, 8.5, 8, 7.5];
const SMALL = [7.5, 7];
const SMALLEST = 6.5;
/** A day, an amount or a name of one or two words, in ems. */
const SHORT = 7;
const LEADING = 1.25;
/** Below a line's foot there are tails of letters, above its head there is the leading. */
const PAD = { above: 1, below: 4 };

/** A table ruled as in print, its cells wrapped and not cut, its head again on every page that it reaches. */
export function tableOn(leaf: Leaf, { title, goesOn, heads, rows, figures = [] }: PaperTable): void {
  const room = leaf.wide - GAP * (heads.length - 1);
  const { size, widths } = fitted(askedBy(leaf, heads, rows), room);
  const full = widths.reduce((sum, one) => sum + one, GAP * (widths.length - 1));
  const height = size * LEADING;
  const style: Style = { size, sans: true };
  const wrap = (lines: readonly string[], nth: number, said: Style) =>
    lines.flatMap((line) => leaf.lines(line, said, (widths[nth] as number) + 0.01));

  const line = (cells: readonly (readonly string[])[], from: number, to: number, said: Style) => {
    leaf.down(PAD.above);
    for (let at = from; at < to; at++) {
      leaf.down(height);
      let left = 0;
      for (const [nth, wide] of widths.entries()) {
        const text = cells[nth]?.[at];
        const gone = figures[nth] && text !== undefined ? wide - leaf.widthOf(text, said) : 0;
        if (text !== undefined) leaf.draw(text, left + gone, 0, said);
        left += wide + GAP;
      }
    }
    leaf.down(PAD.below);
  };
  const headStyle: Style = { ...style, bold: true };
  const headLines = heads.map((head, nth) => wrap([head], nth, headStyle));
  const head = (again: boolean) => {
    const said = again && title !== null ? `${title}, ${goesOn}` : title;
    if (said) leaf.text(said, { size: 10.5, bold: true, before: 10 });
    leaf.down(4);
    leaf.stroke(0, full, 1);
    line(headLines, 0, tallest(headLines), headStyle);
    leaf.stroke(0, full, 0.5);
  };
  const set = rows.map((cells) => cells.map((lines, nth) => wrap(lines, nth, style)));
  const heightOf = (lines: number) => PAD.above + PAD.below + lines * height;

  const headHeight = leaf.heightOf(() => head(true));
  const first = set[0] ? heightOf(tallest(set[0])) : 0;
  // A head without a row below it belongs on the next page.
  if (!leaf.has(headHeight + first) && headHeight + first < leaf.tall) leaf.turn();
  head(false);
  for (const cells of set) {
    const lines = tallest(cells);
    let from = 0;
    if (!leaf.has(heightOf(lines)) && headHeight + heightOf(lines) < leaf.tall) {
      leaf.turn();
      head(true);
    }
    // A row taller than a page goes on over as many as it takes.
    while (!leaf.has(heightOf(lines - from))) {
      let fits = 1;
      while (leaf.has(heightOf(fits + 1))) fits++;
      line(cells, from, from + fits, style);
      from += fits;
      leaf.turn();
      head(true);
    }
    line(cells, from, lines, style);
    leaf.stroke(0, full, 0.25);
  }
  leaf.stroke(0, full, 1);
}

const tallest = (cells: readonly (readonly string[])[]) => Math.max(0, ...cells.map((lines) => lines.length));

/** What the columns of a table ask for at a type of one point; at other sizes it is so many times that. */
const askedBy = (leaf: Leaf, heads: PaperTable["heads"], rows: PaperTable["rows"]): Asked[] =>
  heads.map((head, nth) => {
    const cells = rows
      .flatMap((row) => row[nth] ?? [])
      .map((text) => leaf.asks(text, { size: 1, sans: true }));
    const all = [leaf.asks(head, { size: 1, sans: true, bold: true }), ...cells];
    return all.reduce((sum, one) => ({
      least: Math.max(sum.least, one.least),
      best: Math.max(sum.best, one.best),
    }));
  });

/** The largest type at which short cells stay on one line; else at which words stay whole; else the smallest. */
function fitted(asked: readonly Asked[], room: number): { size: number; widths: number[] } {
  const calm = asked.map(({ least, best }) => ({ least: best <= SHORT ? best : least, best }));
  const fits = (columns: readonly Asked[]) => (type: number) =>
    // One very long word, as a hash is, is broken and does not make the whole table small.
    columns.reduce((sum, one) => sum + Math.min(one.least * type, room / 5), 0) <= room;
  const size = SIZES.find(fits(calm));
  if (size !== undefined) return { size, widths: widthsOf(times(size, calm), room) };
  const smaller = SMALL.find(fits(asked)) ?? SMALLEST;
  return { size: smaller, widths: widthsOf(times(smaller, asked), room) };
}

const times = (size: number, asked: readonly Asked[]): Asked[] =>
  asked.map(({ least, best }) => ({ least: least * size, best: best * size }));
