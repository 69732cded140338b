export interface Found {
  text: string;
  /** The entries that it was made from. */
  used: string[];
  /** What stood in a place for words and is in no catalogue: a name, as a rule. */
  left: string[];
}

interface Pattern {
  key: string;
  spanish: string;
  /** What the text must hold, so that most patterns need no matching. */
  longest: string;
  regex: RegExp;
  holes: string[];
}

/** Places that only names stand in: they stay as they are. */
const NAMES = new Set(["guide", "planting", "plantings"]);
const HOLE = /\{(\d+|[a-z]+)\}/;
const HOLES = new RegExp(HOLE, "g");
/** A number, a day or an instant. */
const NUMBER = "([-+]?\\d[\\w.:+-]*)";
const WORDS = "(.+?)";

const literals = (key: string): string[] => key.split(HOLES).filter((_, i) => i % 2 === 0);
const size = (key: string): number => literals(key).join("").length;
const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

function patternOf([key, spanish]: [string, string]): Pattern {
  const holes = [...key.matchAll(HOLES)].map(([, name = ""]) => name);
  const places = holes.map((name) => (/^\d/.test(name) ? NUMBER : WORDS));
  const source = literals(key)
    .map((literal, i) => escaped(literal) + (places[i] ?? ""))
    .join("");
  const [longest = ""] = literals(key).toSorted((a, b) => b.length - a.length);
  return { key, spanish, longest, holes, regex: new RegExp(`^${source}$`, "s") };
}

type Book = (text: string) => Found | undefined;

/** Looks a text up among English texts and theirs in another language; a text with places in it by what stands around them. */
export function phraseBook(entries: Record<string, string>): Book {
  // The one that says most goes first; made when first needed, as most readers never do.
  let made: Pattern[] | undefined;
  const patterns = (): Pattern[] => {
    made ??= Object.entries(entries)
      .filter(([key]) => HOLE.test(key))
      .map(patternOf)
      .toSorted((a, b) => size(b.key) - size(a.key));
    return made;
  };
  const book: Book = (text) => {
    if (Object.hasOwn(entries, text)) return { text: entries[text] ?? text, used: [text], left: [] };
    for (const pattern of patterns()) {
      const match = text.includes(pattern.longest) && pattern.regex.exec(text);
      if (match) return filled(book, pattern, match.slice(1));
    }
    return listed(book, text, ", ") ?? listed(book, text, " + ");
  };
  return book;
}

function filled(book: Book, { key, spanish, holes }: Pattern, contents: string[]): Found {
  const found: Found = { text: spanish, used: [key], left: [] };
  const fills = new Map(
    contents.map((content, i) => {
      const hole = holes[i] ?? "";
      if (/^\d/.test(hole) || NAMES.has(hole)) return [hole, content];
      const inner = book(content);
      found.used.push(...(inner?.used ?? []));
      found.left.push(...(inner?.left ?? [content]));
      return [hole, inner?.text ?? content];
    }),
  );
  found.text = spanish.replace(HOLES, (hole, name) => fills.get(name) ?? hole);
  return found;
}

/** A list is known where each of its parts is. */
function listed(book: Book, text: string, comma: string): Found | undefined {
  const parts = text.split(comma);
  if (parts.length < 2) return undefined;
  const found = parts.map(book);
  if (!found.every((one) => one !== undefined)) return undefined;
  return {
    text: found.map((one) => one.text).join(comma),
    used: found.flatMap((one) => one.used),
    left: found.flatMap((one) => one.left),
  };
}
