import type { ClaimWords } from "../../../evidence/types.ts";

export const salt: Record<string, ClaimWords> = {
  "salt.threshold": {
    finding:
      "El pimiento no pierde nada hasta 1.5 dS/m en la pasta saturada, y 14 % de su cosecha por cada dS/m por encima.",
    design:
      "Recopilado de ensayos en parcelas con aguas cloruradas; leído en la tabla que mantiene el US Salinity Laboratory.",
    size: null,
    effect: "1.5 dS/m, 14 % por dS/m",
    limits: "Capsicum annuum de hace décadas. No se imprime ningún umbral para las otras especies.",
    wouldChange: "Un ensayo con sal de los tipos picantes de hoy.",
  },
  "salt.threshold-range": {
    finding: "La FAO imprime un rango: de 1.5 a 1.7 dS/m, y de 12 a 14 % por cada dS/m por encima.",
    design: "Tabla recopilada.",
    size: null,
    effect: "con 5 dS/m se pierde de 39.6 a 49 %",
    limits: "Pimiento dulce. El extremo suave está junto al valor habitual como el otro límite.",
    wouldChange: "Los ensayos detrás del rango.",
  },
  "salt.card": {
    finding:
      "La ficha de pimiento de la FAO imprime cosecha nula a 8.5 dS/m, donde umbral y pendiente dan 8.64.",
    design: "Ficha de información sobre el agua del cultivo, leída en una copia espejo.",
    size: null,
    effect: "1.5, 2.2, 3.3, 5.1, 8.5 dS/m con 0, 10, 25, 50, 100 % perdido",
    limits: "Impresa con un decimal; la respuesta se calcula con umbral y pendiente.",
    wouldChange: "La fuente de la última columna de la ficha.",
  },
  "salt.cultivars": {
    finding:
      "Los pimientos difieren: ocho perdieron de 19 a 86 % de su fruto con agua de 4.1 dS/m (el habanero más); cinco chiles aguantaron agua de hasta unos 3 dS/m.",
    design: "Un estudio de campo y uno de germinación y crecimiento; resúmenes.",
    size: "ocho y cinco variedades",
    effect: "de 19 a 86 % con 4.1 dS/m",
    limits: "Del agua, no del suelo; lugares calurosos y secos.",
    wouldChange: "Umbral y pendiente por tipo.",
  },
  "salt.greenhouse": {
    finding:
      "En un invernadero el pimiento dulce vendible bajó de 5.47 a 2.60 kg/m2 cuando el agua pasó de 0.5 a 3.5 dS/m.",
    design: "Ensayo de agua y sal en invernadero; resumen.",
    size: "un ensayo de invernadero",
    effect: "52 % perdido; umbral y pendiente dan 52.5 % a 1.5 veces 3.5 dS/m",
    limits: "Bajo vidrio. El 72 % del propio resumen no concuerda con sus dos cosechas.",
    wouldChange: "Las tablas del artículo.",
  },
  "salt.conversion": {
    finding:
      "Un extracto diluido se convierte a la pasta saturada con la relación de su extracción y su grupo de textura.",
    design: "Regresiones en suelos de Saskatchewan, Turquía y Australia, leídas de segunda mano.",
    size: null,
    effect: "en arena 0.4 dS/m a 1:2 marca 1.5 o 1.8 en la pasta",
    limits:
      "Otros suelos. Suspensión y extracto difieren, y un informe rara vez dice cuál. Donde las relaciones no coinciden, la respuesta da el rango y actúa solo sobre aquello en que todas coinciden.",
    wouldChange: "La propia pasta saturada.",
  },
  "salt.water-to-soil": {
    finding:
      "Donde drena de 15 a 20 % del agua, el suelo llega a cerca de 1.5 veces la conductividad del agua.",
    design: "Balance de sal en la zona de raíces; confirmado por las filas impresas de cuatro cultivos.",
    size: null,
    effect: "1.53 con 15 %, 1.20 con 20 % según la ec. 93",
    limits: "Una temporada entera sin lluvia que lave. En lugares lluviosos el suelo queda muy por debajo.",
    wouldChange: "Una lectura del suelo al final de una temporada.",
  },
  "salt.leaching": {
    finding: "La parte que debe drenar es ECw / (5 ECe - ECw).",
    design: "Raíces que toman 40, 30, 20 y 10 % de los cuartos de su profundidad.",
    size: null,
    effect: "0.07, 0.15 y 0.25 para agua de 0.5, 1.0 y 1.5 dS/m",
    limits:
      "Necesita un terreno que drene. El goteo lava solo su propio anillo. Lo que drena se lleva nitrato.",
    wouldChange: "Conductividad del suelo a dos profundidades.",
  },
  "salt.washing": {
    finding:
      "Para bajar a la mitad la sal de una profundidad de suelo debe pasar por ella cerca de un quinto de esa profundidad en agua.",
    design: "Una regla para aspersión o varios riegos chicos, de memoria.",
    size: null,
    effect: "DL / DS = 0.1 ECe / ECe(deseada)",
    limits: "De memoria. Agua con poca sal, y un terreno que drene.",
    wouldChange: "Una lectura antes y una después.",
  },
  "salt.water-classes": {
    finding:
      "El agua no tiene restricción por debajo de 0.7 dS/m y tiene una severa por encima de 3.0; el sodio se juzga junto con esa cifra, el cloruro y el bicarbonato por sí solos; un pH de 6.5 a 8.4 es normal.",
    design: "Pautas de la experiencia en lugares secos, leídas en dos reproducciones.",
    size: null,
    effect: null,
    limits:
      "Todos los cultivos. Las reproducciones imprimen mg/L para iones donde el documento quiere decir meq/L (de memoria).",
    wouldChange: "La Tabla 1 del propio documento.",
  },
  "salt.boron": {
    finding: "El pimiento rojo es moderadamente sensible al boro: de 1.0 a 2.0 mg/L en el agua del suelo.",
    design: "Tabla recopilada de tolerancia al boro.",
    size: null,
    effect: "de 1.0 a 2.0 mg/L; ninguna pendiente impresa",
    limits:
      "Del agua del suelo. Por debajo del extremo bajo el agua se llama buena; por encima del alto, severa.",
    wouldChange: "Boro en las hojas de esta plantación.",
  },
  "salt.boron-general": {
    finding:
      "Para todos los cultivos el boro en el agua no tiene restricción por debajo de 0.7 mg/L y es severo por encima de 3.0.",
    design: "Pautas, leídas en dos reproducciones.",
    size: null,
    effect: "0.7 y 3.0 mg/L",
    limits: "Los árboles y el frijol fijan el extremo bajo; aquí lo habitual es la fila del propio pimiento.",
    wouldChange: "Ensayos de boro en el agua con pimiento.",
  },
  "salt.chloride": {
    finding:
      "Se dice que el pimiento aguanta 15 mmol/L de cloruro en el extracto saturado, y pierde 1.4 % por cada uno por encima.",
    design: "Tabla recopilada, de memoria.",
    size: null,
    effect: null,
    limits: "De memoria, así que se muestra y no se calcula con ella; se usan las clases generales del agua.",
    wouldChange: "La propia tabla.",
  },
  "salt.leaves": {
    finding:
      "Las hojas de pimiento toman sodio, calcio y cloruro del agua de aspersión a la par de su concentración y del tiempo; la frecuencia daña más que la duración.",
    design:
      "Pimiento dulce regado por aspersión hasta diez semanas en un invernadero; aerosol salino en una cámara con rocío.",
    size: "varios experimentos",
    effect: "muerte de hojas después de 8 días con 0.4 mg Cl/cm2 y rocío; ninguna con 70 % de humedad",
    limits:
      "Hace más donde el agua se seca despacio en la hoja. El límite de 3 meq/L es el general de la FAO.",
    wouldChange: "Una franja con aspersión y una sin ella, en esta finca.",
  },
};
