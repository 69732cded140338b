import type { PlantingState } from "../../states/states.ts";
import { CAUSES } from "../../tables/diagnosis.ts";
import type { Cause, HowOften } from "../../tables/diagnosisTypes.ts";
import { type Clues, foundBefore } from "./clues.ts";
import type { Picture } from "./signs.ts";
import type { Fortnight } from "./weather.ts";

/**
 * Points; each doubles the odds against "something else" (cp). Guides speak in words, so their words are read as odds of 4
 * to 1 (often), 2 to 1 (sometimes), even (rarely), and 1 to 2 where a guide does not tie the sign to the cause at all.
 * Part, pattern and speed are 2 to 1 either way, each counted once however often it was noted.
 */
const SIGN_POINTS: Record<HowOften, number> = { often: 2, sometimes: 1, rarely: 0 };
const UNLISTED_POINTS = -1;
const FITS = 1;
const LIKES = { true: 1, between: 0, false: -1 };
/** In the opposite of the weather it needs a cause is all but out: 1 to 8. */
const NEEDS = { true: 1, between: -1, false: -3 };
const FOUND_BEFORE = 2;

/** One thing weighed: points for or against, null where nobody looked. */
export interface Item {
  kind: "sign" | "part" | "pattern" | "speed" | "weather" | "clue" | "history";
  what: string;
  points: number | null;
}
export interface Weighed {
  cause: Cause;
  points: number;
  items: Item[];
}

/** Points of a sign for a cause, seen or not. */
export const pointsOfSign = (cause: Cause, sign: keyof Cause["signs"]): number => {
  const often = cause.signs[sign];
  return often === undefined ? UNLISTED_POINTS : SIGN_POINTS[often];
};

/** Every cause, the likeliest first. All start alike: how common each is here nobody has published. */
export function weighAll(
  state: PlantingState,
  today: string,
  picture: Picture,
  fortnight: Fortnight,
  clues: Clues,
): Weighed[] {
  return CAUSES.map((cause) => {
    const items = itemsOf(state, today, cause, picture, fortnight, clues);
    return { cause, items, points: items.reduce((sum, i) => sum + (i.points ?? 0), 0) };
  }).toSorted((a, b) => b.points - a.points);
}

function itemsOf(
  state: PlantingState,
  today: string,
  cause: Cause,
  picture: Picture,
  fortnight: Fortnight,
  clues: Clues,
): Item[] {
  const seen = [...picture.signs].toSorted();
  const notSeen = Object.entries(cause.signs).filter(
    ([sign, often]) => often === "often" && !picture.signs.has(sign as never),
  );
  const { weather } = cause;
  const was = weather && fortnight.kinds[weather.kind];
  return [
    ...seen.map((sign): Item => ({ kind: "sign", what: sign, points: pointsOfSign(cause, sign) })),
    ...notSeen.map(([what]): Item => ({ kind: "sign", what, points: null })),
    ...fit("part", picture.parts, cause.parts),
    ...fit("pattern", picture.patterns, cause.patterns),
    ...fit("speed", picture.speeds, cause.speeds),
    ...(weather
      ? [
          {
            kind: "weather" as const,
            what: weather.kind,
            points: was == null ? null : (weather.how === "needs" ? NEEDS : LIKES)[`${was}`],
          },
        ]
      : []),
    ...(cause.clues ?? []).map((clue): Item => ({ kind: "clue", what: clue, points: clues[clue] })),
    ...(cause.inSoil && foundBefore(state, today, cause.inSoil)
      ? [{ kind: "history" as const, what: cause.inSoil, points: FOUND_BEFORE }]
      : []),
  ];
}

/** One of several noted that fits is enough: people note the whole plant and the leaf of one sickness. */
function fit(
  kind: "part" | "pattern" | "speed",
  noted: ReadonlySet<string>,
  typical: readonly string[] | undefined,
): Item[] {
  if (!typical) return [];
  const [first = ""] = [...noted].toSorted();
  const match = [...noted].toSorted().find((n) => typical.includes(n));
  if (noted.size === 0) return [{ kind, what: typical[0] ?? "", points: null }];
  return [{ kind, what: match ?? first, points: match === undefined ? -FITS : FITS }];
}
