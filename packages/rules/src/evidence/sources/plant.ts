import type { Source } from "../types.ts";

export const plantSources: Source[] = [
  {
    id: "common-practice",
    cite: "Common practice of the trade; no published source is claimed.",
    kind: "practice",
    status: "practice",
  },
  {
    id: "hortscience-35-593",
    cite: "Transplanting depth affects pepper lodging and maturity. HortScience 35(4):593 (2000). Abstract.",
    kind: "trial",
    year: 2000,
    status: "seen",
  },
  {
    id: "tifton-1994",
    cite: "Transplanting depth of pepper: bare ground vs. mulch effects (Tifton and Cool Springs, Georgia, 1994). Abstract.",
    kind: "trial",
    year: 1994,
    status: "seen",
  },
  {
    id: "depth-guides",
    cite: "Extension guides on setting pepper transplants: nursery depth up to the seed leaves or first true leaf. Recalled, not re-read.",
    kind: "extension",
    status: "memory",
  },
];
