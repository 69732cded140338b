import { unzlibSync } from "fflate";

/** What a reader of PDF would select: the strings shown in the content streams (ISO 32000-1, 9.4.3), in WinAnsi. */
export function textIn(bytes: Uint8Array): string {
  const raw = Buffer.from(bytes).toString("latin1");
  // By its stated length: the last byte of what is packed may itself be an end of line.
  const streams = [...raw.matchAll(/\/Length (\d+)[^>]*>>\s*stream\r?\n/g)].flatMap((found) => {
    const from = found.index + found[0].length;
    const body = Buffer.from(raw.slice(from, from + Number(found[1])), "latin1");
    try {
      return [Buffer.from(unzlibSync(body)).toString("latin1")];
    } catch {
      return [];
    }
  });
  return streams
    .flatMap((stream) => [...stream.matchAll(/<([0-9A-F]+)>\s*Tj/gi)].map(([, hex = ""]) => hex))
    .map((hex) => new TextDecoder("windows-1252").decode(Buffer.from(hex, "hex")))
    .join("\n");
}

/** How often a text stands in another. */
export const timesIn = (text: string, part: string): number => text.split(part).length - 1;
