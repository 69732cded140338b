import type { PlanBlock } from "@pith/contract";
import type { Language, PlanBreach, PlanDrawing, Reader, UnitSystem } from "@pith/rules";
import { inText } from "../../format/units.ts";
import { type BedPlanWords, fill } from "./words.ts";

/** What everything on the screen shares: names, marks and how to say a place. */
export interface View {
  words: BedPlanWords;
  units: UnitSystem;
  reader: Reader;
  bedName: (id: string) => string;
  blockName: (id: string) => string;
  mark: (id: string) => string;
  placeLine: (block: PlanBlock, at?: PlanBlock["at"]) => string;
  length: (m: number) => string;
}

interface Facts {
  words: BedPlanWords;
  units: UnitSystem;
  language: Language;
  bedNames: Record<string, string>;
  blocks: readonly PlanBlock[];
  drawing: PlanDrawing;
}

export function viewOf({ words, units, language, bedNames, blocks, drawing }: Facts): View {
  const marks = new Map(
    drawing.varieties.flatMap(({ letter, blockIds }) =>
      blockIds.map((id, i) => [id, blockIds.length > 1 ? `${letter}${i + 1}` : letter] as const),
    ),
  );
  const mark = (id: string) => marks.get(id) ?? "";
  const byId = new Map(blocks.map((b) => [b.id, b]));
  const blockName = (id: string) => `${mark(id)} ${byId.get(id)?.varietyName ?? ""}`.trim();
  const bedName = (id: string) => bedNames[id] ?? id;
  const length = (m: number) => inText(m, "m", units, language);
  const names = new Map<string, string>(Object.entries(bedNames));
  for (const b of blocks) names.set(b.plantingId ?? b.id, blockName(b.id));
  return {
    words,
    units,
    reader: { language, units, bedNames: names },
    bedName,
    blockName,
    mark,
    length,
    placeLine: (block, at = block.at) =>
      at
        ? fill(words.placeLine, {
            bed: bedName(at.bedId),
            rows: rowsText(words, at.row, block.rows),
            from: length(at.fromM),
          })
        : words.nowhere,
  };
}

export const rowsText = (words: BedPlanWords, first: number, rows: number) =>
  rows === 1 ? fill(words.oneRow, { first }) : fill(words.rowRange, { first, last: first + rows - 1 });

/** Blocks and beds that break a rule. */
export function broken(hard: readonly PlanBreach[]): { blocks: Set<string>; beds: Set<string> } {
  const real = hard.filter(({ kind }) => kind !== "unplaced");
  return {
    blocks: new Set(real.flatMap((b) => b.blockIds)),
    beds: new Set(real.flatMap((b) => b.bedIds)),
  };
}
