import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type {} from "vitest";
import type { TestProject } from "vitest/node";
import { buildDashboard, dashboardIsBuilt } from "../../infra/build.mjs";
import { ensureChromium } from "../../infra/chromium.mjs";
import { newSecrets } from "../../infra/home.mjs";
import { ensureDatabase } from "../../infra/postgres/connect.mjs";
import { startThrowawayServer } from "../../infra/postgres/server.mjs";
import { openFamily } from "../../infra/process/family.mjs";
import { findFreePort } from "../../infra/process/ports.mjs";
import { openProgress } from "../../infra/process/progress.mjs";
import { type SignIn, startStack } from "../../infra/stack.mjs";

declare module "vitest" {
  export interface ProvidedContext {
    dashboardUrl: string;
    apiUrl: string;
    agent: SignIn;
    farmer: SignIn;
    chromiumPath: string;
  }
}

/**
 * Brings up the whole of Pith for the browser tests, the same way `npm start` does, on a database that lives as
 * long as they do; tests read the addresses and sign-ins by `inject("dashboardUrl")` and the like.
 */
export default async function setUp(project: TestProject) {
  const { signal } = new AbortController();
  const folder = mkdtempSync(join(tmpdir(), "pith-stack-"));
  const family = openFamily({ folder, signal });
  const undo: Array<() => unknown> = [() => rmSync(folder, { recursive: true, force: true })];
  const tearDown = async () => {
    for (const each of undo.toReversed()) await each();
  };
  try {
    project.provide("chromiumPath", await ensureChromium(family));
    if (!dashboardIsBuilt()) await buildDashboard(family, signal);
    const server = await startThrowawayServer();
    undo.push(server.stop, family.endAll);
    const stack = await startStack({
      family,
      progress: openProgress(),
      signal,
      adminUrl: await ensureDatabase(server.adminUrl, "pith"),
      secrets: newSecrets(),
      mailFolder: join(folder, "mail"),
      apiPort: await findFreePort(),
      dashboardPort: await findFreePort(),
    });
    const { dashboardUrl, apiUrl, agent, farmer } = stack;
    if (!agent || !farmer) throw new Error("a fresh database has no demo sign-ins");
    project.provide("dashboardUrl", dashboardUrl);
    project.provide("apiUrl", apiUrl);
    project.provide("agent", agent);
    project.provide("farmer", farmer);
    return tearDown;
  } catch (error) {
    await tearDown();
    throw error;
  }
}
