import { DrizzleQueryError } from "drizzle-orm";
import postgres from "postgres";

/** The SQLSTATE that something fails with; fails itself where nothing fails, or not in the database. */
export async function sqlState(attempt: PromiseLike<unknown>): Promise<string> {
  try {
    await attempt;
  } catch (error) {
    const cause = error instanceof DrizzleQueryError ? error.cause : error;
    if (cause instanceof postgres.PostgresError) return cause.code;
    throw error;
  }
  throw new Error("expected the database to refuse this, but it was done");
}
