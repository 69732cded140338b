import type { ClaimWords } from "../../../evidence/types.ts";

export const manureTiming: Record<string, ClaimWords> = {
  "manure-timing.interval": {
    finding:
      "En suelo certificado en los Estados Unidos el estiércol crudo debe incorporarse al menos 120 días antes de la cosecha de un cultivo cuya parte comestible puede tocar el suelo, y 90 días antes de la de cualquier otro.",
    design: "Reglamento; una norma de conducta y no una medición",
    size: null,
    effect: "120 o 90 días",
    limits: "Ley de los Estados Unidos para suelo certificado. En otros lugares, un valor por defecto.",
    wouldChange: "Un cambio del reglamento, o la decisión de un certificador.",
  },
  "manure-timing.germs-last": {
    finding:
      "Los gérmenes del estiércol crudo pueden vivir en el suelo tres meses y más; algunos estudios los hallaron mucho después del plazo de la ley.",
    design: "Revisiones de extensión de estudios de supervivencia",
    size: "varios estudios; las revisiones no dan la cuenta",
    effect: null,
    limits:
      "La supervivencia difiere según el suelo, la temperatura y la humedad; ninguna cifra para suelo de pimiento.",
    wouldChange: "Una evaluación de riesgo con días por clima y cultivo.",
  },
  "manure-timing.low-fruit": {
    finding:
      "Los pimientos que cuelgan bajo cuentan como que pueden tocar el suelo; el fruto erguido de plantas en estacas cuenta como lejos de él.",
    design: "Práctica del oficio",
    size: null,
    effect: null,
    limits: "La ley no nombra ningún cultivo. Deciden los certificadores.",
    wouldChange: "La palabra escrita de un certificador para el cultivo y la manera en que se lleva.",
  },
  "manure-timing.no-interval": {
    finding:
      "La Produce Safety Rule de los Estados Unidos no fija ningún plazo para el estiércol crudo que no toca el producto; se puede seguir el plazo del suelo certificado.",
    design: "Resumen de extensión de un reglamento",
    size: null,
    effect: null,
    limits:
      "Los compradores piden un año y más para cultivos de hoja; la norma puede llegar a tener un plazo.",
    wouldChange: "Un plazo en la norma.",
  },
  "manure-timing.composting": {
    finding:
      "El estiércol compostado a partir de C:N 25:1 a 40:1, entre 131 y 170 F durante 3 días (recipiente, pila estática aireada) o 15 días con cinco volteos (hilera), no tiene plazo; el estiércol viejo o amontonado está sin tratar.",
    design: "Reglamento, y un resumen de extensión",
    size: null,
    effect: null,
    limits: "Solo con el registro de temperaturas y volteos.",
    wouldChange: "Un cambio del reglamento.",
  },
  "manure-timing.nitrate": {
    finding:
      "De todas las formas el nitrato es la que más se lava; una pulgada de agua de más puede llevarse de 20 a 30 lb de nitrógeno de nitrato por acre.",
    design: "Resúmenes de extensión",
    size: null,
    effect: "de 22 a 34 kg/ha por 25 mm",
    limits: "Según el suelo y cuánto nitrato hay en él.",
    wouldChange: "El nitrato medido por debajo de las raíces.",
  },
  "manure-timing.ammonia": {
    finding: "Si se queda en la superficie, un estiércol pierde al aire un tercio de su amonio.",
    design: "Hoja de trabajo para planear",
    size: null,
    effect: "un tercio",
    limits: "Una cifra para planear: el viento, el calor y el pH la mueven.",
    wouldChange: "El amoníaco medido según el tiempo y los días hasta que se incorpora.",
  },
  "manure-timing.release": {
    finding:
      "Del nitrógeno orgánico se libera de 25 a 35 % (aves 55 %) en el primer año, 12 % en el segundo y 5 % en el tercero.",
    design: "Tabla de extensión por animal y materia seca",
    size: null,
    effect: "de 25 a 55 % en el primer año",
    limits: "Un lugar fresco y húmedo; los más secos y cálidos difieren. El lote se tiene que analizar.",
    wouldChange: "Lo que se libera, medido en este lugar.",
  },
};
