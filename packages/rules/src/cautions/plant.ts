import type { Caution } from "./types.ts";

export const plantCautions: Caution[] = [
  {
    id: "local-rules-first",
    version: 1,
    severity: "care",
    text: {
      en: "Local codes, product labels and licensed practice come first. This advice informs and does not replace them.",
    },
  },
];
