import { randomBytes } from "node:crypto";
import { migrate } from "@pith/db/migrate";
import postgres from "postgres";
import type { TestProject } from "vitest/node";
import { startThrowawayServer } from "../../infra/postgres/server.mjs";
import { inDatabase } from "./inDatabase.ts";

/** One real server for a whole run, with one migrated database that every test file copies. */

declare module "vitest" {
  interface ProvidedContext {
    /** Address of the server's owner. */
    adminUrl: string;
    /** Name of the migrated database to copy; nobody connects to it. */
    templateName: string;
    appPassword: string;
    authPassword: string;
    jobsPassword: string;
  }
}

const TEMPLATE = "pith_template";

export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const server = await startThrowawayServer();
  try {
    const admin = postgres(server.adminUrl, { max: 1, onnotice: () => {} });
    await admin.unsafe(`create database ${TEMPLATE}`);
    await admin.end();
    const appPassword = randomBytes(12).toString("hex");
    const authPassword = randomBytes(12).toString("hex");
    const jobsPassword = randomBytes(12).toString("hex");
    const passwords = { appPassword, authPassword, jobsPassword };
    await migrate({ adminUrl: inDatabase(server.adminUrl, TEMPLATE), ...passwords });
    project.provide("adminUrl", server.adminUrl);
    project.provide("templateName", TEMPLATE);
    project.provide("appPassword", appPassword);
    project.provide("authPassword", authPassword);
    project.provide("jobsPassword", jobsPassword);
  } catch (error) {
    await server.stop();
    throw error;
  }
  return () => server.stop();
}
