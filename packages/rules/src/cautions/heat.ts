import type { Caution } from "./types.ts";

/** What heating a house can do to people and plants; fire and fumes to people stand with the warmth cautions. And what shade can do. */
export const heatCautions: Caution[] = [
  {
    id: "heater-fumes",
    version: 1,
    severity: "warning",
    text: {
      en: "Fumes of a heater harm plants before anybody smells them: ethylene drops flowers and twists leaves. Burn nothing unvented among plants, give the flame its own air, and have the burner and flue looked at each year.",
      es: "Los gases de un calefactor dañan las plantas antes de que alguien los huela: el etileno tira las flores y retuerce las hojas. No queme nada sin ventilación entre las plantas, dele a la llama su propio aire y haga revisar el quemador y la chimenea cada año.",
    },
  },
  {
    id: "heater-fitting",
    version: 1,
    severity: "danger",
    text: {
      en: "Wiring in a wet house is work for a licensed electrician, and gas for a licensed fitter. Mats and cables for plants only, never heaters made for a room or a bed; unplug before you water. What the codes and the insurer say comes first.",
      es: "El cableado en un invernadero húmedo es trabajo de un electricista con licencia, y el gas de un instalador con licencia. Solo esteras y cables hechos para plantas, nunca calefactores de cuarto ni de cama; desenchufe antes de regar. Lo que dicen las normas y la aseguradora manda.",
    },
  },
  {
    id: "shade-that-stays",
    version: 1,
    severity: "care",
    text: {
      en: "Shade cloth is a sail: tie it to posts that hold in a storm. Left up when the heat is over, it costs flowers and sugar. Cloth that lies on plants breaks shoots.",
      es: "La malla de sombra es una vela: átela a postes que aguanten una tormenta. Si se queda puesta cuando el calor ya pasó, cuesta flores y azúcar. La malla que descansa sobre las plantas rompe brotes.",
    },
  },
];
