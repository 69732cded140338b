import { type Note, recordRoutes } from "@pith/contract";
import { fieldNotes } from "@pith/db";
import { nowOf } from "../context.ts";
import { belongsHere } from "../farms/belongsHere.ts";
import { eraseText, keepText } from "../texts.ts";
import { type RecordKind, verbsOf } from "./record.ts";

const note: RecordKind<Note, typeof fieldNotes> = {
  one: "field note",
  route: recordRoutes.notes.add,
  table: fieldNotes,
  check: (tx, at, { plantingId }) => belongsHere(tx, at, "planting", "plantingId", plantingId),
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
