import type { ClaimWords } from "../../../evidence/types.ts";

export const feeding: Record<string, ClaimWords> = {
  "feeding.uptake": {
    finding: "El cultivo entero absorbe de 2.4 a 5.2 kg de nitrógeno por cada tonelada de fruto fresco.",
    design: "Revisiones y absorción en el campo; se guarda el rango y se usa su centro.",
    size: "tres fuentes",
    effect: "de 2.4 a 5.2 kg N/t",
    limits:
      "Temporadas largas y cálidas. Una cosecha corta hace mayor la absorción por tonelada: una temporada medida tomó 8.8 kg/t con 13.4 t/ha (Claimon).",
    wouldChange: "La absorción medida en una temporada corta.",
  },
  "feeding.daily-nitrogen": {
    finding:
      "La absorción de nitrógeno es de menos de 1 lb/A al día al principio, de 4 a 5 a media temporada, de menos de 3 durante el cuajado.",
    design:
      "Absorción en el campo, California; una temporada en otro lugar tuvo su máximo en los días 56 a 70.",
    size: null,
    effect: "lo más alto, de los botones al cuajado",
    limits: "Los números se usan como curva; donde la fuente da solo un límite, el límite es el número.",
    wouldChange: "La absorción por semana en una temporada fresca.",
  },
  "feeding.schedule-memory": {
    finding:
      "El programa de un manual sube toda la temporada, de 0.5 a 1.8 lb N/A al día, y en suelo bajo en potasio da de potasa el doble que de nitrógeno.",
    design: "Programa de extensión, de memoria; sus renglones cuadran.",
    size: null,
    effect: "de 0.5 a 1.8 lb N/A al día",
    limits: "Sin verificar. Se muestra junto al valor por defecto y nunca se usa.",
    wouldChange: "La tabla leída en su publicación.",
  },
  "feeding.nitrogen-plateau": {
    finding:
      "El pimiento dulce con goteo dio casi la misma cosecha con 195, 255 y 315 lb N/A, y menos con 60 y 135.",
    design: "Ensayos de dosis en el campo.",
    size: "un ensayo en California, uno en Puerto Rico",
    effect: "nada por encima de 195 lb N/A; en Puerto Rico 300 kg N/ha lo mejor, 500 no fue mejor",
    limits:
      "Poco nitrógeno residual, cosechas altas. El tope aquí es 195 lb/A; la ley local puede fijar menos.",
    wouldChange: "Un ensayo local de dosis.",
  },
  "feeding.response": {
    finding:
      "El fosfato y la potasa se dan solo donde el análisis de suelo de ese extractante dice que el cultivo responde.",
    design: "Calibración regional.",
    size: null,
    effect: "por encima de 120 lb P2O5/A, dudoso con cualquier nivel",
    limits:
      "Las regiones difieren. Donde las guías no coinciden se devuelve solo lo que se lleva el fruto. Nunca se añade fosfato para llegar a una proporción.",
    wouldChange: "Una guía de la propia región.",
  },
  "feeding.potash-ratio": {
    finding: "Desde los botones a la vista el potasio sube frente al nitrógeno.",
    design: "Costumbre del oficio.",
    size: null,
    effect: null,
    limits: "Reparte en la temporada lo que permite el análisis de suelo; nunca sube el total.",
    wouldChange: "Un ensayo de fechas en el propio terreno.",
  },
  "feeding.potash-calcium": {
    finding:
      "Demasiado potasio estorba al calcio y al magnesio; los jalapeños en arena no necesitaron más de 3 a 6 mM.",
    design: "Orientación de extensión sin un número; un ensayo en cultivo en arena.",
    size: null,
    effect: null,
    limits: "Ningún umbral para suelo de campo.",
    wouldChange: "El calcio en hojas y fruto.",
  },
  "feeding.midwest-timing": {
    finding:
      "Con acolchado plástico de 20 a 50 % del nitrógeno va antes de plantar, el resto por goteo con 5 a 10 lb N/A por semana.",
    design: "Recomendación de extensión.",
    size: null,
    effect: "de 20 a 50 % antes de plantar; otra publicación dice de 30 a 50 %",
    limits: "Se muestra junto al valor por defecto, que sigue la absorción.",
    wouldChange: "Un ensayo de fechas con una misma dosis total.",
  },
  "feeding.leaching": {
    finding:
      "Una pulgada de agua de más puede lavar de 20 a 30 lb de nitrógeno de nitrato por acre; analice de nuevo después.",
    design: "Orientación de extensión.",
    size: null,
    effect: "de 20 a 30 lb NO3-N/A por cada pulgada",
    limits: "Lo que guarda el suelo se toma como la mitad de su agua disponible en 30 cm (práctica común).",
    wouldChange: "El nitrato medido antes y después de la lluvia.",
  },
  "feeding.manure-nitrogen": {
    finding:
      "Del nitrógeno orgánico de un estiércol se libera de 25 a 55 % en el primer año según el animal y la materia seca, 12 % en el siguiente, 5 % después; en la superficie se pierde un tercio de su amonio.",
    design: "Tablas de extensión.",
    size: null,
    effect: "de 25 a 55 %, 12 %, 5 %",
    limits:
      "Donde no se conoce el animal, la materia seca o el amonio se guarda el rango y se cuenta su centro.",
    wouldChange: "Un análisis del estiércol.",
  },
  "feeding.release-memory": {
    finding:
      "La materia orgánica del suelo libera de 10 a 40 lb N/A al año por cada por ciento; la composta, de 10 a 25 % de su nitrógeno en el primer año.",
    design: "Cifras generales, de memoria.",
    size: null,
    effect: "de 10 a 40 lb N/A; de 10 a 25 %",
    limits: "Sin verificar. De lo que libera el suelo se cuenta solo lo más bajo.",
    wouldChange: "Una prueba de mineralización del propio suelo.",
  },
  "feeding.nitrate-test": {
    finding:
      "El chile se fertiliza al lado de la hilera hasta 30 ppm de nitrógeno de nitrato en el suelo, cerca de 4 lb N/A por cada ppm que falta; desde 30 no necesita nada.",
    design: "Guía de extensión para chile.",
    size: null,
    effect: "30 ppm; 4 lb N/A por cada ppm",
    limits:
      "Suelos de desierto. En otros lugares se citan de 25 a 30 ppm (SN-909, de memoria). Aquí detiene el nitrógeno y nunca lo añade.",
    wouldChange: "Un umbral de la propia región.",
  },
  "feeding.plant-tests": {
    finding:
      "La savia y las hojas de un pimiento dulce bien fertilizado tienen en cada etapa cierta cantidad de nitrato, nitrógeno y potasio.",
    design: "Tablas de extensión, de memoria.",
    size: null,
    effect: null,
    limits:
      "Sin verificar. Un análisis mueve el resto de la temporada una quinta parte y no más (práctica común).",
    wouldChange: "Las tablas leídas en sus publicaciones.",
  },
  "feeding.plant-tests-inconsistent": {
    finding: "Los análisis de pecíolo dieron resultados inconsistentes en chile en Arizona.",
    design: "Guía de extensión.",
    size: null,
    effect: null,
    limits: "Chile en el desierto.",
    wouldChange: "Savia y cosecha medidas juntas en pimiento dulce.",
  },
  "feeding.tanks": {
    finding:
      "El nitrato de calcio no comparte tanque de solución madre con sulfatos ni fosfatos, el magnesio no lo comparte con fosfatos de amonio, ni el sulfato de amonio con cloruro o nitrato de potasio.",
    design: "Artículo de un fabricante.",
    size: null,
    effect: null,
    limits:
      "Aquí el nitrato de calcio va solo (práctica común), porque la etiqueta de un fertilizante compuesto no dice de qué está hecho.",
    wouldChange: "Una prueba en frasco de los propios materiales en la propia agua.",
  },
  "feeding.hold-back": {
    finding: "Los productores no fertilizan las plantas que el frío frenó hasta que salen hojas nuevas.",
    design: "Práctica del oficio",
    size: null,
    effect: null,
    limits: "No se halló ningún ensayo, ni del frío que lo pide: cuánto es lo dice la regla cold-record.",
    wouldChange:
      "Mitades de una cama con y sin fertilizante tras una racha de frío registrada, con lo que rindieron.",
  },
  "feeding.solubility": {
    finding: "Lo que disuelve un litro baja con el frío: de nitrato de potasio 133 g a 0 °C, 316 g a 20 °C.",
    design:
      "Tablas; el nitrato de potasio por valores de manual, porque la tabla imprime su renglón corrido una columna.",
    size: null,
    effect: null,
    limits:
      "De segunda mano y de memoria. De varios materiales en un tanque las partes de sus solubilidades pueden sumar hasta 1 (práctica común).",
    wouldChange: "La etiqueta, o un frasco en el frío.",
  },
  "feeding.conductivity": {
    finding:
      "Las soluciones publicadas marcan de 0.0041 a 0.0076 dS/m por encima del agua limpia por cada mg/L de nitrógeno.",
    design: "Tablas de fabricantes en páginas de extensión.",
    size: "seis soluciones",
    effect: "de 0.0041 a 0.0076 dS/m",
    limits: "Fertilizantes completos y nitratos. La urea no conduce; la potasa sola no está incluida.",
    wouldChange: "La cifra de la propia etiqueta.",
  },
};
