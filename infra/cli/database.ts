import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { appUrl } from "@pith/db/migrate";
import { openHome } from "../home.mjs";
import { ask } from "../postgres/connect.mjs";
import { startServer } from "../postgres/server.mjs";
import { PlainFailure } from "../process/failure.mjs";
import { takeLock } from "../process/lock.mjs";

/** The database a command works on, while it works. */
export interface OpenDatabase {
  /** Logs in as `pith_app`. */
  appUrl: string;
  /** Every office, where this login may see them all; undefined where it may not. */
  offices(): Promise<{ id: string; name: string }[] | undefined>;
  close(): Promise<void>;
}

/**
 * Finds the database: DATABASE_URL_APP, or DATABASE_URL with the password that `npm start` keeps, or the server of
 * `npm start`; where that one is not running, it runs for as long as the command does.
 *
 * @throws PlainFailure in one sentence where there is none
 */
export async function findDatabase(env: Record<string, string | undefined>): Promise<OpenDatabase> {
  const noRest = { offices: async () => undefined, close: async () => {} };
  if (env.DATABASE_URL_APP) return { appUrl: env.DATABASE_URL_APP, ...noRest };
  const home = openHome();
  const secrets = join(home, "secrets.json");
  if (!existsSync(secrets)) {
    throw new PlainFailure("There is no database here yet: run npm start once, or set DATABASE_URL_APP.");
  }
  const { appPassword } = JSON.parse(readFileSync(secrets, "utf8")) as { appPassword: string };
  if (env.DATABASE_URL) {
    return {
      appUrl: appUrl(env.DATABASE_URL, appPassword),
      offices: () => allOffices(env.DATABASE_URL ?? ""),
      close: async () => {},
    };
  }

  const dataDir = join(home, "postgres");
  if (!existsSync(`${dataDir}.password`)) {
    throw new PlainFailure("There is no database here yet: run npm start once, or set DATABASE_URL_APP.");
  }
  // Held while a server of ours may have to be stopped again, so that npm start cannot come to lean on it meanwhile.
  const lock = takeLock(join(home, "start.lock"), "a command");
  const server = await startServer({ dataDir });
  const admin = new URL(server.adminUrl);
  admin.pathname = "/pith";
  return {
    appUrl: appUrl(admin.href, appPassword),
    offices: () => allOffices(admin.href),
    close: async () => {
      if ("heldBy" in lock) return; // npm start runs: it is its server
      await server.stop();
      lock.release();
    },
  };
}

/** Row-level security shows them all to a superuser only. */
async function allOffices(adminUrl: string): Promise<{ id: string; name: string }[] | undefined> {
  const [me] = await ask(adminUrl, "select rolsuper from pg_roles where rolname = session_user");
  if (me?.rolsuper !== true) return undefined;
  const rows = await ask(adminUrl, "select id, name from offices order by name, id");
  return rows.map(({ id, name }) => ({ id: String(id), name: String(name) }));
}
