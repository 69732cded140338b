import type { Tx } from "@pith/db";
import { and, eq } from "drizzle-orm";
import type { PgColumn, PgTable } from "drizzle-orm/pg-core";
import { recordAudit } from "../audit.ts";
import { type Ctx, forOffice, requireOwnFarm } from "../context.ts";
import { adviseFarm } from "../drafts/adviseFarm.ts";
import { found, ServiceError } from "../errors.ts";
import type { OfFarm } from "../farms/ofFarm.ts";
import { lockFarm } from "../farms/requireFarm.ts";
import { bodyOf } from "../wellFormed.ts";
import { refuseFuture } from "./past.ts";

/** A table of records: whose, who wrote each, and the issued advice whose answer wrote it, if answers do. */
export type RecordTable = PgTable & {
  [column in "officeId" | "farmId" | "id" | "recordedBy"]: PgColumn;
} & { advisoryId?: PgColumn };

/** One kind of record: what differs between notes, applications, waterings and harvests. */
export interface RecordKind<View extends { id: string }, Table extends RecordTable> {
  one: string;
  route: Parameters<typeof bodyOf>[0];
  table: Table;
  /** What the wire's schema cannot see. */
  check(tx: Tx, at: OfFarm, value: Omit<View, "id">): Promise<void>;
  add(tx: Tx, ctx: Ctx, farmId: string, value: Omit<View, "id">): Promise<View>;
  /** What else goes with the row that was taken back. */
  removed?(tx: Tx, ctx: Ctx, row: Table["$inferSelect"]): Promise<void>;
}

/** The two verbs of a record, for agents and for the farm's own people. */
export function verbsOf<View extends { id: string }, Table extends RecordTable>(
  kind: RecordKind<View, Table>,
) {
  const table: RecordTable = kind.table;
  return {
    /** Writes down what was done or seen; what depends on it is advised again. */
    async add(ctx: Ctx, farmId: string, raw: unknown): Promise<View> {
      requireOwnFarm(ctx, farmId);
      // The route's schema is the view's without its id; its type is lost where the contract builds it.
      const value = bodyOf(kind.route, raw) as Omit<View, "id">;
      return forOffice(ctx, async (tx) => {
        await lockFarm(tx, ctx, farmId);
        await refuseFuture(tx, ctx, farmId, value);
        await kind.check(tx, { officeId: ctx.officeId, farmId }, value);
        const view = await kind.add(tx, ctx, farmId, value);
        await recordAudit(tx, ctx, { action: `${kind.one}.add`, entity: kind.one, entityId: view.id });
        await adviseFarm(tx, ctx, farmId);
        return view;
      });
    },

    /** Takes back what was entered by mistake: a farmer what they wrote themselves, an agent anything. */
    async remove(ctx: Ctx, farmId: string, id: string): Promise<{ done: true }> {
      requireOwnFarm(ctx, farmId);
      return forOffice(ctx, async (tx) => {
        await lockFarm(tx, ctx, farmId);
        const ofRecord = and(eq(table.officeId, ctx.officeId), eq(table.farmId, farmId), eq(table.id, id));
        const [row] = (await tx.select().from(table).where(ofRecord)) as {
          recordedBy: string | null;
          advisoryId?: string | null;
        }[];
        const { recordedBy, advisoryId } = found(row, kind.one);
        if (ctx.actor.role === "farmer" && recordedBy !== ctx.actor.userId) {
          throw new ServiceError(
            "forbidden",
            `Only who wrote this ${kind.one}, or an agent, may take it back.`,
          );
        }
        if (advisoryId) {
          throw new ServiceError(
            "conflict",
            `This ${kind.one} came with the answer to an advice; answer that advice again to correct it.`,
          );
        }
        await tx.delete(table).where(ofRecord);
        await kind.removed?.(tx, ctx, row as Table["$inferSelect"]);
        await recordAudit(tx, ctx, { action: `${kind.one}.remove`, entity: kind.one, entityId: id });
        await adviseFarm(tx, ctx, farmId);
        return { done: true as const };
      });
    },
  };
}
