import type { Caution } from "./types.ts";

export const warmthCautions: Caution[] = [
  {
    id: "cover-overheats",
    version: 1,
    severity: "warning",
    text: {
      en: "A closed cover in sun can kill every plant under it within an hour or two, even on a cold day. Whoever puts it up must be there to open it.",
    },
  },
  {
    id: "cold-pools",
    version: 1,
    severity: "care",
    text: {
      en: "Cold air pools in hollows and behind hedges. The lowest bed may freeze on a night when the thermometer by the house does not.",
    },
  },
  {
    id: "cold-look-alikes",
    version: 1,
    severity: "care",
    text: {
      en: "Herbicide drift, viruses, too much fertiliser and wet roots can look like cold. If the pattern does not follow the cold spots, look for another cause before throwing plants away.",
    },
  },
];
