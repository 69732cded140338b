import type { Source } from "../types.ts";

export const plantSources: Source[] = [
  {
    id: "common-practice",
    cite: "Common practice of the trade; no published source is claimed.",
    kind: "practice",
    status: "practice",
  },
];
