/** What is drawn on a lane of a planting's season. */
export type Mark =
  | { kind: "done" | "planned"; on: string }
  | { kind: "event"; on: string }
  | { kind: "forecast"; low: string; likely: string; high: string | null }
  | { kind: "window"; from: string; to: string | null }
  | { kind: "closed"; from: string; to: string };

/** First and last day of a mark. */
export function spanOf(mark: Mark): [from: string, to: string] {
  switch (mark.kind) {
    case "forecast":
      return [mark.low, mark.high ?? mark.likely];
    case "window":
      return [mark.from, mark.to ?? mark.from];
    case "closed":
      return [mark.from, mark.to];
    default:
      return [mark.on, mark.on];
  }
}
