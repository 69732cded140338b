import type { ClaimWords } from "../../../evidence/types.ts";

export const coldTonight: Record<string, ClaimWords> = {
  "cold-tonight.killed": {
    finding: "Las plantas de pimiento mueren entre 0 y -1 C; el fruto se congela cerca de -0.7 C.",
    design: "Valores de libro, de memoria",
    size: null,
    effect: "El aire a 0 C junto a las plantas cuenta como helada.",
    limits:
      "No se volvieron a leer. El endurecimiento y la duración de la helada difieren, y las hojas se enfrían más que el aire.",
    wouldChange: "Un ensayo publicado de congelación con plantas de pimiento endurecidas y tiernas.",
  },
  "cold-tonight.floors": {
    finding:
      "El daño llega con una exposición larga por debajo de 10 C; las plántulas que se endurecen se mantienen por encima de 12 C, las plantas bajo techo por encima de 16 C, las establecidas por encima de 5 C.",
    design: "Un valor de libro, de memoria, y práctica del oficio",
    size: null,
    effect: null,
    limits: "No se halló ningún ensayo de noches sueltas; la oficina puede fijar sus propios pisos.",
    wouldChange: "Ensayos de una noche fría en cada etapa, con lo que fue de las plantas.",
  },
  "cold-tonight.flowers": {
    finding:
      "25/10 C contra 25/20 C bajó el número de óvulos en más de 60 % y dio el peor cuajado; con 14 C o menos el polen sufre.",
    design: "Temperatura controlada, dos variedades; una línea",
    size: "dos variedades",
    effect: "Los óvulos bajan más de 60 %",
    limits: "Semanas de noches así y no una sola; 14 C se muestra aquí y no decide.",
    wouldChange: "Cuentas de flores caídas después de noches sueltas registradas.",
  },
  "cold-tonight.parthenocarpic": {
    finding: "En un estudio antiguo, noches de 8-10 C subieron la parte de flores que cuajan, sin semilla.",
    design: "Una variedad, solo el resumen",
    size: "un estudio, una variedad",
    effect: null,
    limits: "Una variedad; el fruto sin semilla se queda chico.",
    wouldChange: "Lo mismo visto en más variedades y en el campo.",
  },
  "cold-tonight.fruit": {
    finding: "El fruto de pimiento cosechado se daña almacenado por debajo de 7 C.",
    design: "Valores de manual para almacenamiento",
    size: null,
    effect: "Banda 7-13 C",
    limits: "Días de almacén, no una noche en la planta: se usa aquí por falta de otra cifra.",
    wouldChange: "Vida de anaquel de fruto cosechado después de noches frías registradas.",
  },
  "cold-tonight.own-nights": {
    finding:
      "En noches despejadas y en calma la mínima sale del aire y del punto de rocío dos horas después de la puesta del sol, con dos regresiones sobre las noches del propio sitio.",
    design: "Método de manual con su ejemplo resuelto",
    size: "diez noches en el ejemplo",
    effect: "r² 0.67 en el ejemplo",
    limits:
      "Leído en una reproducción secundaria. Solo con viento por debajo de 2 m/s, sin nubes, niebla ni lluvia; al menos ocho noches.",
    wouldChange: "Su acierto en las noches de este sitio frente al del pronóstico solo.",
  },
  "cold-tonight.calm-cooling": {
    finding:
      "Sin noches propias, una noche en calma puede bajar cerca del suelo tanto como su pérdida de onda larga le saca calor al suelo, y difícilmente por debajo del punto de rocío.",
    design: "Ecuación física y tabla de suelos de memoria, onda larga neta como la da FAO-56",
    size: null,
    effect: "Unos 9 C desde dos horas después de la puesta del sol en una noche despejada de catorce horas",
    limits:
      "No se volvió a leer. Una sola clase de suelo para todos; el suelo seco o turboso se enfría más, y el rocío frena el descenso sin terminarlo.",
    wouldChange: "Ocho noches despejadas y en calma leídas junto a las plantas.",
  },
  "cold-tonight.covers": {
    finding:
      "Una manta térmica ligera guarda 1.1-1.7 C, una más gruesa unos 2.8 C, una con plástico encima al menos 5 C; un túnel sin calefacción 1.3 C.",
    design: "Nota de extensión; un ensayo de túnel, resumen",
    size: "un túnel",
    effect: "1.1 a 5 C",
    limits: "Cifras únicas para cualquier cielo y viento; otras guías dicen más para cada peso.",
    wouldChange: "Un termómetro bajo la cubierta al lado de uno afuera.",
  },
  "cold-tonight.fresh-forecast": {
    finding: "Para esta noche no se usa un pronóstico de hace más de seis horas.",
    design: "Práctica del oficio",
    size: null,
    effect: null,
    limits: "No se sabe cómo crece aquí el error de un pronóstico hasta que se evalúe su archivo.",
    wouldChange: "Pronósticos archivados, evaluados según su antelación.",
  },
};
