import type { Caution } from "./types.ts";

export const diagnosisCautions: Caution[] = [
  {
    id: "possibilities-only",
    version: 1,
    severity: "warning",
    text: {
      en: "These are possibilities, not a diagnosis. Spray nothing on the strength of them: have the cause confirmed, and leave the choice of any pesticide to its label and to people licensed for it.",
    },
  },
  {
    id: "drift-fruit",
    version: 1,
    severity: "danger",
    text: {
      en: "Fruit from plants touched by a spray that was not meant for them may be unfit to eat and unlawful to sell. Pick none until the authority for pesticides or a licensed adviser has said so.",
    },
  },
  {
    id: "label-intervals",
    version: 1,
    severity: "danger",
    text: {
      en: "The label's re-entry and pre-harvest intervals are law. Nobody enters, works or picks before they have passed, and where the label or a local rule asks for longer, that holds.",
    },
  },
];
