// @ts-check
import { mkdirSync, renameSync, writeFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { basename, dirname, join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { ROOT } from "./home.mjs";

/** Programs written in TypeScript, each put into one file before it runs: reading hundreds of sources one by one takes seconds. */

/** Among installed packages, which the file still finds there. */
const FOLDER = join(ROOT, "node_modules", ".cache", "pith-programs");

/** Ours goes into the file; what is installed stays outside. */
const oursInside = {
  name: "ours-inside",
  /** @param {import("esbuild").PluginBuild} build */
  setup(build) {
    build.onResolve({ filter: /^[^./]/ }, ({ path, kind }) =>
      kind === "entry-point" || path.startsWith("@pith/") ? undefined : { path, external: true },
    );
    // A source that looks for files beside itself still finds them.
    build.onLoad({ filter: /\.(ts|mjs)$/ }, async ({ path }) => {
      const text = await readFile(path, "utf8");
      if (!text.includes("import.meta.")) return undefined;
      const contents = text
        .replaceAll("import.meta.url", JSON.stringify(pathToFileURL(path).href))
        .replaceAll("import.meta.dirname", JSON.stringify(dirname(path)));
      return { contents, loader: path.endsWith(".ts") ? "ts" : "js" };
    });
  },
};

/**
 * @param {string} source path of the program, from the root of the repository
 * @returns {Promise<string>} path of the one file, which node runs
 */
export async function bundleProgram(source) {
  const { build } = await import("esbuild"); // installed by now, which this file's import would not wait for
  const path = join(FOLDER, `${basename(dirname(source))}-${basename(source, ".ts")}.mjs`);
  const { outputFiles } = await build({
    entryPoints: [resolve(ROOT, source)],
    absWorkingDir: ROOT,
    outfile: path,
    bundle: true,
    write: false,
    format: "esm",
    platform: "node",
    target: "node20",
    sourcemap: "linked",
    logLevel: "error",
    plugins: [oursInside],
  });
  mkdirSync(FOLDER, { recursive: true });
  // Another may read it just now: each file is the old one or the new one.
  for (const file of outputFiles) {
    writeFileSync(`${file.path}.${process.pid}`, file.contents);
    renameSync(`${file.path}.${process.pid}`, file.path);
  }
  return path;
}

/** How node runs it, faults told by the lines of the sources. @param {string} source */
export const programArgs = async (source) => ["--enable-source-maps", await bundleProgram(source)];
