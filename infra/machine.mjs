// @ts-check
import { PlainFailure } from "./process/failure.mjs";

/** Refuses, in one sentence, a machine on which nothing further could work. Package.json says the same to npm. */
export function requireSupportedMachine() {
  const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
  const supported = (major === 20 && minor >= 19) || (major === 22 && minor >= 12) || major > 22;
  if (!supported)
    throw new PlainFailure(
      `Pith needs Node 20.19 or later of Node 20, or Node 22.12 or later, but this is Node ${process.versions.node}.`,
    );
  if (process.platform === "win32")
    throw new PlainFailure("Pith runs on Linux and macOS; on Windows, start it inside WSL.");
}
