import type { Caution } from "./types.ts";

export const closedCautions: Caution[] = [
  {
    id: "bed-closed",
    version: 1,
    severity: "danger",
    text: {
      en: "This bed was sprayed. Nobody enters it before the re-entry interval on the label has passed, and no fruit is picked before the pre-harvest interval has passed. The label is the law, and it comes before this advice.",
    },
  },
];
