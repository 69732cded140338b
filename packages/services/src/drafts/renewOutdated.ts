import { drafts } from "@pith/db";
import { rules } from "@pith/rules";
import { and, eq, sql } from "drizzle-orm";
import { type Ctx, inOffice } from "../context.ts";
import { adviseFarm } from "./adviseFarm.ts";

/**
 * Makes drafts anew that another version of a rule made, before anybody reads them: the words and numbers they were
 * written with may not be known to this program any more.
 */
export async function renewOutdated(ctx: Ctx): Promise<void> {
  const current = sql.join(
    rules.map(({ id, version }) => sql`(${id}, ${version}::integer)`),
    sql`, `,
  );
  const outdated = await inOffice(ctx, (tx) =>
    tx
      .selectDistinct({ farmId: drafts.farmId })
      .from(drafts)
      .where(
        and(
          eq(drafts.officeId, ctx.officeId),
          sql`(${drafts.ruleId}, ${drafts.ruleVersion}) not in (${current})`,
        ),
      ),
  );
  for (const { farmId } of outdated) await inOffice(ctx, (tx) => adviseFarm(tx, ctx, farmId));
}
