import type { Caution } from "./types.ts";

export const waterCautions: Caution[] = [
  {
    id: "water-too-much",
    version: 1,
    severity: "warning",
    text: {
      en: "Too much water drowns roots, spreads root and crown rot and washes nitrate out. Never water soil that is still wet, and never to revive plants that wilt while the soil is moist.",
      es: "Demasiada agua ahoga las raíces, extiende la pudrición de raíz y de cuello y lava el nitrato. Nunca riegue un suelo que sigue mojado, y nunca para revivir plantas que se marchitan con el suelo húmedo.",
    },
  },
  {
    id: "water-quality",
    version: 1,
    severity: "care",
    text: {
      en: "Water from ponds and streams can carry germs that make people ill. Keep it off fruit that will be picked, and follow your produce-safety rule on testing.",
      es: "El agua de estanques y arroyos puede llevar gérmenes que enferman a la gente. Que no toque los frutos que se van a cosechar, y siga su norma de inocuidad sobre los análisis.",
    },
  },
  {
    id: "water-pump",
    version: 1,
    severity: "danger",
    text: {
      en: "Electric pumps and valves in wet places can kill. Use a residual-current device, switch off before touching, and leave wiring to a licensed electrician.",
      es: "Las bombas y válvulas eléctricas en lugares mojados pueden matar. Use un interruptor diferencial, apague antes de tocar y deje el cableado a un electricista con licencia.",
    },
  },
];
