/** Breaks a text into lines no wider than there is room: between words, and within a word only where it is wider than a line. */
export function linesOf(text: string, wide: number, widthOf: (text: string) => number): string[] {
  return text.split("\n").flatMap((paragraph) => {
    const lines: string[] = [];
    let line = "";
    // A space that may not break belongs to its word: an amount stays with its unit.
    for (const word of paragraph.split(/[ \t\r]+/).filter((one) => one !== "")) {
      const longer = line === "" ? word : `${line} ${word}`;
      if (widthOf(longer) <= wide) {
        line = longer;
        continue;
      }
      if (line !== "") lines.push(line);
      const parts = broken(word, wide, widthOf);
      lines.push(...parts.slice(0, -1));
      line = parts.at(-1) ?? "";
    }
    if (line !== "") lines.push(line);
    return lines;
  });
}

/** A word in as many pieces as it takes; one sign at least stands on each. */
function broken(word: string, wide: number, widthOf: (text: string) => number): string[] {
  const pieces: string[] = [];
  let piece = "";
  for (const sign of word) {
    if (piece !== "" && widthOf(piece + sign) > wide) {
      pieces.push(piece);
      piece = "";
    }
    piece += sign;
  }
  return [...pieces, piece];
}
