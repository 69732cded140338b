import type { ClaimWords } from "../../../evidence/types.ts";

export const containers: Record<string, ClaimWords> = {
  "containers.bounded-root-zone": {
    finding:
      "Las plantas de una maceta piden lo que piden el aire y su etapa; lo que la maceta guarda entre la capacidad de campo y el punto de marchitez, multiplicado por p, se toma sin daño.",
    design: "Método de manual para suelo de campo, leído para una zona de raíces limitada",
    size: null,
    effect: "p = 0.3 con 5 mm al día",
    limits: "Dicho para campos. Las macetas separadas, con viento o sobre suelo caliente, usan más o menos.",
    wouldChange: "Macetas de este tamaño y mezcla, pesadas durante una temporada.",
  },
  "containers.nitrogen-120": {
    finding:
      "Los pimientos en lana de roca con 120 ppm N todo el tiempo no dieron menos para vender que con 175 ppm, que gastaron 10 % más de agua y drenaron 250 % más de nitrato.",
    design:
      "Ensayo en invernadero de tres soluciones, una variedad; un segundo ensayo en curso apunta a lo mismo",
    size: "un ensayo terminado",
    effect: "cosecha vendible sin diferencia; nitrato en el drenaje 250 % más con 175",
    limits: "Lana de roca en un invernadero de Florida, un solo pimiento dulce.",
    wouldChange: "Ensayos en mezclas de maceta al aire libre, con pimientos picantes.",
  },
  "containers.nitrogen-staged": {
    finding:
      "Fertilizados con 60, 90 y 120 ppm N en las etapas vegetativa, de fruto temprano y de fruto tardío, se vendieron tantos frutos como con 175 ppm, pero más chicos: menos peso.",
    design: "Ensayo en invernadero de tres soluciones, una variedad",
    size: "un ensayo terminado",
    effect: "número de frutos igual, peso significativamente menor que con 175",
    limits: "El resumen no lo compara con 120 todo el tiempo.",
    wouldChange: "Una comparación de la solución por etapas con 120 todo el tiempo.",
  },
  "containers.feed-meter": {
    finding:
      "Las soluciones añaden de 0.0041 a 0.0076 dS/m por cada ppm N, según el producto; el medidor lo marca por encima de lo propio del agua limpia.",
    design: "Tablas de etiquetas y de extensión",
    size: "seis productos",
    effect: "de 0.41 a 0.76 dS/m con 100 ppm N",
    limits: "Según el producto; las sales simples difieren más.",
    wouldChange: "La etiqueta del fertilizante que se tiene.",
  },
  "containers.leaching": {
    finding:
      "Un poco de drenaje en cada riego evita que se junte sal; que drene la mitad desperdicia fertilizante: con una fracción de lavado de 0.55 drenó el doble de nitrógeno que con 0.15.",
    design: "Guía de extensión; un ensayo de seis fracciones de lavado en corteza de pino, diez semanas",
    size: "un ensayo",
    effect: "el doble de nitrógeno perdido con 0.55 que con 0.15",
    limits: "No se midió la cosecha de ninguna planta; que la meta sea de 10 a 20 % es práctica común.",
    wouldChange: "Cosecha y sal según la fracción de lavado en pimientos.",
  },
  "containers.flush-threshold": {
    finding: "Un drenaje que marca más de 1 dS/m por encima de lo que se da es señal de lavar.",
    design:
      "Práctica del oficio; extensión dice que se comparen los dos y no nombra ninguna cifra en lo que se leyó",
    size: null,
    effect: null,
    limits: "No se halló ningún umbral publicado.",
    wouldChange: "La cosecha según la sal que hay en el drenaje.",
  },
  "containers.drain-ph-vegetables": {
    finding:
      "El drenaje de hortalizas sin suelo debe tener un pH de 5.0 a 5.8, según el sustrato y el cultivo.",
    design: "Guía de extensión",
    size: null,
    effect: null,
    limits: "No se nombra ningún cultivo; se leyó el principio de la página.",
    wouldChange: "La cosecha de pimientos según el pH del drenaje.",
  },
  "containers.drain-ph-general": {
    finding: "La mayoría de las plantas crece mejor con pH de 5.4 a 6.4 en sustratos de maceta.",
    design: "Guía de extensión",
    size: null,
    effect: null,
    limits: "Plantas de vivero; el sustrato y no su drenaje.",
    wouldChange: "La cosecha de pimientos según el pH del drenaje.",
  },
  "containers.alkalinity": {
    finding:
      "El agua de riego no debe tener más de 100 ppm de alcalinidad como CaCO3, mejor de 30 a 60; la alcalinidad, y no el pH del agua, mueve la mezcla.",
    design: "Guía de extensión",
    size: null,
    effect: null,
    limits: "Las macetas grandes y las temporadas cortas aguantan más, las chicas menos.",
    wouldChange: "El pH de la mezcla seguido durante una temporada con esta agua.",
  },
  "containers.slow-feed": {
    finding:
      "Media cucharada de un fertilizante de liberación controlada 14-14-14 por galón de mezcla alimenta una maceta.",
    design: "Dos páginas de jardinería, leídas de segunda mano",
    size: null,
    effect: null,
    limits: "La liberación sigue al calor; la dosis de la propia etiqueta va primero.",
    wouldChange: "La etiqueta del producto.",
  },
  "containers.size": {
    finding: "A la berenjena se le dan 5 galones por planta; la cifra del propio pimiento no se pudo leer.",
    design: "Tabla de extensión",
    size: null,
    effect: null,
    limits: "Otro cultivo, de casi el mismo tamaño.",
    wouldChange: "Cosecha de pimiento según el tamaño de la maceta.",
  },
  "containers.hot-pots": {
    finding:
      "La zona de raíces en macetas negras estuvo 15 % más tiempo por encima de 38 C que en blancas; por encima de 30 C se frenan las raíces de varios cultivos de vivero.",
    design: "Ensayos de vivero en Tennessee, Alabama y Kansas",
    size: "dos estudios",
    effect: null,
    limits:
      "Árboles y frijoles; ningún pimiento. Donde los veranos son frescos una maceta oscura calienta las raíces.",
    wouldChange: "Cosecha de pimiento según el color de la maceta, en lugares frescos y calientes.",
  },
  "containers.potting-tests": {
    finding: "Un análisis de mezcla de maceta y uno de suelo mineral se leen con escalas distintas.",
    design: "Instrucción propia de un laboratorio",
    size: null,
    effect: null,
    limits:
      "Los rangos mismos estaban más adentro de la página de lo que se pudo leer, así que no se usa ninguno.",
    wouldChange: "Un rango publicado por extracción para pimientos en una mezcla.",
  },
};
