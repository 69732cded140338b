import type { Caution } from "./types.ts";

export const closedCautions: Caution[] = [
  {
    id: "bed-closed",
    version: 1,
    severity: "danger",
    text: {
      en: "This bed was sprayed. Nobody enters it before the re-entry interval on the label has passed, and no fruit is picked before the pre-harvest interval has passed. The label is the law, and it comes before this advice.",
      es: "Esta cama fue tratada con un plaguicida. Nadie entra antes de que pase el plazo de reingreso de la etiqueta, y no se cosecha ningún fruto antes de que pase el plazo antes de la cosecha. La etiqueta es la ley y manda sobre este consejo.",
    },
  },
];
