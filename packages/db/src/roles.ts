import type { Sql } from "postgres";

export const appRole = "pith_app";
export const authRole = "pith_auth";
export const jobsRole = "pith_jobs";

/** Of the three login roles. */
export interface Passwords {
  appPassword: string;
  authPassword: string;
  jobsPassword: string;
}

/**
 * Creates the three login roles where they are missing and gives them their passwords. None owns a tenant's table; the
 * worker's owns the queue. Roles belong to the server, not to one database: two databases of ours on one server share them.
 */
export async function createRoles(sql: Sql, passwords: Passwords): Promise<void> {
  await createRole(sql, appRole, passwords.appPassword);
  await createRole(sql, authRole, passwords.authPassword);
  await createRole(sql, jobsRole, passwords.jobsPassword);
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
