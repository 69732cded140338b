import { openAuthDatabase, openDatabase } from "@pith/db";
import { forecastSourcesOf, openLedgerTools, postOf } from "@pith/services";
import { createApp } from "./app.ts";
import { createAuth } from "./auth.ts";

/** What the deployment binds to the worker. */
interface Bindings {
  /** Through a transaction-mode pooler: the worker opens a connection for each request. */
  DATABASE_URL_APP: string;
  DATABASE_URL_AUTH: string;
  AUTH_SECRET: string;
  API_ORIGIN: string;
  DASHBOARD_ORIGIN: string;
  /** As `forecastSettings` says. There is no clock here: something outside calls the route. */
  PITH_FORECAST_CONTACT?: string;
  PITH_FORECAST_URL?: string;
  /** Private JWK, Ed25519, that checkpoints and exports are signed with. */
  LEDGER_SIGNING_KEY?: string;
  /** SHA-256 of the bundle of the rules in this worker. Kept rules of older releases are run by a worker on Node. */
  PITH_RULES_BUNDLE?: string;
  /** What browsers subscribe with, and what webhooks' secrets are sealed with. A worker on Node does the sending. */
  VAPID_PUBLIC_KEY?: string;
  PITH_SEAL_KEY?: string;
}

/**
 * The API on an edge runtime. A connection belongs to the request that opened it there, so each request opens its own
 * and closes it after the answer. The routes are built once a worker.
 */
let app: Promise<ReturnType<typeof createApp>> | undefined;

function appFor(env: Bindings) {
  app ??= openApp(env);
  return app;
}

async function openApp(env: Bindings) {
  return createApp({
    connect: () => {
      const db = openDatabase(env.DATABASE_URL_APP, { max: 1, prepare: false });
      const authDb = openAuthDatabase(env.DATABASE_URL_AUTH, { max: 1, prepare: false });
      const post = postOf(authDb, env.DASHBOARD_ORIGIN);
      const auth = createAuth({
        authDb,
        post,
        secret: env.AUTH_SECRET,
        baseUrl: env.API_ORIGIN,
        trustedOrigins: [env.DASHBOARD_ORIGIN],
      });
      return {
        db,
        authDb,
        auth,
        post,
        close: async () => void (await Promise.all([db.close(), authDb.close()])),
      };
    },
    secret: env.AUTH_SECRET,
    now: () => new Date(),
    log: (line) => console.log(JSON.stringify(line)),
    origins: [env.DASHBOARD_ORIGIN],
    forecastSources: forecastSourcesOf(env),
    ledger: await openLedgerTools(env),
    delivery: {
      dashboardUrl: env.DASHBOARD_ORIGIN.replace(/\/$/, ""),
      mail: true,
      ...(env.VAPID_PUBLIC_KEY && { push: { publicKey: env.VAPID_PUBLIC_KEY } }),
      ...(env.PITH_SEAL_KEY && { sealKey: env.PITH_SEAL_KEY }),
    },
  });
}

export default {
  fetch: async (
    request: Request,
    env: Bindings,
    ctx: { waitUntil(p: Promise<unknown>): void; passThroughOnException(): void },
  ) => (await appFor(env)).fetch(request, env, ctx as never),
};
