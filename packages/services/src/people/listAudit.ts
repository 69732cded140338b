import { type AuditLine, peopleRoutes } from "@pith/contract";
import { auditLog } from "@pith/db";
import { and, desc, eq, like, sql } from "drizzle-orm";
import { readPeople } from "../advice/names.ts";
import { type Ctx, inOffice, requireLead } from "../context.ts";
import { ServiceError } from "../errors.ts";
import { queryOf } from "../wellFormed.ts";

/** The office's audit, newest first, a page at a time. */
export async function listAudit(
  ctx: Ctx,
  raw: unknown,
): Promise<{ lines: AuditLine[]; next: string | null }> {
  requireLead(ctx);
  const { after, action, limit = 50 } = queryOf(peopleRoutes.listAudit, raw);
  const from = after === undefined ? undefined : placeOf(after);
  const rows = await inOffice(ctx, (tx) =>
    tx
      .select({
        id: auditLog.id,
        at: auditLog.at,
        // To the microsecond: what the page starts after must be the row itself.
        exactly: sql<string>`to_char(${auditLog.at} at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.US"Z"')`,
        userId: auditLog.userId,
        action: auditLog.action,
        entity: auditLog.entity,
        entityId: auditLog.entityId,
        detail: auditLog.detail,
      })
      .from(auditLog)
      .where(
        and(
          eq(auditLog.officeId, ctx.officeId),
          action === undefined ? undefined : like(auditLog.action, `${action.replace(/[\\%_]/g, "\\$&")}%`),
          from && sql`(${auditLog.at}, ${auditLog.id}) < (${from.at}::timestamptz, ${from.id}::uuid)`,
        ),
      )
      .orderBy(desc(auditLog.at), desc(auditLog.id))
      .limit(limit + 1),
  );
  const page = rows.slice(0, limit);
  const names = await readPeople(
    ctx,
    page.flatMap((r) => r.userId ?? []),
  );
  const last = page.at(-1);
  return {
    lines: page.map(({ exactly: _, userId, ...line }) => ({
      ...line,
      who: (userId && names.get(userId)) || null,
    })),
    next: rows.length > limit && last ? `${last.exactly}_${last.id}` : null,
  };
}

const PLACE =
  /^(\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{6}Z)_([0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12})$/;

function placeOf(after: string): { at: string; id: string } {
  const [, at, id] = PLACE.exec(after) ?? [];
  if (!at || !id || Number.isNaN(Date.parse(at))) {
    const message = "must be what `next` of the page before said";
    throw new ServiceError("invalid", `after: ${message}`, [{ field: "after", message, received: after }]);
  }
  return { at, id };
}
