import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openFamily } from "../../../infra/process/family.mjs";
import { findFreePort } from "../../../infra/process/ports.mjs";
import { until } from "../../../infra/process/wait.mjs";

const ROOT = join(import.meta.dirname, "..", "..", "..");
const NEXT = join(ROOT, "node_modules", "next", "dist", "bin", "next");

/** In the repository, where the app finds the dashboard's own Next and React; ignored by git, gone after the run. */
const OUTPUT = join(ROOT, "tests", ".output");

const FILES = {
  "next.config.mjs": `export default { turbopack: { root: ${JSON.stringify(ROOT)} }, reactStrictMode: true, poweredByHeader: false };`,
  "app/layout.jsx":
    "export default function Layout({ children }) { return <html lang='en'><head><link rel='icon' href='data:,' /></head><body>{children}</body></html>; }",
  "app/page.jsx": "export default function Page() { return <p>Empty</p>; }",
};

/**
 * Builds and serves an app of one page that says one word, with the same versions of Next and React as the dashboard.
 * What it costs is the framework's own; no page of the dashboard is as empty, for each stands in its layout.
 */
export async function serveEmptyPage(): Promise<{ url: string; stop: () => Promise<void> }> {
  mkdirSync(OUTPUT, { recursive: true });
  const cwd = mkdtempSync(join(OUTPUT, "empty-page-"));
  const folder = mkdtempSync(join(tmpdir(), "pith-empty-page-"));
  const family = openFamily({ folder, signal: new AbortController().signal });
  const stop = async () => {
    await family.endAll();
    for (const each of [cwd, folder]) rmSync(each, { recursive: true, force: true });
  };
  try {
    mkdirSync(join(cwd, "app"));
    for (const [name, text] of Object.entries(FILES)) writeFileSync(join(cwd, name), text);
    const env = { ...process.env, NODE_ENV: "production" as const, NEXT_TELEMETRY_DISABLED: "1" };
    const command = process.execPath;
    const built = await family.run({ name: "build", command, args: [NEXT, "build"], cwd, env });
    if (built.code !== 0) throw new Error(`the empty page could not be built: ${built.said}`);
    const port = String(await findFreePort());
    family.start({ name: "serve", command, args: [NEXT, "start", "-H", "127.0.0.1", "-p", port], cwd, env });
    const url = `http://127.0.0.1:${port}/`;
    const answered = await until(async () => (await fetch(url).catch(() => undefined))?.ok || undefined, {
      withinMs: 60_000,
      everyMs: 100,
    });
    if (!answered) throw new Error(`the empty page did not answer at ${url} within 60 s`);
    return { url, stop };
  } catch (error) {
    await stop();
    throw error;
  }
}
