import type { ClaimWords } from "../../../evidence/types.ts";

export const setOut: Record<string, ClaimWords> = {
  "set-out.heat-units": {
    finding:
      "El crecimiento se cuenta en grados-día por encima de una base; las bases publicadas para pimiento van de 9.3 a 17.8 C.",
    design: "Método citado en otra parte; la base de 10 C es práctica común",
    size: null,
    effect: null,
    limits:
      "La base difiere según la variedad, y los días bajo una cubierta son más cálidos de lo que aquí se cuenta.",
    wouldChange: "Una base ajustada a las fechas de la propia variedad.",
  },
  "set-out.protection-costs": {
    finding:
      "Una manta térmica cuesta algunas décimas de unidad de dinero por metro cuadrado y temporada, una bajo plástico cerca de una unidad, más horas.",
    design: "Práctica común",
    size: null,
    effect: "0.4 y 1.1 por m2; 2 y 5 h por 100 m2; 0.1 y 0.25 h por cama y día",
    limits:
      "No la respalda ninguna encuesta. Los precios difieren según el lugar y el año, y según cuántas veces se vuelve a usar una cubierta.",
    wouldChange: "Las facturas y las horas del propio productor.",
  },
  "set-out.cold-sets-back": {
    finding:
      "En pimiento, noches de 10 C contra 15 C dieron plantas más bajas, menos flores y frutos, y menos cosecha.",
    design: "Comparación de accesiones en invernadero",
    size: "39 accesiones",
    effect:
      "Bajaron altura, flores, frutos, cosecha, tamaño del fruto y semillas; las accesiones quedaron en siete grupos.",
    limits: "Temporadas enteras de noches frescas bajo vidrio, y no dos semanas después del trasplante.",
    wouldChange:
      "Un ensayo de campo de fechas de trasplante en una temporada fresca, con temperaturas registradas.",
  },
  "set-out.parthenocarpic": {
    finding: "En un estudio antiguo, noches de 8-10 C subieron la parte de flores que cuajan, sin semilla.",
    design: "Una variedad, solo el resumen",
    size: "un estudio, una variedad",
    effect: null,
    limits: "Una variedad; no dice nada de plántulas.",
    wouldChange: "Lo mismo visto en más variedades y en el campo.",
  },
  "set-out.dose-not-one-night": {
    finding:
      "El crecimiento casi se detiene por debajo de 10-13 C y el daño llega con una exposición larga por debajo de 10 C, así que el frío cuenta como una dosis.",
    design: "Afirmación de libro, de memoria",
    size: null,
    effect: "El piso de 12 C y la dosis permitida son práctica común.",
    limits: "Las noches y los grados-hora permitidos no vienen de ningún ensayo. Los fija la oficina.",
    wouldChange: "Dosis de frío registradas de plantas trasplantadas al lado de lo que fue de ellas.",
  },
  "set-out.blend": {
    finding:
      "La mejor estimación a partir de un pronóstico de acierto limitado se acerca a lo normal, y conserva la variación que queda.",
    design: "Resultado estadístico de un libro, de memoria",
    size: null,
    effect: "El acierto según los días que faltan es práctica común.",
    limits: "El acierto no se ajustó al pronóstico del propio sitio.",
    wouldChange: "Un registro evaluado de este pronóstico en este sitio.",
  },
  "set-out.soil-warmth": {
    finding: "Las guías piden 16-18 C a 10 cm al trasplantar.",
    design: "Guías de memoria; modelo del suelo ajustado a suelos de cultivo en un clima templado frío",
    size: null,
    effect: null,
    limits:
      "El umbral no se volvió a leer. El modelo conoce solo el aire: ni lluvia, ni sombra, ni ladera, ni cubierta.",
    wouldChange: "Tres mañanas con un termómetro de suelo.",
  },
  "set-out.row-cover-offset": {
    finding:
      "Una manta térmica ligera mantiene la noche 2-3 F por encima de la de afuera, una más gruesa unos 5 F, con plástico encima al menos 9 F.",
    design: "Afirmación de extensión",
    size: null,
    effect: "1.1-1.7 C, 2.8 C, 5.0 C",
    limits: "Depende del peso, el viento, el cielo y el calor del suelo.",
    wouldChange: "Una semana de mínimas bajo la cubierta del propio productor.",
  },
  "set-out.row-cover-offset-trade": {
    finding:
      "Un artículo del oficio da más: unos 4 F para 0.5 oz, 6 F para 1-1.25 oz; las guías dan 2-8 F según el peso.",
    design: "Artículo del oficio; guías de memoria",
    size: null,
    effect: "2.2-3.3 C",
    limits:
      "El valor habitual toma la cifra menor de la otra fuente: confiar en demasiado calor cuesta plantas.",
    wouldChange: "Una semana de mínimas bajo la cubierta del propio productor.",
  },
  "set-out.tunnel-offset": {
    finding:
      "En un túnel de plástico sin calefacción las mínimas estuvieron 1.3 C por encima de las de afuera.",
    design: "Un túnel, medido; solo el resumen",
    size: "un túnel",
    effect: "+1.3 C de noche, +4.2 C de día",
    limits:
      "Un túnel en otro lugar; un túnel bajo contiene menos aire y no se halló ninguna cifra propia para él.",
    wouldChange: "Mínimas registradas dentro del túnel del propio productor.",
  },
  "set-out.night-optimum": {
    finding:
      "Las fuentes difieren en la mejor noche: 10-15.6 C (chile, California), 15-18 C (FAO), según si se trata de crecimiento o de cosecha.",
    design: "Afirmaciones de extensión y de manual",
    size: null,
    effect: null,
    limits: "Óptimos para el crecimiento, y no pisos para sobrevivir.",
    wouldChange: "Aquí nada decide; el piso es el de la oficina.",
  },
  "set-out.vent": {
    finding:
      "El pimiento dulce crece mejor con 24-30 C de día; por encima de 38 C en floración sufre la polinización. Los cultivos de fresco se ventilan por encima de 60 F.",
    design: "Afirmaciones de extensión",
    size: null,
    effect: "Marca para ventilar 30 C adentro",
    limits: "Que una cubierta se abra a 30 C es lectura nuestra; ningún ensayo fija la marca para pimientos.",
    wouldChange: "Un ensayo de marcas para ventilar.",
  },
};
