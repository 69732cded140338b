import type { Progress } from "./longWork.ts";
import { fill, type ImportWords } from "./words.ts";

/** Phases that are measured in rows; of the others only that they go on is known. */
const COUNTED: Progress["phase"][] = ["reading", "storing"];

/** How far long work is, and the way to stop it before anything is stored. */
export function Working({
  progress,
  stop,
  words,
}: {
  /** Null until the first line has come. */
  progress: Progress | null;
  stop: () => void;
  words: ImportWords;
}) {
  const phase = progress ? words.phases[progress.phase] : words.phases.sending;
  const counted = progress !== null && COUNTED.includes(progress.phase) && progress.of > 0;
  const rows = counted
    ? fill(words.rowsDone, {
        done: progress.done.toLocaleString("en"),
        of: progress.of.toLocaleString("en"),
      })
    : null;
  return (
    <div className="working">
      <p id="working-phase" role="status">
        {phase}
      </p>
      <progress
        aria-labelledby="working-phase"
        aria-valuetext={rows ?? undefined}
        {...(counted && { max: progress.of, value: progress.done })}
      />
      <p className="number working-rows">{rows ?? "\u00a0"}</p>
      <button type="button" className="quiet" onClick={stop}>
        {words.stop}
      </button>
    </div>
  );
}
