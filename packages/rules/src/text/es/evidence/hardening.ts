import type { ClaimWords } from "../../../evidence/types.ts";

export const hardening: Record<string, ClaimWords> = {
  "hardening.days": {
    finding: "Las guías endurecen el pimiento de 7 a 10 días con aire más fresco y seco y más viento.",
    design: "Guías para productores, de memoria; las horas de cada día son práctica común",
    size: null,
    effect: "De 7 a 10 días",
    limits: "No se volvió a leer. No se halló para pimientos ningún ensayo de las horas por día.",
    wouldChange:
      "Un ensayo de plantas endurecidas contra tiernas de una misma siembra en la propia cama del productor.",
  },
  "hardening.drier": {
    finding: "Las plantas regadas menos seguido, sin marchitarse, quedan más cortas y firmes.",
    design: "Guías para productores, de memoria",
    size: null,
    effect: null,
    limits: "No se volvió a leer. Una planta marchita se atrasa y no se endurece.",
    wouldChange: "Un ensayo en el que se pesen las bandejas.",
  },
  "hardening.cold-limits": {
    finding:
      "El pimiento casi deja de crecer por debajo de 10-13 C, y una exposición larga por debajo de 10 C lo daña, endurecido o no.",
    design: "Afirmación de libro de texto, de memoria",
    size: null,
    effect: "El piso de 12 C es práctica común y le toca fijarlo a la oficina.",
    limits: "No se volvió a leer. No se dice cuánto lo mueve el endurecimiento en el pimiento.",
    wouldChange: "Noches registradas de plantas endurecidas y tiernas junto a lo que fue de ellas.",
  },
  "hardening.cold-training": {
    finding:
      "El oficio endurece dejando que las plantas pasen noches frescas; la regla de trasplante cuenta que una planta endurecida aguanta más de ellas.",
    design: "Práctica común; guías de memoria",
    size: null,
    effect: "Noches afuera solo en los últimos días, y solo por encima del piso",
    limits:
      "No se volvió a leer. Aquí se evita el frío porque los libros de texto no le ven provecho para el pimiento.",
    wouldChange: "Un ensayo de pimiento endurecido con noches frescas contra tibias.",
  },
  "hardening.nitrogen": {
    finding: "Se retiene el nitrógeno mientras las plantas se endurecen, porque hace crecimiento tierno.",
    design: "Práctica común",
    size: null,
    effect: null,
    limits: "Una planta pálida y hambrienta tampoco se endurece: fertilice antes, y no durante.",
    wouldChange: "Un ensayo de fertilización en las últimas dos semanas.",
  },
  "hardening.cold-checked": {
    finding: "Las plantas que el frío frenó se dejan crecer en lo tibio antes de endurecerlas.",
    design: "Práctica común",
    size: null,
    effect: null,
    limits:
      "Solo se sabe lo que alguien anotó: un punto de crecimiento muerto, o ninguna hoja nueva, en las últimas cuatro semanas.",
    wouldChange: "Una nota de una hoja nueva.",
  },
};
