import { addDays, daysBetween } from "../../core/days.ts";
import { refuse } from "../../core/errors.ts";
import type { FieldNote } from "../../states/parts.ts";
import type { Sign, SignKind } from "../../states/plant.ts";
import type { PlantingState } from "../../states/states.ts";

/** Signs further apart than this are read as different troubles, and signs older than this are looked at again (cp). */
export const OLD_AFTER_DAYS = 21;

/** Field notes that are signs of trouble under another name. */
const NOTED: Partial<Record<FieldNote["kind"], SignKind>> = {
  "wilting-at-dawn": "wilting-for-good",
  "end-rot": "fruit-end-dark",
  sunscald: "fruit-bleached",
  mites: "mites-seen",
  "flower-drop": "flowers-dropping",
  "growing-point-dead": "growing-point-dead",
};

/** What was seen of the newest trouble. Sets, so that neither order nor saying it twice matters. */
export interface Picture {
  signs: ReadonlySet<SignKind>;
  parts: ReadonlySet<NonNullable<Sign["part"]>>;
  patterns: ReadonlySet<NonNullable<Sign["pattern"]>>;
  speeds: ReadonlySet<NonNullable<Sign["speed"]>>;
  firstOn: string;
  lastOn: string;
  /** Of the newest sign. */
  ageDays: number;
  photos: number;
  plantsPct: number | null;
  /** Signs of an earlier trouble, not weighed. */
  setAside: number;
}

/**
 * The signs that belong together: the newest and all within three weeks before it. Earlier ones are set aside and said.
 *
 * @returns null where nothing was recorded; "unnamed" where somebody noted signs of disease and not which
 * @throws DomainError naming a sign of a day to come
 */
export function pictureOf(state: PlantingState, today: string): Picture | "unnamed" | null {
  for (const [i, { on }] of (state.signs ?? []).entries()) {
    if (on > today) refuse(`signs.${i}.on`, "is after the day the advice is for", `at most ${today}`, on);
  }
  const noted = state.notes.flatMap(({ kind, on }): Sign[] => {
    const sign = NOTED[kind];
    return sign && on <= today ? [{ on, sign }] : [];
  });
  const all = [...(state.signs ?? []), ...noted];
  const lastOn = all
    .map((s) => s.on)
    .toSorted()
    .at(-1);
  if (lastOn === undefined) {
    return state.notes.some((n) => n.kind === "disease-signs" && n.on <= today) ? "unnamed" : null;
  }
  const from = addDays(lastOn, -OLD_AFTER_DAYS);
  const of = all.filter((s) => s.on >= from);
  const shares = of.flatMap((s) => (s.plantsPct === undefined ? [] : [s.plantsPct]));
  return {
    signs: new Set(of.map((s) => s.sign)),
    parts: new Set(of.flatMap((s) => s.part ?? [])),
    patterns: new Set(of.flatMap((s) => s.pattern ?? [])),
    speeds: new Set(of.flatMap((s) => s.speed ?? [])),
    firstOn: of.map((s) => s.on).toSorted()[0] ?? lastOn,
    lastOn,
    ageDays: daysBetween(lastOn, today),
    photos: of.reduce((sum, s) => sum + (s.photos ?? 0), 0),
    plantsPct: shares.length === 0 ? null : Math.max(...shares),
    setAside: all.length - of.length,
  };
}
