import { sql } from "drizzle-orm";
import { type Db, poolOf } from "./open.ts";

/**
 * Refuses to go on as a role that row-level security does not hold: superuser, BYPASSRLS, CREATEROLE (it could make
 * itself a member of the owner), owner of a tenant table or of its schema, or a member of any such role. Refuses as
 * well where a tenant table lacks forced row-level security or a policy. Throws an Error that says which in one sentence.
 */
export async function assertUnprivileged(db: Db): Promise<void> {
  const pool = poolOf(db);

  const powers = await pool.execute<{ me: string; role: string; power: string }>(sql`
    select session_user as me, r.rolname as role, p.power
    from pg_roles r
    cross join lateral (values
      ('is a superuser', r.rolsuper),
      ('has BYPASSRLS', r.rolbypassrls),
      ('has CREATEROLE', r.rolcreaterole)
    ) as p(power, has)
    where p.has and (pg_has_role(session_user, r.oid, 'member') or pg_has_role(current_user, r.oid, 'member'))
    order by r.rolname <> session_user, p.power = 'has CREATEROLE' limit 1`);
  const [power] = powers;
  if (power) {
    const who =
      power.role === power.me
        ? `role "${power.me}"`
        : `role "${power.me}" is a member of "${power.role}", which`;
    throw new Error(
      `The database ${who} ${power.power}, so row-level security would not hold it; log in as pith_app.`,
    );
  }

  const tables = await pool.execute<{
    me: string;
    name: string;
    owned: boolean;
    forced: boolean;
    policies: number;
  }>(sql`
    select session_user as me, c.oid::regclass::text as name,
      pg_has_role(session_user, c.relowner, 'member') or pg_has_role(session_user, n.nspowner, 'member') as owned,
      c.relrowsecurity and c.relforcerowsecurity as forced,
      (select count(*)::int from pg_policy p where p.polrelid = c.oid) as policies
    from pg_class c join pg_namespace n on n.oid = c.relnamespace
    where n.nspname = 'public' and c.relkind in ('r', 'p')
      and (c.relname = 'offices' or exists (
        select from pg_attribute a where a.attrelid = c.oid and a.attname = 'office_id' and not a.attisdropped))
    order by c.relname`);
  if (tables.length === 0)
    throw new Error("The database has no tenant tables yet; run the migrations first.");
  for (const table of tables) {
    if (table.owned) {
      throw new Error(
        `The database role "${table.me}" owns the table ${table.name} or its schema, so it could switch row-level security off; log in as pith_app.`,
      );
    }
    if (!table.forced || table.policies === 0) {
      throw new Error(
        `The tenant table ${table.name} lacks forced row-level security or a policy; run the migrations, or put it back.`,
      );
    }
  }
}
