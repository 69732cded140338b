import type { ClaimWords } from "../../../evidence/types.ts";

export const sowBy: Record<string, ClaimWords> = {
  "sow-by.emergence": {
    finding:
      "El pimiento asoma después de 25 días con 15 C, 13 con 20 C, 8 con 25 y 30 C y 9 con 35 C; casi ninguno con 10 C y ninguno con 40 C.",
    design: "Ensayos de germinación con temperaturas de suelo parejas, citados en otra parte",
    size: null,
    effect: "De 8 a 25 días; de 70 a 98 plántulas normales de 100",
    limits:
      "Un solo renglón para todos los pimientos, temperaturas parejas, semilla fresca. Entre columnas la velocidad se interpola.",
    wouldChange: "Las plántulas que asoman contadas en el sustrato del propio productor.",
  },
  "sow-by.weeks": {
    finding:
      "Las guías crían el pimiento de 6 a 8 (a 10) semanas, hasta 6 a 8 hojas verdaderas, endurecido de 7 a 10 días.",
    design: "Guías para productores, de memoria",
    size: null,
    effect: "De 6 a 8 semanas, contadas aquí desde que asoman las plántulas y con el endurecimiento incluido",
    limits:
      "No se volvió a leer. No siempre se dice si las guías cuentan desde la siembra o desde que asoman las plántulas.",
    wouldChange:
      "Las semanas que tomaron las plantas del propio productor, o una velocidad publicada de hojas por temperatura para pimientos de huerto en invernaderos frescos.",
  },
  "sow-by.card-days": {
    finding:
      "Un manual trasplanta el pimiento con 10 a 20 cm de altura, de 25 a 35 días después de la siembra.",
    design: "Afirmación de un manual",
    size: null,
    effect: "De 25 a 35 días desde la siembra",
    limits:
      "Para viveros cálidos y plantas más chicas. El valor por defecto toma las semanas más largas de las guías para primaveras frescas.",
    wouldChange: "Un ensayo de edades de planta en una primavera fresca.",
  },
  "sow-by.seeds": {
    finding:
      "El número de plantas de n semillas es binomial, así que las semillas para una probabilidad deseada se pueden contar con exactitud.",
    design: "Aritmética, de memoria; 10 % de pérdida y 90 % de probabilidad son práctica común",
    size: null,
    effect: null,
    limits:
      "Se toma que cada semilla falla por sí sola. El ahogamiento de plántulas y los ratones se las llevan por bandejas.",
    wouldChange: "Los conteos del propio productor.",
  },
  "sow-by.potting-on": {
    finding:
      "Las plántulas se pasan a macetas con la primera o segunda hoja verdadera, unas dos a tres semanas después de asomar.",
    design: "Práctica común",
    size: null,
    effect: null,
    limits: "Las semillas sembradas en su última celda no se pasan nunca a macetas.",
    wouldChange: "El recipiente en que se siembran.",
  },
};
