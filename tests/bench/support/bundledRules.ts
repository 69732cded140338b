import { mkdirSync } from "node:fs";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import type * as Rules from "@pith/rules";
import type * as WhatIf from "@pith/rules/what-if";
import { build } from "esbuild";

/**
 * The rules as they really run, in one file: the test runner reads each import through a getter, which doubles the time
 * of a tight loop.
 */
export const bundledRules = () => bundled<typeof Rules>("rules", "index.ts");
export const bundledWhatIf = () => bundled<typeof WhatIf>("what-if", "whatIf/index.ts");

async function bundled<T>(name: string, entry: string): Promise<T> {
  const root = (path: string) => fileURLToPath(new URL(`../../../${path}`, import.meta.url));
  // Among installed packages, because files there are left to the engine itself.
  const folder = root("node_modules/.cache/pith-bench");
  mkdirSync(folder, { recursive: true });
  const outfile = `${folder}/${name}.cjs`;
  await build({
    entryPoints: [root(`packages/rules/src/${entry}`)],
    outfile,
    bundle: true,
    format: "cjs",
    platform: "node",
    logLevel: "error",
  });
  return createRequire(import.meta.url)(outfile) as T;
}
