import type { ClaimWords } from "../../../evidence/types.ts";

export const hotter: Record<string, ClaimWords> = {
  "hotter.direction": {
    finding:
      "Algunas variedades picantes hicieron más capsaicinoides con falta de agua: habanero, 'Jolokia', 'Akanee Pirote', 'Beauty Zest', 'Home Flavor', 'Chili-AS Rot'; 'Padron' de memoria.",
    design: "Estudios en maceta y en campo, la mayoría en países cálidos; resúmenes, uno de memoria.",
    size: "seis estudios, siete variedades",
    effect: null,
    limits:
      "Solo la dirección. Los tratamientos, las etapas y las medidas difieren, y no hay ningún coeficiente publicado.",
    wouldChange: "Un ensayo de esta variedad en una temporada corta y fresca, con valores de laboratorio.",
  },
  "hotter.reversals": {
    finding:
      "Cuatro C. chinense picantes dieron menos: 'Bhut Jolokia', 'Orange Habanero' y 'BGH1719' en rendimiento de capsaicinoides, 'Naga Morich' en capsaicina, con flores abortadas.",
    design: "Riego cada 1 a 4 días después de la antesis; 50 contra 100 % de la capacidad de campo.",
    size: "dos estudios, cuatro variedades",
    effect: null,
    limits:
      "El rendimiento de capsaicinoides es el contenido multiplicado por el fruto: fruto más picante, pero menos fruto, cuenta como menos.",
    wouldChange: "Contenidos y rendimientos impresos lado a lado.",
  },
  "hotter.no-change": {
    finding:
      "C. annuum y C. frutescens con 80 y 60 % de la capacidad de retención de agua no cambiaron, mientras la cosecha bajó; la placenta de 'Hungariana' tampoco cambió; en doce variedades dependió de la clase.",
    design: "Estudios en maceta con el agua restringida después de la floración; resúmenes.",
    size: "cinco estudios",
    effect: "sin cambio significativo en tres; sin claridad en catorce",
    limits: "No hallar un cambio no es que no lo haya. Con 40 % hubo muy poco fruto para analizar.",
    wouldChange: "Las tablas de los artículos.",
  },
  "hotter.guide": {
    finding:
      "Demasiada agua, muy poca, y un tiempo demasiado fresco o demasiado caluroso cambian todos el picor.",
    design: "Guía de extensión.",
    size: null,
    effect: null,
    limits: "No nombra ninguna dirección para la sequía sola.",
    wouldChange: "Los ensayos detrás de la guía.",
  },
  "hotter.ky": {
    finding: "El pimiento pierde 1.1 % de su cosecha por cada 1 % que falta del uso de agua de la temporada.",
    design: "Recopilado de ensayos de campo; una línea recta para toda la temporada.",
    size: null,
    effect: "Ky = 1.1; 11, 22 y 33 % perdido con 0.9, 0.8 y 0.7 del uso completo",
    limits:
      "La temporada entera. En FAO-33 no hay publicado ningún Ky por etapa para pimiento (de memoria); para una parte de la temporada se extrapola.",
    wouldChange: "Las cosechas de las dos mitades de este bloque.",
  },
  "hotter.ky-kapija": {
    finding:
      "El pimiento para industria 'Kapija' en Turquía perdió 1.14 % por cada 1 %; la floración fue la etapa más sensible.",
    design: "Ensayo de campo de niveles de goteo; resumen.",
    size: "dos años, un sitio",
    effect: "Ky = 1.14",
    limits: "Un tipo dulce en un verano caluroso y seco.",
    wouldChange: "Lo mismo por etapa.",
  },
  "hotter.early-deficit": {
    finding:
      "En un invernadero 80 % del uso completo antes de la floración, y después agua completa, dio la mejor cosecha.",
    design: "Ensayo de agua y sal en invernadero; resumen.",
    size: "un ensayo de invernadero",
    effect: "5.52 kg/m2 en total, 5.01 vendible",
    limits: "Pimiento dulce bajo vidrio; el estrés fue temprano, lo que esta regla nunca aconseja.",
    wouldChange: "Un ensayo de campo al aire libre.",
  },
  "hotter.stage": {
    finding:
      "La sequía les costó a dos variedades en macetas 66 y 95 % de su cosecha; en la etapa reproductiva cuesta más que antes de ella.",
    design: "Macetas, dos etapas; resumen.",
    size: "dos variedades",
    effect: "66 y 95 %",
    limits: "Las macetas se secan rápido; qué tan fuerte fue la sequía no está en lo que se leyó.",
    wouldChange: "El agua dada, en mm.",
  },
  "hotter.no-loss": {
    finding:
      "El habanero mantenido seco no perdió crecimiento ni fruto en un estudio, y el pimiento dulce en Georgia dio la cosecha completa con 50 a 70 % de su uso.",
    design: "Un estudio en maceta y tres años de ensayo en arena con lluvia.",
    size: "un estudio; tres años de ensayo",
    effect: "nada perdido",
    limits: "La lluvia compensó mucho en Georgia, y la pudrición apical subió con 33 a 67 %.",
    wouldChange: "Las cosechas de las dos mitades de este bloque.",
  },
  "hotter.heat": {
    finding: "Por encima de 35 C de día el polen aborta; el chile tolera unos 37.8 C, aunque cuaja menos.",
    design: "Manual y guía de extensión.",
    size: null,
    effect: "35 o 37.8 C",
    limits: "Del aire en lo abierto. La sequía y el calor juntos no se probaron.",
    wouldChange: "Un termómetro entre las hojas.",
  },
  "hotter.cold": {
    finding: "A las plantas grandes las frena una exposición larga por debajo de 10 C.",
    design: "Valor de libro, de memoria.",
    size: null,
    effect: null,
    limits: "Cuánto frío es demasiado (60 grados-hora en dos semanas) es práctica común.",
    wouldChange: "Una mirada a los puntos de crecimiento.",
  },
  "hotter.line": {
    finding:
      "Una parte del agua se convierte en un agotamiento con el coeficiente de estrés a lo largo de un ciclo de secado.",
    design: "Calculado con el balance diario de agua para un tiempo estable y sin lluvia.",
    size: null,
    effect: null,
    limits:
      "La lluvia y las nubes hacen la parte real más suave de lo pedido. La p del pimiento dulce vale por todos.",
    wouldChange: "Sensores en las dos mitades.",
  },
};
