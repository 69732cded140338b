import { bedNamed, type Message, measure, type Param, plantingNamed, say, wordOf } from "../text/message.ts";
import { type Model, type ModelBed, type ModelBlock, neededIsolationM } from "./model.ts";
import { gapM, tooNearForSeed, waterClash } from "./pair.ts";
import { restsOf } from "./rest.ts";
import { EPSILON_M, overlap, type Stand } from "./stand.ts";

/** What a plan may not do. `order` is that of a grower's questions: does it stand, may it stand there, does it get on. */
export const BREACH_KINDS = [
  "unplaced",
  "unknown-bed",
  "rows",
  "length",
  "overlap",
  "rotation",
  "water",
  "isolation",
] as const;
export type BreachKind = (typeof BREACH_KINDS)[number];

/** One hard rule that the plan breaks, with whose it is. */
export interface Breach {
  kind: BreachKind;
  blockIds: string[];
  bedIds: string[];
  text: Message;
}

/** What nobody can judge yet: neither kept nor broken. */
export interface Unknown {
  kind: "history" | "distance" | "height" | "place" | "first-pick";
  blockIds: string[];
  bedIds: string[];
}

/** A block for a message: by the planting it is, where it is one already. */
export function blockNamed(m: Model, i: number): Param {
  const { id, plantingId } = (m.blocks[i] as ModelBlock).block;
  return plantingNamed(plantingId ?? id, i + 1);
}
export const bedNamedIn = (m: Model, bed: number): Param =>
  bedNamed((m.beds[bed] as ModelBed).bed.id, bed + 1);

const idOf = (m: Model, i: number) => (m.blocks[i] as ModelBlock).block.id;
const bedIdOf = (m: Model, bed: number) => (m.beds[bed] as ModelBed).bed.id;

/** Breaches of one block for itself. `somewhere`: it names a bed, though the plan may not know it. */
export function ownBreaches(
  m: Model,
  i: number,
  stand: Stand | undefined,
  somewhere = stand !== undefined || (m.blocks[i] as ModelBlock).block.at !== undefined,
): Breach[] {
  const { block, lengthM } = m.blocks[i] as ModelBlock;
  const blockIds = [block.id];
  if (!stand) {
    const kind = somewhere ? "unknown-bed" : "unplaced";
    return [{ kind, blockIds, bedIds: [], text: say(`company.breach.${kind}`, { block: blockNamed(m, i) }) }];
  }
  const { bed, rest } = m.beds[stand.bed] as ModelBed;
  const bedIds = [bed.id];
  const out: Breach[] = [];
  const names = { block: blockNamed(m, i), bed: bedNamedIn(m, stand.bed) };
  if (stand.row < 1 || stand.rowEnd - 1 > bed.rows) {
    const params = { ...names, last: stand.rowEnd - 1, rows: bed.rows };
    out.push({ kind: "rows", blockIds, bedIds, text: say("company.breach.rows", params) });
  }
  if (stand.fromM < -EPSILON_M || stand.toM > bed.lengthM + EPSILON_M) {
    const params = {
      ...names,
      needs: measure(lengthM, "m"),
      from: measure(stand.fromM, "m"),
      length: measure(bed.lengthM, "m"),
    };
    out.push({ kind: "length", blockIds, bedIds, text: say("company.breach.length", params) });
  }
  if (rest === "too-soon") out.push(...rotationBreaches(m, i, stand));
  return out;
}

/** One for each pathogen, or for peppers as such, whose rest the bed has not had. */
function rotationBreaches(m: Model, i: number, stand: Stand): Breach[] {
  const { bed } = m.beds[stand.bed] as ModelBed;
  return restsOf(bed.history, m.state.season, m.reading).flatMap((r): Breach[] =>
    r.verdict !== "too-soon" || r.last === undefined
      ? []
      : [
          {
            kind: "rotation",
            blockIds: [idOf(m, i)],
            bedIds: [bed.id],
            text: say(`company.breach.rotation.${r.disease ?? "pepper"}`, {
              block: blockNamed(m, i),
              bed: bedNamedIn(m, stand.bed),
              crop: wordOf(`rotation.crop.${r.last.crop}`),
              season: String(r.last.season),
              years: r.neededYears,
              from: String(r.from),
            }),
          },
        ],
  );
}

/** Breaches of two blocks with each other. */
export function pairBreaches(m: Model, i: number, a: Stand, j: number, b: Stand): Breach[] {
  const blockIds = [idOf(m, i), idOf(m, j)];
  const bedIds = a.bed === b.bed ? [bedIdOf(m, a.bed)] : [bedIdOf(m, a.bed), bedIdOf(m, b.bed)];
  const names = { block: blockNamed(m, i), other: blockNamed(m, j), bed: bedNamedIn(m, a.bed) };
  const out: Breach[] = [];
  if (overlap(a, b))
    out.push({ kind: "overlap", blockIds, bedIds, text: say("company.breach.overlap", names) });
  if (waterClash(m, i, a, j, b)) {
    const where = (m.beds[a.bed] as ModelBed).bed.valveId === undefined ? "bed" : "valve";
    out.push({ kind: "water", blockIds, bedIds, text: say(`company.breach.water-${where}`, names) });
  }
  if (tooNearForSeed(m, i, a, j, b)) {
    const needed = neededIsolationM(m.blocks[i] as ModelBlock, m.blocks[j] as ModelBlock);
    const params = { ...names, gap: measure(gapM(m, a, b) as number, "m"), needed: measure(needed, "m") };
    out.push({ kind: "isolation", blockIds, bedIds, text: say("company.breach.isolation", params) });
  }
  return out;
}
