import { assertUnprivileged, openDatabase } from "@pith/db";
import { forecastSettings, forecastSourcesOf, openLedgerTools } from "@pith/services";
import { pino } from "pino";
import { z } from "zod";
import { ledgerSettings, readBundleIn } from "./keptRules.ts";
import { deliveryMeansOf, deliverySettings } from "./worker/deliveryMeans.ts";
import { openMail } from "./worker/openMail.ts";
import { pullsUnnamed, saysWhoAsks, workerSettings } from "./worker/settings.ts";
import { startWorker } from "./worker/startWorker.ts";

/** The worker alone, for a deployment whose API runs elsewhere: on several machines, or on the edge. */

const readConfig = (env: Record<string, string | undefined>) =>
  z
    .object({
      DATABASE_URL_APP: z.url(),
      DATABASE_URL_JOBS: z.url(),
      LOG_LEVEL: z.enum(["debug", "info", "warn", "error", "silent"]).default("info"),
      PITH_FORECAST_CONTACT: forecastSettings.contact,
      PITH_FORECAST_URL: forecastSettings.url,
      ...ledgerSettings,
      PITH_JOBS_AT_ONCE: z.coerce.number().int().min(1).max(50).default(4),
      ...workerSettings,
      ...deliverySettings,
    })
    .refine(saysWhoAsks, pullsUnnamed)
    .parse(env);

const stop = (message: string): never => {
  process.stderr.write(`${message}\n`);
  process.exit(1);
};

async function main(): Promise<void> {
  const config = readConfig(process.env);
  const logger = pino({ level: config.LOG_LEVEL });
  const log = ({ level, ...line }: Record<string, unknown>) =>
    level === "error" ? logger.error(line) : logger.info(line);
  const db = openDatabase(config.DATABASE_URL_APP, { max: config.PITH_JOBS_AT_ONCE + 2 });
  await assertUnprivileged(db);
  const worker = startWorker({
    jobsUrl: config.DATABASE_URL_JOBS,
    deps: {
      db,
      now: () => new Date(),
      forecastSources: forecastSourcesOf(config),
      ledger: await openLedgerTools(config, readBundleIn(config.PITH_RULES_BUNDLES)),
      delivery: deliveryMeansOf(config),
    },
    mail: openMail(config),
    pullFor: config.PITH_PULL_FORECASTS,
    concurrency: config.PITH_JOBS_AT_ONCE,
    log,
  });
  const close = async () => {
    await worker.stop();
    await db.close();
    process.exit(0);
  };
  process.once("SIGINT", close);
  process.once("SIGTERM", close);
}

main().catch((error: unknown) => {
  if (error instanceof z.ZodError) {
    stop(
      `The worker's settings are wrong: ${error.issues.map((i) => `${i.path.join(".")} ${i.message}`).join("; ")}`,
    );
  }
  stop(`The worker cannot start: ${error instanceof Error ? error.message : String(error)}`);
});
