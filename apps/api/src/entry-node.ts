import { createAdaptorServer } from "@hono/node-server";
import { proxiesIn } from "@pith/contract";
import { assertUnprivileged, openAuthDatabase, openDatabase } from "@pith/db";
import { forecastSettings, forecastSourcesOf, openLedgerTools, postOf } from "@pith/services";
import { pino } from "pino";
import { z } from "zod";
import { createApp } from "./app.ts";
import { createAuth } from "./auth.ts";
import { ledgerSettings, readBundleIn } from "./keptRules.ts";
import { deliveryMeansOf, deliverySettings } from "./worker/deliveryMeans.ts";
import { openMail } from "./worker/openMail.ts";
import { pullsUnnamed, saysWhoAsks, workerSettings } from "./worker/settings.ts";
import { startWorker } from "./worker/startWorker.ts";

/** The API on Node. Only this file and its edge twin touch the environment. */

/**
 * A kept connection is closed later than any caller here lets it rest: whoever closes first decides, and a request that is
 * just being sent must not meet the other's closing. Headers may be awaited for as long again (common practice).
 */
const IDLE = { keepAliveTimeout: 75_000, headersTimeout: 80_000 };

const readConfig = (env: Record<string, string | undefined>) =>
  z
    .object({
      DATABASE_URL_APP: z.url(),
      DATABASE_URL_AUTH: z.url(),
      AUTH_SECRET: z.string().min(32),
      HOST: z.string().default("127.0.0.1"),
      PORT: z.coerce.number().int().min(0).max(65_535).default(8787),
      /** Network addresses of proxies in front that say truly for whom they call, with commas between. */
      PITH_PROXIES: z.string().default("").transform(proxiesIn),
      LOG_LEVEL: z.enum(["debug", "info", "warn", "error", "silent"]).default("info"),
      PITH_FORECAST_CONTACT: forecastSettings.contact,
      PITH_FORECAST_URL: forecastSettings.url,
      ...ledgerSettings,
      /** Where it is set, this process does the jobs as well; else a worker alone does. */
      DATABASE_URL_JOBS: z.url().optional(),
      ...workerSettings,
      ...deliverySettings,
    })
    .refine(saysWhoAsks, pullsUnnamed)
    .parse(env);

const stop = (message: string): never => {
  process.stderr.write(`${message}\n`);
  process.exit(1);
};

/** Drizzle says which query failed; what matters to whoever starts the API is why. */
function reasonOf(error: unknown, host: string): string {
  const cause = error instanceof Error && error.cause instanceof Error ? error.cause : error;
  const code = cause instanceof Error && "code" in cause ? String(cause.code) : "";
  if (/^(E[A-Z_]+|CONNECT\w*)$/.test(code)) return `The database at ${host} does not answer (${code}).`;
  return cause instanceof Error ? cause.message : String(cause);
}

async function main(): Promise<void> {
  const config = readConfig(process.env);
  const logger = pino({ level: config.LOG_LEVEL });
  const db = openDatabase(config.DATABASE_URL_APP, { max: 10 });
  const authDb = openAuthDatabase(config.DATABASE_URL_AUTH, { max: 5 });
  await assertUnprivileged(db).catch((error: unknown) => {
    throw new Error(reasonOf(error, new URL(config.DATABASE_URL_APP).host));
  });
  const post = postOf(authDb, config.DASHBOARD_ORIGIN);
  const auth = createAuth({
    authDb,
    post,
    secret: config.AUTH_SECRET,
    baseUrl: `http://${config.HOST}:${config.PORT}`,
    trustedOrigins: [config.DASHBOARD_ORIGIN],
  });
  const now = () => new Date();
  const log = ({ level, ...line }: Record<string, unknown>) =>
    level === "error" ? logger.error(line) : logger.info(line);
  const forecastSources = forecastSourcesOf(config);
  const ledger = await openLedgerTools(config, readBundleIn(config.PITH_RULES_BUNDLES));
  const delivery = deliveryMeansOf(config);
  const app = createApp({
    connect: () => ({ db, authDb, auth, post }),
    secret: config.AUTH_SECRET,
    proxies: config.PITH_PROXIES,
    now,
    log,
    origins: [config.DASHBOARD_ORIGIN],
    forecastSources,
    ledger,
    delivery,
  });
  const server = createAdaptorServer({ fetch: app.fetch, serverOptions: IDLE });
  server.on("error", (error: NodeJS.ErrnoException) => {
    const taken = `Port ${config.PORT} is taken. Set PORT (npm start: PITH_API_PORT) to a free one.`;
    stop(error.code === "EADDRINUSE" ? taken : `The API cannot listen: ${error.message}`);
  });
  const worker = config.DATABASE_URL_JOBS
    ? startWorker({
        jobsUrl: config.DATABASE_URL_JOBS,
        deps: { db, now, forecastSources, ledger, delivery },
        mail: openMail(config),
        pullFor: config.PITH_PULL_FORECASTS,
        log,
      })
    : undefined;
  server.listen(config.PORT, config.HOST, () =>
    logger.info({ host: config.HOST, port: config.PORT }, "ready"),
  );

  const close = () => {
    const worked = worker?.stop(5_000);
    server.close(async () => {
      await worked;
      await Promise.all([db.close(), authDb.close()]);
      process.exit(0);
    });
    if ("closeIdleConnections" in server) server.closeIdleConnections();
  };
  process.once("SIGINT", close);
  process.once("SIGTERM", close);
}

main().catch((error: unknown) => {
  if (error instanceof z.ZodError) {
    stop(
      `The API's settings are wrong: ${error.issues.map((i) => `${i.path.join(".")} ${i.message}`).join("; ")}`,
    );
  }
  stop(`The API cannot start: ${error instanceof Error ? error.message : String(error)}`);
});
