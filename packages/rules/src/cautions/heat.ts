import type { Caution } from "./types.ts";

/** What heating a house can do to people and plants; fire and fumes to people stand with the warmth cautions. And what shade can do. */
export const heatCautions: Caution[] = [
  {
    id: "heater-fumes",
    version: 1,
    severity: "warning",
    text: {
      en: "Fumes of a heater harm plants before anybody smells them: ethylene drops flowers and twists leaves. Burn nothing unvented among plants, give the flame its own air, and have the burner and flue looked at each year.",
    },
  },
  {
    id: "heater-fitting",
    version: 1,
    severity: "danger",
    text: {
      en: "Wiring in a wet house is work for a licensed electrician, and gas for a licensed fitter. Mats and cables for plants only, never heaters made for a room or a bed; unplug before you water. What the codes and the insurer say comes first.",
    },
  },
  {
    id: "shade-that-stays",
    version: 1,
    severity: "care",
    text: {
      en: "Shade cloth is a sail: tie it to posts that hold in a storm. Left up when the heat is over, it costs flowers and sugar. Cloth that lies on plants breaks shoots.",
    },
  },
];
