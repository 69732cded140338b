import type { InForce } from "../../evidence/choices.ts";
import { type HalfBed, halfBedOf } from "../../evidence/halfBed.ts";
import type { PlantingState } from "../../states/states.ts";
import type { Fitness, Unfit } from "./fit.ts";
import type { LeafWindow } from "./leaves.ts";
import type { Season } from "./season.ts";
import { ACCEPTED_RISK } from "./thresholds.ts";

type Code = "leave" | "wait" | "half-bed" | "take";
type Reason =
  | "containers"
  | "sick"
  | "no-time"
  | "season-unknown"
  | "one-plant"
  | "before"
  | "count"
  | Exclude<Unfit, "sick">
  | "time-enough"
  | "practice"
  | "published";

/** What is to be done, and why: the reasons that hold, the one that decides first. */
export interface Verdict {
  code: Code;
  reasons: Reason[];
  /** Plants whose tip is taken. */
  plants: number;
  half: HalfBed | null;
}

/**
 * No, unless the reading in force says yes, nothing about the plants says no, and the window is open by a count. Every doubt
 * ends at no or at waiting.
 */
export function decide(
  state: PlantingState,
  reading: InForce,
  fitness: Fitness,
  window: LeafWindow,
  season: Season,
): Verdict {
  const { plants } = state.planting;
  const half = halfBedOf(state.planting);
  const leave = (reason: Reason): Verdict => ({ code: "leave", reasons: [reason], plants: 0, half });
  if (fitness.unfit.includes("sick")) return leave("sick");
  // Practice finds little in it, a trial found fruit later, and no other was found.
  if (state.bed.kind === "containers") return leave("containers");
  const against = timeAgainst(reading, season);
  if (against) return leave(against);
  if (reading.option === "no-unless-time" && plants < 2) return leave("one-plant");
  const holds: Reason[] = [
    ...fitness.unfit.filter((u) => u !== "sick"),
    ...(window.at === "before" || window.at === "count" ? [window.at] : []),
  ];
  if (holds.length > 0) return { code: "wait", reasons: holds, plants: 0, half };
  if (reading.option === "no-unless-time") {
    const each = half?.plantsEachWay ?? Math.floor(plants / 2);
    return { code: "half-bed", reasons: ["time-enough"], plants: each, half };
  }
  const reason = reading.option === "practice" ? "practice" : "published";
  return { code: "take", reasons: [reason], plants, half };
}

/** Who follows practice expects earlier flowers and has no delay to fear; all others do. */
function timeAgainst({ option }: InForce, { chanceTaken }: Season): Reason | null {
  if (option === "practice") return null;
  if (chanceTaken === null) return "season-unknown";
  return chanceTaken < 1 - ACCEPTED_RISK ? "no-time" : null;
}
