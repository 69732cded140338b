import { type Note, recordRoutes } from "@pith/contract";
import { fieldNotes } from "@pith/db";
import { and, eq } from "drizzle-orm";
import { nowOf } from "../context.ts";
import { belongsHere } from "../farms/belongsHere.ts";
import { eraseText, keepText } from "../texts.ts";
import { type RecordKind, verbsOf } from "./record.ts";

const note: RecordKind<Note> = {
  one: "field note",
  route: recordRoutes.notes.add,
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
  find: async (tx, at, id) =>
    (
      await tx
        .select({ recordedBy: fieldNotes.recordedBy })
        .from(fieldNotes)
        .where(
          and(eq(fieldNotes.officeId, at.officeId), eq(fieldNotes.farmId, at.farmId), eq(fieldNotes.id, id)),
        )
    )[0],
  async remove(tx, ctx, _farmId, id) {
    const [gone] = await tx
      .delete(fieldNotes)
      .where(and(eq(fieldNotes.officeId, ctx.officeId), eq(fieldNotes.id, id)))
      .returning({ textId: fieldNotes.textId });
    if (gone?.textId) await eraseText(tx, ctx, gone.textId);
  },
};

export const { add: addNote, remove: removeNote } = verbsOf(note);
