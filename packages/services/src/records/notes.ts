import { type Note, recordRoutes } from "@pith/contract";
import { fieldNotes } from "@pith/db";
import { nowOf } from "../context.ts";
import { ServiceError } from "../errors.ts";
import { belongsHere } from "../farms/belongsHere.ts";
import { eraseText, keepText } from "../texts.ts";
import { type RecordKind, verbsOf } from "./record.ts";

/**
 * What can be measured of a planting, in the unit that the kind names. What lies outside was typed in another unit or
 * is a slip of the pen (common practice).
 */
const BOUNDS: { [kind in Note["kind"]]?: [least: number, most: number] } = {
  "true-leaves": [0, 200],
  "height-cm": [0, 400],
  "stem-diameter-mm": [0, 100],
  "soil-temperature-10cm-c": [-20, 50],
  "ground-cover-pct": [0, 100],
  "spare-plants": [0, 1000],
};

function requirePossible({ kind, value }: Pick<Note, "kind" | "value">): void {
  const [least, most] = BOUNDS[kind] ?? [];
  if (least === undefined || most === undefined || (value !== null && value >= least && value <= most))
    return;
  const field = "value";
  const message =
    value === null
      ? "must be given for what is counted or measured"
      : value < least
        ? `must be at least ${least}`
        : `must be at most ${most}`;
  throw new ServiceError("invalid", `${field} ${message}.`, [
    { field, message, accepted: `${least} to ${most}`, received: value },
  ]);
}

const note: RecordKind<Note, typeof fieldNotes> = {
  one: "field note",
  route: recordRoutes.notes.add,
  table: fieldNotes,
  async check(tx, at, written) {
    requirePossible(written);
    await belongsHere(tx, at, "planting", "plantingId", written.plantingId);
  },
  async add(tx, ctx, farmId, { plantingId, on, kind, value, text }) {
    const id = globalThis.crypto.randomUUID();
    const kept = await keepText(tx, ctx, farmId, text);
    await tx.insert(fieldNotes).values({
      officeId: ctx.officeId,
      farmId,
      id,
      plantingId,
      onDay: on,
      kind,
      value,
      textId: kept?.id ?? null,
      recordedBy: ctx.actor.userId,
      recordedAt: nowOf(ctx),
    });
    return { id, plantingId, on, kind, value, text };
  },
  async removed(tx, ctx, { textId }) {
    if (textId) await eraseText(tx, ctx, textId);
  },
};

export const { add: addNote, remove: removeNote } = verbsOf(note);
