// @ts-check
import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { DASHBOARD_SERVER } from "./build.mjs";
import { ROOT } from "./home.mjs";
import { diskIsFull, fullDisk, PlainFailure } from "./process/failure.mjs";
import { until } from "./process/wait.mjs";
import { programArgs } from "./programs.mjs";
import { keepRulesBundle } from "./rulesBundle.mjs";

/**
 * @typedef {{ email: string, password: string }} SignIn
 * @typedef {object} Stack
 * @property {string} dashboardUrl
 * @property {string} apiUrl
 * @property {SignIn} [agent] of the demo office, where there is one
 * @property {SignIn} [farmer]
 * @property {Promise<PlainFailure>} broken fulfilled when the API or the dashboard ended by itself
 */

/** @param {string} adminUrl @param {string} role @param {string} password */
function urlFor(adminUrl, role, password) {
  const url = new URL(adminUrl);
  url.username = role;
  url.password = password;
  return url.href;
}

/** @param {string} file */
const ours = async (file) => ({ command: process.execPath, args: await programArgs(file), cwd: ROOT });

/**
 * Migrates and seeds a database, starts the API and the dashboard on it, and waits until both answer. The one way
 * to bring Pith up: for a person by start.mjs, for the browser tests by tests/support/stack.ts.
 *
 * @param {object} options
 * @param {import("./process/family.mjs").Family} options.family which ends what is started here
 * @param {import("./process/progress.mjs").Progress} options.progress
 * @param {AbortSignal} options.signal
 * @param {string} options.adminUrl a user that may create roles and tables
 * @param {import("./home.mjs").Secrets} options.secrets
 * @param {string} options.mailFolder where letters are laid down, one file each, where SMTP_URL names no mail server
 * @param {number} options.apiPort
 * @param {number} options.dashboardPort
 * @returns {Promise<Stack>}
 */
export async function startStack({
  family,
  progress,
  signal,
  adminUrl,
  secrets,
  mailFolder,
  apiPort,
  dashboardPort,
}) {
  const apiUrl = `http://127.0.0.1:${apiPort}`;
  const dashboardUrl = `http://127.0.0.1:${dashboardPort}`;
  const bundle = await keepRulesBundle(dirname(family.logPath("api")));
  const { DATABASE_URL: _, ...inherited } = process.env; // what runs for good never sees the administrator's way in
  const forApp = {
    ...inherited,
    DATABASE_URL_APP: urlFor(adminUrl, "pith_app", secrets.appPassword),
    DATABASE_URL_AUTH: urlFor(adminUrl, "pith_auth", secrets.authPassword),
    DATABASE_URL_JOBS: urlFor(adminUrl, "pith_jobs", secrets.jobsPassword),
    AUTH_SECRET: secrets.authSecret,
    LEDGER_SIGNING_KEY: secrets.ledgerKey,
    PITH_RULES_BUNDLE: bundle.sha256,
    PITH_RULES_BUNDLES: bundle.folder,
    DASHBOARD_ORIGIN: dashboardUrl,
    PITH_MAIL_FOLDER: mailFolder,
    PITH_SEAL_KEY: secrets.sealKey,
    VAPID_PUBLIC_KEY: secrets.vapid.publicKey,
    VAPID_PRIVATE_KEY: secrets.vapid.privateKey,
    // Beside the letters: here nothing leaves the machine.
    PITH_TEXTS_FILE: join(mailFolder, "..", "texts.jsonl"),
    PITH_LOCAL_HOOKS: "yes",
  };
  const forAdmin = {
    ...forApp,
    DATABASE_URL: adminUrl,
    PITH_APP_PASSWORD: secrets.appPassword,
    PITH_AUTH_PASSWORD: secrets.authPassword,
    PITH_JOBS_PASSWORD: secrets.jobsPassword,
    API_ORIGIN: apiUrl,
  };

  /** @param {string} name @param {string} file @param {string} doing */
  const runOnce = async (name, file, doing) => {
    const { code, said, out } = await family.run({ name, ...(await ours(file)), env: forAdmin });
    if (code !== 0) throw await failureOf(said, doing, family.logPath(name));
    return out;
  };

  await progress.step("tables", "bringing up to date", async (tell) => {
    await runOnce("migrate", "infra/cli/migrate.ts", "bring the tables up to date");
    tell("up to date");
  });

  const api = family.start({
    name: "api",
    ...(await ours("apps/api/src/entry-node.ts")),
    env: { ...forApp, PORT: String(apiPort), HOST: "127.0.0.1" },
  });
  const dashboard = family.start({
    name: "dashboard",
    command: process.execPath,
    args: [DASHBOARD_SERVER],
    cwd: ROOT,
    env: {
      ...inherited,
      API_ORIGIN: apiUrl,
      PORT: String(dashboardPort),
      HOSTNAME: "127.0.0.1",
      NODE_ENV: "production",
      NEXT_TELEMETRY_DISABLED: "1",
    },
  });
  const broken = Promise.race([
    api.ended.then((ending) => stoppedByItself("API", api.logPath, ending)),
    dashboard.ended.then((ending) => stoppedByItself("dashboard", dashboard.logPath, ending)),
  ]);

  await progress.step("API", "starting", () => untilItAnswers("API", apiUrl, broken, signal));
  const signIns = await progress.step("demo", "looking after the demo office", () =>
    runOnce("seed", "infra/cli/seed.ts", "seed the demo office"),
  );
  await progress.step("dashboard", "starting", () =>
    untilItAnswers("dashboard", dashboardUrl, broken, signal),
  );
  return { dashboardUrl, apiUrl, ...readSignIns(signIns), broken };
}

/**
 * @param {string} name
 * @param {string} url
 * @param {Promise<PlainFailure>} broken
 * @param {AbortSignal} signal
 */
async function untilItAnswers(name, url, broken, signal) {
  /** @type {PlainFailure | undefined} */
  let failure;
  broken.then((why) => {
    failure = why;
  });
  const answered = await until(
    async () => {
      if (failure) throw failure;
      const answer = await fetch(`${url}/healthz`, { signal: AbortSignal.timeout(2_000) }).catch(
        () => undefined,
      );
      return answer?.ok || undefined;
    },
    { withinMs: 90_000, everyMs: 50, signal },
  );
  if (!answered)
    throw new PlainFailure(`The ${name} was started but did not answer at ${url}/healthz within 90 s.`);
}

/** @param {string} name @param {string} logPath @param {import("./process/family.mjs").Ending} ending */
async function stoppedByItself(name, logPath, { code, signal }) {
  const said = existsSync(logPath) ? readFileSync(logPath, "utf8") : "";
  if (await diskIsFull(logPath, said)) return fullDisk(logPath, `keep the ${name} running`);
  const how = signal ? `by ${signal}` : `with exit code ${code}`;
  const why = reasonIn(said);
  return new PlainFailure(`The ${name} stopped ${how}${why ? `: ${why}` : ""} (see ${logPath}).`);
}

/** @param {string} said @param {string} doing @param {string} logPath */
async function failureOf(said, doing, logPath) {
  if (await diskIsFull(logPath, said)) return fullDisk(logPath, doing);
  return new PlainFailure(
    `Pith could not ${doing}: ${reasonIn(said) || "it gave no reason"} (see ${logPath}).`,
  );
}

/** The line in which a program names its error, or else its last words that are not a line of a log.
 * @param {string} said */
function reasonIn(said) {
  const named = /^\s*\w*Error(?: \[\w+\])?: (.+)$/m.exec(said)?.[1];
  const spoken = said.split("\n").findLast((line) => /^[A-Z]/.test(line));
  return (named ?? spoken ?? "").trim().replace(/\.$/, "");
}

/** @param {string} out the seeding's output; the sign-ins are its last line
 * @returns {{ agent?: SignIn, farmer?: SignIn }} */
function readSignIns(out) {
  const { agent, farmer } = JSON.parse(out.trim().split("\n").at(-1) ?? "");
  return { agent, farmer };
}
