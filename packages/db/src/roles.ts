import type { Sql } from "postgres";

export const appRole = "pith_app";
export const authRole = "pith_auth";

/**
 * Creates the two login roles where they are missing and gives them their passwords. Neither owns anything. Roles belong
 * to the server, not to one database: two databases of ours on one server share them.
 */
export async function createRoles(
  sql: Sql,
  passwords: { appPassword: string; authPassword: string },
): Promise<void> {
  await createRole(sql, appRole, passwords.appPassword);
  await createRole(sql, authRole, passwords.authPassword);
}

async function createRole(sql: Sql, role: string, password: string): Promise<void> {
  const [existing] = await sql<{ powerful: boolean }[]>`
    select rolsuper or rolbypassrls or rolcreaterole or rolcreatedb or rolreplication as powerful
    from pg_roles where rolname = ${role}`;
  if (existing?.powerful) {
    throw new Error(
      `The role "${role}" exists already and has powers that row-level security would not hold.`,
    );
  }
  const verb = existing ? "alter" : "create";
  // Roles take no bound values; the server quotes the password for us.
  const [statement] = await sql<{ text: string }[]>`
    select format('%s role %I login password %L', ${verb}::text, ${role}::text, ${password}::text) as text`;
  if (statement) await sql.unsafe(statement.text);
}
