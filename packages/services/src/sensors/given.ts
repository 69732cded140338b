/** What a batch says, record by record, before anything is known of the series. */
export type Given =
  | { name: string; unit: string | null; value: number; atMs: number }
  | { refused: string }
  /** A record that only sets what later ones stand on. */
  | "no-reading";

export const MOST_READINGS = 5000;
