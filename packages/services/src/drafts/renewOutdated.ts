import { rules } from "@pith/rules";
import { sql } from "drizzle-orm";
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
  // From one rule and version to the next through the index: there are few of them and many drafts.
  const outdated = await inOffice(ctx, (tx) =>
    tx.execute<{ farmId: string }>(sql`
      with recursive seen (rule_id, rule_version) as (
        (select rule_id, rule_version from drafts where office_id = ${ctx.officeId}
          order by rule_id, rule_version limit 1)
        union all
        select next.rule_id, next.rule_version from seen, lateral (
          select rule_id, rule_version from drafts
          where office_id = ${ctx.officeId} and (rule_id, rule_version) > (seen.rule_id, seen.rule_version)
          order by rule_id, rule_version limit 1) next)
      select distinct drafts.farm_id as "farmId" from seen join drafts
        on drafts.office_id = ${ctx.officeId} and drafts.rule_id = seen.rule_id and drafts.rule_version = seen.rule_version
      where (seen.rule_id, seen.rule_version) not in (${current})`),
  );
  for (const { farmId } of outdated) await inOffice(ctx, (tx) => adviseFarm(tx, ctx, farmId));
}
