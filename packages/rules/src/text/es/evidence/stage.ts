import type { ClaimWords } from "../../../evidence/types.ts";

export const stage: Record<string, ClaimWords> = {
  "stage.heat-sums": {
    finding:
      "El chile en el campo llegó a la primera flor, la madurez fisiológica y la cosecha roja con sumas parecidas de unidades de calor (55-86 F) desde la siembra.",
    design:
      "Siembras de campo de chile tipo New Mexico, con etapas fechadas y unidades de calor sumadas; dos informes",
    size: "temporadas de campo 2003-2005 en dos lugares",
    effect: "Primera flor 954 o 1369 F día (530 o 761 C día): los informes difieren en cuatro décimas partes",
    limits:
      "Sembrado en el campo, con riego, en tierra cálida y seca, un solo tipo. La madurez y la cosecha roja son de todo el cultivo y no del primer fruto. Se leyeron los resúmenes.",
    wouldChange:
      "Etapas fechadas de pimientos trasplantados en una temporada corta; las propias notas de esta finca lo hacen para sus propias variedades.",
  },
  "stage.first-fruit": {
    finding:
      "Las guías dan de 35 a 50 días de la flor al fruto verde maduro y de dos a cuatro semanas más al color.",
    design:
      "Guías para productores, de memoria; los botones dos semanas antes de la flor y el cuajado una semana después son práctica común",
    size: null,
    effect: "42.5 y 21 días, tomados como días a 24 C",
    limits: "No se volvió a leer. El fruto chico es más rápido y el grande más lento que este punto medio.",
    wouldChange: "Notas de la primera flor, del verde maduro y del color de una misma plantación.",
  },
  "stage.leaves-temperature": {
    finding:
      "En plántulas de pimiento dulce la velocidad con que se abren las hojas siguió la temperatura media del día; cómo se la repartieron el día y la noche no tuvo efecto.",
    design: "16 regímenes de día y noche de 14 a 26 C, bandejas de celdas, seis semanas",
    size: "una variedad, 16 regímenes",
    effect: null,
    limits: "De 14 a 26 C. No se pudieron leer los coeficientes de la velocidad; solo que sigue la media.",
    wouldChange: "La ecuación de la velocidad del propio artículo.",
  },
  "stage.base-biquinho": {
    finding:
      "Dos variedades biquinho hicieron un nudo en 43.6 C día por encima de 16.8 C de jóvenes, y en 64.4 C día por encima de 16.7 C después.",
    design:
      "Bloques al azar, dos variedades por cuatro siembras; base por mínimos cuadrados, plastocrono por regresión",
    size: "dos variedades, cuatro siembras",
    effect: "43.6 y 64.4 C día por nudo",
    limits:
      "C. chinense. Para otras especies el calor de una hoja se desplaza de modo que las dos bases coincidan a 24 C, lo que es una suposición.",
    wouldChange: "Cuentas de hojas, en días anotados, de la variedad de que se trate.",
  },
  "stage.base-compact": {
    finding:
      "Las velocidades de floración y de maduración de dos variedades compactas cayeron a nada a 13.3 C y a 9.3 C.",
    design: "Invernaderos de 18 a 30 C, una curva exponencial ajustada a las velocidades",
    size: "dos variedades, dos experimentos",
    effect: "13.3 C 'Fresh Bites Yellow', 9.3 C 'Hot Burrito'",
    limits:
      "Ajustada entre 18 y 30 C, así que la base se extiende más allá de los datos; plantas compactas en macetas.",
    wouldChange: "Una base ajustada a la variedad de que se trate, o a su grupo, en el campo.",
  },
  "stage.base-taquito": {
    finding: "El mismo método dio a otra variedad compacta, 'Taquito', una base de 17.8 C.",
    design: "Invernaderos de 20 a 30 C, la misma curva",
    size: "una variedad",
    effect: "17.8 C",
    limits: "Ajustada entre 20 y 30 C; plantas compactas en macetas.",
    wouldChange: "Una base ajustada a la variedad de que se trate, o a su grupo, en el campo.",
  },
  "stage.own-days": {
    finding:
      "Las primeras cosechas de una variedad en la propia finca dicen sus días ahí mejor que una lista de semillas, y una lista mejor que una tabla de calor.",
    design: "Práctica común",
    size: null,
    effect: "Contadas como dentro de 8 % por temporada, una lista como dentro de 12 %",
    limits:
      "Las listas difieren en desde qué y hasta qué cuentan. Los días de una lista se toman como días de un año usual en esta finca, que un terreno de ensayo más cálido acortaría.",
    wouldChange: "Primeras cosechas anotadas en varias temporadas junto a lo que había dicho la lista.",
  },
  "stage.update": {
    finding:
      "Un ritmo que se creía antes y un ritmo que se vio se pesan por los cuadrados inversos de sus dispersiones.",
    design: "Media normal conjugada con dispersión conocida; resultado de libro de texto, de memoria",
    size: null,
    effect: null,
    limits:
      "Las notas se toman como independientes unas de otras y sus dispersiones como conocidas. No se volvió a leer.",
    wouldChange: "Plantaciones con todas las etapas anotadas, para medir las dispersiones.",
  },
  "stage.raising": {
    finding:
      "Con 24 C de día y 18 C de noche las plantas de pimiento para trasplante con 5 a 7 hojas crecidas toman de 8 a 10 semanas desde la siembra.",
    design: "Guías para productores; otra, de memoria, dice de 6 a 8 semanas desde que asoman las plántulas",
    size: null,
    effect: "De 8 a 10 semanas",
    limits:
      "Leído como 21 C en promedio donde nadie midió el invernadero. La segunda guía no se volvió a leer.",
    wouldChange: "Un termómetro entre las plántulas.",
  },
};
