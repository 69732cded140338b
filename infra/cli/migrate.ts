import { migrate } from "@pith/db/migrate";

/**
 * Brings the tables, roles and policies of a database up to date.
 * Reads DATABASE_URL (a user that may create roles), PITH_APP_PASSWORD, PITH_AUTH_PASSWORD and PITH_JOBS_PASSWORD.
 */
const required = (name: string): string => {
  const value = process.env[name];
  if (!value) throw new Error(`${name} must be set`);
  return value;
};

await migrate({
  adminUrl: required("DATABASE_URL"),
  appPassword: required("PITH_APP_PASSWORD"),
  authPassword: required("PITH_AUTH_PASSWORD"),
  jobsPassword: required("PITH_JOBS_PASSWORD"),
});
console.log("The tables are up to date.");
