import { photos, texts } from "@pith/db";
import { and, eq, isNull, or, type SQL, sql } from "drizzle-orm";
import type { Ctx } from "../context.ts";

/** What of an office is a person's own: their words and their photographs. */

/** Of older words, who wrote them is said only by the row that they belong to. */
const OLDER = [
  ["field_notes", "text_id", "recorded_by"],
  ["signs", "text_id", "recorded_by"],
  ["answers", "reason_text_id", "answered_by"],
  ["advisories", "note_text_id", "issued_by"],
  ["advisories", "withdrawn_text_id", "withdrawn_by"],
  ["applications", "person_text_id", "recorded_by"],
] as const;

/** Words that a person wrote. */
export function wordsOf({ officeId }: Ctx, userId: string): SQL | undefined {
  const older = OLDER.map(
    ([table, text, who]) =>
      sql`(${texts.writtenBy} is null and exists (select from ${sql.raw(table)} o
        where o.office_id = ${officeId} and o.${sql.raw(text)} = ${texts.id} and o.${sql.raw(who)} = ${userId}))`,
  );
  return and(eq(texts.officeId, officeId), isNull(texts.erasedAt), or(eq(texts.writtenBy, userId), ...older));
}

export const picturesOf = ({ officeId }: Ctx, userId: string): SQL | undefined =>
  and(eq(photos.officeId, officeId), eq(photos.recordedBy, userId));

/** Everybody who has words or photographs here, with the name of a farm that they are of. */
export function everybodysFarms({ officeId }: Ctx): SQL {
  const older = OLDER.map(
    ([table, text, who]) => sql`union all select o.${sql.raw(who)}, t.farm_id
      from texts t join ${sql.raw(table)} o on o.office_id = t.office_id and o.${sql.raw(text)} = t.id
      where t.office_id = ${officeId} and t.written_by is null and t.erased_at is null`,
  );
  return sql`select w.user_id as "userId", coalesce(min(f.name), '') as "farmName" from (
      select written_by as user_id, farm_id from texts where office_id = ${officeId} and erased_at is null
      union all select recorded_by, farm_id from photos where office_id = ${officeId}
      ${sql.join(older, sql` `)}
    ) w left join farms f on f.office_id = ${officeId} and f.id = w.farm_id
    where w.user_id is not null group by w.user_id order by 2, 1`;
}
