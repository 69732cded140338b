import type { ClaimWords } from "../../../evidence/types.ts";

export const irrigate: Record<string, ClaimWords> = {
  "irrigate.penman-monteith": {
    finding:
      "La evapotranspiración de referencia diaria se calcula con la ecuación de Penman-Monteith sobre pasto.",
    design: "Método estándar, comparado con lisímetros en muchos climas antes de adoptarse.",
    size: null,
    effect: null,
    limits:
      "Pasto al aire libre. Donde no se midió el sol, la humedad o el viento, entran sus sustitutos publicados y se enumeran.",
    wouldChange: "Una estación meteorológica junto a la cama con sol, humedad y viento.",
  },
  "irrigate.pepper-kc": {
    finding:
      "El pimiento dulce por sí solo toma 0.15, 1.00 y 0.80 de eso en su etapa inicial, media y final, 1.10 a media temporada con tutores; con la evaporación del suelo 0.6, 1.05 y 0.90.",
    design: "Recopilado de mediciones de campo; llevado al viento y la humedad locales.",
    size: null,
    effect: "basal a media temporada 1.00, con tutores 1.10",
    limits:
      "Pimiento dulce con cobertura completa. Ninguna fila para pimientos picantes. Las etapas son las de plantaciones de abril a junio en Europa y el Mediterráneo.",
    wouldChange: "Suelo cubierto medido, o una báscula bajo algunas plantas.",
  },
  "irrigate.dual": {
    finding:
      "La transpiración y la evaporación de la capa de arriba del suelo, mojada y abierta, se siguen por separado, cada una con su propio balance de agua.",
    design:
      "Método estándar, comparado con lisímetros; la división del suelo abierto según lo que lo moja es de memoria.",
    size: null,
    effect: null,
    limits:
      "Agua evaporable según la clase de textura, no medida. Ninguna publicada para mezclas de maceta, donde queda el coeficiente único.",
    wouldChange: "Lisímetros chicos entre las plantas.",
  },
  "irrigate.ground-cover": {
    finding:
      "El coeficiente basal se puede saber por la parte del suelo cubierta y la altura de las plantas.",
    design:
      "Coeficiente de densidad, comparado con mediciones de hortalizas; se leyeron el resumen y lo que otros textos repiten de él.",
    size: "siete hortalizas en California",
    effect: "raíz del error cuadrático medio de Kc 0.13",
    limits:
      "El pimiento en temporadas cortas no está entre ellas por nombre. El valor con cobertura completa sigue siendo el de la tabla.",
    wouldChange: "La misma comparación en pimiento.",
  },
  "irrigate.root-zone": {
    finding:
      "El pimiento se frena en cuanto falta 30 % del agua disponible con 5 mm al día, antes en días sedientos; las raíces llegan hasta 0.5 a 1 m.",
    design: "Tablas recopiladas y un balance diario de agua.",
    size: null,
    effect: "p = 0.30",
    limits:
      "Se usa el extremo somero de la profundidad de raíces. No se cuentan el ascenso capilar ni la escorrentía.",
    wouldChange: "Un sensor de humedad del suelo, o un hoyo cavado junto a una planta.",
  },
  "irrigate.lower-depletion": {
    finding:
      "Una hoja de extensión para el clima seco de Utah deja que se vaya solo cerca de 25 % del agua disponible antes de regar el pimiento dulce.",
    design: "Recomendación de extensión.",
    size: null,
    effect: "cerca de 25 %",
    limits:
      "Clima seco y soleado; en sus días más sedientos la fracción ajustada de aquí es igual de baja o más baja.",
    wouldChange: "Un ensayo en una temporada fresca y corta.",
  },
  "irrigate.mulch": {
    finding:
      "El acolchado plástico con goteo baja entre 5 y 15 % el coeficiente basal y entre 50 y 80 % la evaporación del suelo; la lluvia sobre plástico no se cuenta.",
    design: "Recopilado de hortalizas sobre plástico; el pimiento no está entre ellas.",
    size: null,
    effect: "Kcb 5 a 15 % más bajo, se toma 5; evaporación del suelo 50 a 80 % más baja, se toma 50",
    limits: "Otros cultivos. Se toma el extremo del rango que riega más.",
    wouldChange: "Una medición en pimiento con acolchado.",
  },
  "irrigate.under-plastic": {
    finding:
      "Dentro de un invernadero de plástico la ecuación de Penman-Monteith coincidió con lo que usó el pasto cuando su resistencia aerodinámica se fijó en 150 s/m, el viento de 1.4 m/s.",
    design: "Lisímetros de drenaje bajo pasto en un invernadero de plástico.",
    size: "de 1993 a 2004, un invernadero en Almería",
    effect: "hasta unos 4 mm al día en julio; 21 % menos con blanqueo",
    limits:
      "Un invernadero mediterráneo, con el clima medido adentro. Aquí se toma solo su viento; el sol y la humedad siguen siendo los del aire libre.",
    wouldChange: "Sol, temperatura y humedad medidos junto a las plantas.",
  },
  "irrigate.tension-start": {
    finding:
      "El riego por goteo del pimiento empieza con una tensión del suelo de 17 a 22 kPa en arena, 22 a 27 en franco arenoso, 25 a 30 en franco y 35 a 45 en arcilla, donde falta de 20 a 25 % del agua disponible.",
    design: "Recomendación de extensión.",
    size: null,
    effect: "17 a 45 kPa según la textura",
    limits: "Cuatro grupos de texturas; un sensor siente solo el suelo que toca. Dice cuándo, no cuánto.",
    wouldChange: "La curva de retención del propio sitio.",
  },
  "irrigate.salt": {
    finding: "Por encima de 1.5 dS/m en la pasta saturada la sal frena al pimiento, junto con la sequedad.",
    design: "Recopilado de ensayos de tolerancia a la sal; combinado con la respuesta de la cosecha al agua.",
    size: null,
    effect: "Ks baja 14 / (100 × 1.1) por cada dS/m por encima de 1.5",
    limits:
      "Hasta 50 % de cosecha perdida, en suelo. La sal del suelo que se saca solo del agua es un valor de equilibrio, no el de este año.",
    wouldChange: "Un análisis en pasta saturada de esta cama.",
  },
  "irrigate.leaching": {
    finding:
      "Una parte del agua debe pasar por debajo de las raíces para contener la sal del suelo: ECw / (5 ECe - ECw).",
    design:
      "Balance en estado estacionario para raíces que toman 40, 30, 20 y 10 % de los cuartos de su profundidad.",
    size: null,
    effect: "7, 15 y 25 % con 0.5, 1.0 y 1.5 dS/m para la cosecha completa de pimiento",
    limits:
      "Temporadas enteras de riego parejo. La lluvia de invierno puede hacer el mismo trabajo sin costo.",
    wouldChange: "Análisis de suelo de dos años en el mismo lugar.",
  },
  "irrigate.under-watering-georgia": {
    finding:
      "En tres años de ensayo 70, 67 y 50 % de la evapotranspiración del cultivo dieron la cosecha completa; la pudrición apical subió con 33 a 67 %, la enfermedad de raíces con 167 %.",
    design: "Ensayos de campo aleatorizados, con plástico y goteo.",
    size: "tres años de ensayo entre 2001 y 2005, un sitio",
    effect: "ninguna cosecha perdida con 70, 67 y 50 %",
    limits: "La húmeda Georgia con lluvia, en arena. No dice que una temporada seca no necesite más.",
    wouldChange: "El mismo ensayo en una temporada corta y fresca.",
  },
};
