// @ts-check
import { pathToFileURL } from "node:url";
import { stop } from "esbuild";
import { bundleProgram } from "./programs.mjs";

/** `node infra/run.mjs <program.ts> [words]`: runs a program of ours in this process, as if node had been given it. */

const [source, ...words] = process.argv.slice(2);
if (source === undefined) throw new Error("say which program: node infra/run.mjs infra/cli/ledger.ts");
process.setSourceMapsEnabled(true);
const path = await bundleProgram(source);
await stop(); // its helper would keep the process alive
process.argv.splice(1, process.argv.length, path, ...words);
await import(pathToFileURL(path).href);
