import type { ClaimWords } from "../../../evidence/types.ts";

export const coldRecord: Record<string, ClaimWords> = {
  "cold-record.low-nights": {
    finding:
      "Noches de 10 C contra 15 C bajaron la altura, las flores, los frutos y la cosecha en accesiones de Capsicum.",
    design: "Comparación de accesiones en invernadero",
    size: "39 accesiones",
    effect: "Bajaron todos los caracteres medidos; las accesiones quedaron en siete grupos.",
    limits: "Temporadas enteras de noches frescas, y no una racha de ellas; las accesiones difieren mucho.",
    wouldChange: "Ensayos de unas pocas noches frías en plántulas, con lo que fue de ellas.",
  },
  "cold-record.flowers": {
    finding:
      "25/10 C contra 25/20 C bajó el número de óvulos en más de 60 % y dio el peor cuajado; con 14 C o menos el polen sufre.",
    design: "Temperatura controlada, dos variedades; una línea",
    size: "dos variedades",
    effect: "Los óvulos bajan más de 60 %",
    limits: "Flores de plantas grandes; no dice nada de plántulas.",
    wouldChange: "Cuentas de cuajado en el campo después de noches frías registradas.",
  },
  "cold-record.parthenocarpic": {
    finding: "En un estudio antiguo, noches de 8-10 C subieron la parte de flores que cuajan, sin semilla.",
    design: "Una variedad, solo el resumen",
    size: "un estudio, una variedad",
    effect: null,
    limits: "Una variedad; el fruto sin semilla se queda chico.",
    wouldChange: "Lo mismo visto en más variedades y en el campo.",
  },
  "cold-record.stunting": {
    finding: "Los productores sostienen que las plántulas achaparradas por el frío pueden no recuperarse.",
    design: "Práctica del oficio",
    size: null,
    effect: null,
    limits: "No se halló ningún ensayo. Por eso la temperatura sola nunca dice más que esperar y mirar.",
    wouldChange: "Dosis de frío registradas de plántulas al lado de su cosecha.",
  },
  "cold-record.thresholds": {
    finding:
      "Libros: crecimiento casi nulo por debajo de 10-13 C, daño con exposición larga por debajo de 10 C, muerte entre 0 y -1 C.",
    design: "Valores de libro, de memoria",
    size: null,
    effect: null,
    limits: "No se volvieron a leer. Las variedades y el endurecimiento difieren.",
    wouldChange: "Una dosis con su respuesta, publicada para plántulas.",
  },
  "cold-record.hours": {
    finding:
      "El curso de un día sale de sus extremos con un seno truncado de día y una caída exponencial de noche.",
    design: "Modelo ajustado a registros por hora de un sitio de pastizal corto",
    size: "un sitio, un año; un segundo para el aire",
    effect: "Error absoluto medio de hasta 2.64 C, para aire a 10 cm",
    limits:
      "Coeficientes leídos solo en reimplementaciones públicas. Los frentes y las nubes de noche rompen el patrón.",
    wouldChange: "Un registrador junto a las plantas.",
  },
};
