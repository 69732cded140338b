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
  {
    id: "graft-union-above-soil",
    version: 1,
    severity: "warning",
    text: {
      en: "Keep the graft union clear of the soil and of mulch heaped around it. If the top roots there, the rootstock protects nothing.",
    },
  },
  {
    id: "stake-ends",
    version: 1,
    severity: "care",
    text: {
      en: "Stakes at face height injure eyes. Cap the ends, or cut them below or well above face height.",
    },
  },
  {
    id: "clean-cut",
    version: 1,
    severity: "warning",
    text: {
      en: "Virus and bacteria go from plant to plant on hands and blades. Wash hands before and between beds, and after handling tobacco. Handle healthy plants first and leave sick ones alone. Use the blade's disinfectant as its label says, and cut away from your fingers.",
    },
  },
];
