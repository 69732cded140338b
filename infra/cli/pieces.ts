import { open } from "node:fs/promises";
import { PlainFailure } from "../process/failure.mjs";

/** A file as it is read: what is larger than half a gigabyte does not fit into one string. */
export async function piecesOf(path: string): Promise<AsyncIterable<string>> {
  const file = await open(path).catch((error: NodeJS.ErrnoException) => {
    throw new PlainFailure(`${path} cannot be read (${error.code}).`);
  });
  return file.createReadStream({ encoding: "utf8" });
}
