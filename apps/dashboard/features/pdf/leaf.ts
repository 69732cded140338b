import { PDFDocument, type PDFFont, type PDFPage, rgb, StandardFonts } from "pdf-lib";
import type { Asked } from "./columns.ts";
import { linesOf } from "./lines.ts";
import { type Paper, sizeOf } from "./paper.ts";
import { settable } from "./signs.ts";

/** A leaf of paper that text is set on line by line: selectable, in the fonts that every reader of PDF has. */

const MARGIN = 54;
const FOOT = 40;
const LEADING = 1.35;
const FOOT_SIZE = 7.5;
/** Kept free at the end of the foot for the page's number. */
const NUMBER_WIDE = 48;
const BLACK = rgb(0, 0, 0);

export interface Style {
  size: number;
  bold?: boolean;
  sans?: boolean;
  indent?: number;
  before?: number;
}

interface Wanted {
  title: string;
  /** Stands on every page, until another is set. */
  foot: string;
  /** Of its words, for a reader that speaks them. */
  language?: string;
  landscape?: boolean;
}

export type Leaf = Awaited<ReturnType<typeof newLeaf>>;

export async function newLeaf(paper: Paper, { title, foot, language, landscape }: Wanted) {
  const file = await PDFDocument.create();
  file.setTitle(title, { showInWindowTitleBar: true });
  file.setProducer("Pith");
  if (language) file.setLanguage(language);
  const [serif, serifBold, sans, sansBold] = (await Promise.all(
    [
      StandardFonts.TimesRoman,
      StandardFonts.TimesRomanBold,
      StandardFonts.Helvetica,
      StandardFonts.HelveticaBold,
    ].map((name) => file.embedFont(name)),
  )) as [PDFFont, PDFFont, PDFFont, PDFFont];
  const fontOf = ({ bold, sans: plain }: Style): PDFFont =>
    plain ? (bold ? sansBold : sans) : bold ? serifBold : serif;
  const known = new Set(serif.getCharacterSet());

  const [width, height] = sizeOf(paper, landscape);
  const top = height - MARGIN;
  const floor = MARGIN + FOOT;
  let page: PDFPage = file.addPage([width, height]);
  const feet = [foot];
  let y = top;
  /** Measured and not drawn, for what must stay together. */
  let dry = false;

  const turn = () => {
    if (dry) return;
    page = file.addPage([width, height]);
    feet.push(foot);
    y = top;
  };
  const has = (points: number) => dry || y - points > floor;
  const widthOf = (said: string, style: Style) => fontOf(style).widthOfTextAtSize(said, style.size);
  const lines = (said: string, style: Style, wide: number) =>
    linesOf(settable(said, known), wide, (text) => widthOf(text, style));

  const leaf = {
    /** Between the margins. */
    wide: width - 2 * MARGIN,
    /** Of a page from margin to foot. */
    tall: top - floor,
    has,
    turn,
    lines,
    widthOf: (said: string, style: Style) => widthOf(settable(said, known), style),

    /** How wide a column of this text must be for its longest word, and would be for all of it. */
    asks(said: string, style: Style): Asked {
      const text = settable(said, known);
      const words = text.split(/[ \t\r\n]+/).map((word) => widthOf(word, style));
      return { least: Math.max(...words), best: widthOf(text.replaceAll("\n", " "), style) };
    },

    /** Goes down the page, not at its head. */
    down(points: number): void {
      if (dry || y < top) y -= points;
    },

    /** Draws at so many points from the left margin and below where the leaf stands, which stays there. */
    draw(line: string, at: number, below: number, style: Style): void {
      if (dry) return;
      page.drawText(line, { x: MARGIN + at, y: y - below, size: style.size, font: fontOf(style) });
    },

    stroke(from: number, to: number, thickness: number): void {
      if (dry) return;
      page.drawLine({ start: { x: MARGIN + from, y }, end: { x: MARGIN + to, y }, thickness });
    },

    /** A shape in the language of SVG's paths, its upper left corner where the leaf stands. */
    shape(path: string, at: number, { scale, filled }: { scale: number; filled: boolean }): void {
      if (dry) return;
      const ink = filled ? { color: BLACK } : { borderColor: BLACK, borderWidth: 2.5 };
      page.drawSvgPath(path, { x: MARGIN + at, y, scale, ...ink });
    },

    /** Sets a paragraph, broken between words; what does not fit goes over to the next page. */
    text(said: string, style: Style): void {
      const { size, indent = 0, before = 0 } = style;
      leaf.down(before);
      for (const line of lines(said, style, leaf.wide - indent)) {
        if (!has(size * LEADING)) turn();
        y -= size * LEADING;
        leaf.draw(line, indent, 0, style);
      }
    },

    /** A paragraph with a number or a mark before its first line. */
    beside(mark: string, said: string, style: Style, at: number): void {
      const { size, before = 0 } = style;
      leaf.down(before);
      if (!has(size * LEADING)) turn();
      leaf.draw(settable(mark, known), at, size * LEADING, style);
      leaf.text(said, { ...style, before: 0 });
    },

    /** Between what was and what comes; at the head of a page there is nothing to part. */
    rule(thickness = 0.5): void {
      if (!dry && y >= top) return;
      y -= 6;
      leaf.stroke(0, leaf.wide, thickness);
      y -= 4;
    },

    /** How tall what is set would be on an endless page. */
    heightOf(set: () => void): number {
      const [wasDry, wasY] = [dry, y];
      dry = true;
      set();
      const points = wasY - y;
      [dry, y] = [wasDry, wasY];
      return points;
    },

    /** Sets all of it on one page, where a page can hold it. */
    whole(set: () => void): void {
      const points = leaf.heightOf(set);
      // What no page can hold does not begin at the very foot of one either.
      if (!has(points < leaf.tall ? points : leaf.tall / 3)) turn();
      set();
    },

    /** Begins a page where this one has not so much room left. */
    room(points: number): void {
      if (!has(points)) turn();
    },

    /** From the next page on another foot: a new part of the file begins there. */
    begin(next: string): void {
      foot = next;
      turn();
    },

    /** The file, with its foot and number on each page. */
    async bytes(): Promise<Uint8Array> {
      const pages = file.getPages();
      const style = { size: FOOT_SIZE, sans: true };
      for (const [at, one] of pages.entries()) {
        const small = { size: FOOT_SIZE, font: sans };
        const number = `${at + 1} / ${pages.length}`;
        one.drawText(number, { x: width - MARGIN - widthOf(number, style), y: FOOT, ...small });
        const said = lines(feet[at] ?? "", style, leaf.wide - NUMBER_WIDE);
        for (const [nth, line] of said.toReversed().entries())
          one.drawText(line, { x: MARGIN, y: FOOT + nth * FOOT_SIZE * LEADING, ...small });
      }
      return file.save();
    },
  };
  return leaf;
}
