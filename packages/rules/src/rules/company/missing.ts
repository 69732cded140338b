import type { NeedsMoreBody } from "../../core/rule.ts";
import { type Message, say } from "../../text/message.ts";
import type { Looked } from "./looked.ts";

/**
 * What must be known before a plan can be said to hold: nothing is broken as far as anybody knows, and a hard rule could not be
 * judged. A plan that is broken already says so first.
 */
export function missingOf({ check }: Looked): NeedsMoreBody["missing"] {
  if (check.hard.length > 0) return [];
  const history = check.unknown.find((u) => u.kind === "history");
  const distances = check.unknown.filter((u) => u.kind === "distance");
  const beds = new Set(distances.flatMap((u) => u.bedIds)).size;
  return [
    ...(history
      ? [
          {
            field: "beds.history",
            measure: say("company.missing.history", { n: history.bedIds.length }),
            couldMove: say("company.missing.history-moves"),
          },
        ]
      : []),
    ...(beds > 0
      ? [
          {
            field: "beds.place",
            measure: say("company.missing.place", { n: beds }),
            couldMove: say("company.missing.place-moves"),
          },
        ]
      : []),
  ];
}

/** What the costs leave out because nobody said it. */
export const unknownLimits = ({ check }: Looked): Message[] =>
  check.unknown.flatMap((u) => {
    const n = Math.max(u.blockIds.length, u.bedIds.length);
    return u.kind === "height" || u.kind === "place" || u.kind === "first-pick"
      ? [say(`company.limit.unknown-${u.kind}`, { n })]
      : [];
  });
