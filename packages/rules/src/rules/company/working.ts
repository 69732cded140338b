import type { Working } from "../../core/working.ts";
import { ISOLATION } from "../../tables/isolation.ts";
import type { Looked } from "./looked.ts";

const SYMBOLS = { clump: "c", shade: "s", "outside-shade": "o", walk: "d", mixing: "x" } as const;
const MEANINGS = {
  clump: "varieties in more than one stand",
  shade: "plants in noon shadow",
  "outside-shade": "plants in beds that something else shades",
  walk: "way between plantings of one picking round",
  mixing: "sweet and hot within reach of each other",
} as const;
const PRACTICE = { key: "common-practice" } as const;

/** The objective, term by term, with the bound below it. */
export function writeWorking(w: Working, { m, check, bound }: Looked): void {
  w.line("H", "hard rules broken", "rows, length, ground, rest, water, seed, no bed", check.hard.length, "");
  if (m.shadow.northPerM !== 0) {
    const { declinationDeg, dayOfYear, noonAltitudeDeg, northPerM } = m.shadow;
    w.line("δ", `declination on day ${dayOfYear}`, "0.409 sin(2π J / 365 - 1.39)", declinationDeg, "deg", {
      key: "fao56",
      locator: "eq. 24",
    });
    w.line("h", "noon height of the sun", "90 - |φ - δ|", noonAltitudeDeg, "deg");
    w.line("L", "noon shadow of a metre, north positive", "tan(φ - δ)", northPerM, "m");
  }
  if (m.seedBlocks.length > 0) {
    w.line(
      "D1",
      "between sweet varieties where seed is kept",
      "150 ft",
      ISOLATION.sweetM,
      "m",
      ISOLATION.source,
    );
    w.line("D2", "where one of two is hot", "600 ft", ISOLATION.hotM, "m", ISOLATION.source);
  }
  for (const c of check.soft)
    w.line(
      SYMBOLS[c.kind],
      `${MEANINGS[c.kind]}, at ${c.weight} points a unit`,
      "counted",
      c.amount,
      c.unit,
      PRACTICE,
    );
  const sum = check.soft.map((c) => `${c.weight} ${SYMBOLS[c.kind]}`).join(" + ");
  w.line("Z", "points of the plan", sum, check.total, "points", PRACTICE);
  w.line("c0", "clumps that cannot be fewer", "from metres of row and of beds", bound.clump, "points");
  w.line("d0", "way that cannot be less", "from lengths of blocks and beds", bound.walk, "points");
  w.line(
    "o0",
    "outside shade that cannot be less",
    "from metres of row and of beds",
    bound.outsideShade,
    "points",
  );
  const placed = check.hard.length === 0;
  w.line("Z0", "no plan comes below", "c0 + d0 + o0", bound.total, "points");
  w.line(
    "Z - Z0",
    "at most so far from the best possible",
    placed ? "Z - Z0" : "only for a plan that holds",
    placed ? check.total - bound.total : null,
    "points",
  );
  if (m.beds.some((b) => !b.placed) && m.beds.length > 1)
    w.estimate(
      "beds.place",
      "beds without a place are walked to as if side by side with 0.6 m between",
      PRACTICE,
    );
}
