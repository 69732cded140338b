/** What the fonts' own encoding (WinAnsi) lacks, in signs that it has. */
const PLAIN: Record<string, string> = {
  "−": "-",
  "‑": "-",
  "₂": "2",
  "₃": "3",
  "₅": "5",
  "≤": "<=",
  "≥": ">=",
  "≈": "~",
  "√": "sqrt",
  "\u202f": " ",
  "\u2009": " ",
  "\u00a0": " ",
  "→": "->",
  ł: "l",
  Ł: "L",
  đ: "d",
  Đ: "D",
};

/** A text in signs that the fonts have: a name keeps its letters where only their marks are lacking. */
export function settable(text: string, known: ReadonlySet<number>): string {
  const has = (sign: string) => sign === "\n" || known.has(sign.codePointAt(0) ?? 0);
  const bare = (sign: string) => [...sign.normalize("NFKD")].filter(has).join("") || "?";
  // Letters and marks written apart are one sign where there is one.
  return [...text.normalize("NFC")].map((sign) => PLAIN[sign] ?? (has(sign) ? sign : bare(sign))).join("");
}
