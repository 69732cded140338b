import type { Caution } from "./types.ts";

export const diagnosisCautions: Caution[] = [
  {
    id: "possibilities-only",
    version: 1,
    severity: "warning",
    text: {
      en: "These are possibilities, not a diagnosis. Spray nothing on the strength of them: have the cause confirmed, and leave the choice of any pesticide to its label and to people licensed for it.",
      es: "Son posibilidades, no un diagnóstico. No aplique nada por ellas solas: haga confirmar la causa y deje la elección de cualquier plaguicida a su etiqueta y a personas con licencia.",
    },
  },
  {
    id: "drift-fruit",
    version: 1,
    severity: "danger",
    text: {
      en: "Fruit from plants touched by a spray that was not meant for them may be unfit to eat and unlawful to sell. Pick none until the authority for pesticides or a licensed adviser has said so.",
      es: "Los frutos de plantas alcanzadas por una aplicación que no era para ellas pueden no ser aptos para comer y ser ilegales de vender. No coseche ninguno hasta que lo autorice la autoridad de plaguicidas o un asesor con licencia.",
    },
  },
  {
    id: "label-intervals",
    version: 1,
    severity: "danger",
    text: {
      en: "The label's re-entry and pre-harvest intervals are law. Nobody enters, works or picks before they have passed, and where the label or a local rule asks for longer, that holds.",
      es: "Los plazos de reingreso y antes de la cosecha que dice la etiqueta son ley. Nadie entra, trabaja ni cosecha antes de que pasen, y si la etiqueta o una norma local pide más, eso vale.",
    },
  },
];
