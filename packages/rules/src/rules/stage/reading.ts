import type { Growth, StageForecast } from "../../growth/stages.ts";

/** Where the planting stands and what comes next. */
export interface Standing {
  /** The last stage noted or reckoned to have come; null where the seedlings are still to show. */
  now: StageForecast | null;
  /** Null after the last stage. */
  next: StageForecast | null;
  code: "ahead" | "look" | "not-reached" | "last";
}

/**
 * The stage now is the last that was noted, or that is more likely than not to have come by today; a stage that comes
 * before a noted one has come too.
 */
export function standingOf({ stages, today }: Growth): Standing {
  const at = stages.findLastIndex(
    (s) => s.notedOn !== null || (s.dates.likely !== null && s.dates.likely <= today),
  );
  const now = at === -1 ? null : (stages[at] as StageForecast);
  const next = stages[at + 1] ?? null;
  return { now, next, code: codeOf(now, next) };
}

function codeOf(now: StageForecast | null, next: StageForecast | null): Standing["code"] {
  if (next === null) return "last";
  if (now !== null && now.notedOn === null) return "look";
  return next.dates.likely === null ? "not-reached" : "ahead";
}
