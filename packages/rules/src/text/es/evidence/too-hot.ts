import type { ClaimWords } from "../../../evidence/types.ts";

export const tooHot: Record<string, ClaimWords> = {
  "too-hot.day": {
    finding: "De día, por encima de 35 C (95 F) el polen aborta. Es el valor habitual.",
    design: "Manual, citado en otra parte",
    size: null,
    effect: null,
    limits: "Temperatura del aire; las variedades difieren, y no se imprime ninguna dosis.",
    wouldChange: "Cuentas de cuajado frente a horas por encima de un límite, por variedad.",
  },
  "too-hot.day-later": {
    finding: "Se toleran cerca de 37.8 C (100 F), pero en floración bajan la polinización y el cuajado.",
    design: "Guías de extensión para pimiento dulce y chile en California",
    size: null,
    effect: null,
    limits: "Un estado seco y caluroso; nada se dice de horas.",
    wouldChange: "Lo mismo, en un lugar húmedo o fresco.",
  },
  "too-hot.day-earlier": {
    finding: "Muchos textos de extensión dan caída de fruto ya por encima de 32 C de día o 24 C de noche.",
    design: "Textos de extensión, de memoria",
    size: null,
    effect: null,
    limits: "No se volvieron a leer. Se muestra junto al valor habitual y nunca decide solo.",
    wouldChange: "Los ensayos en que descansan esos textos.",
  },
  "too-hot.night": {
    finding:
      "Las noches de 18-27 C son ideales para el cuajado y la cosecha; por encima de 30 C (86 F) nada cuaja.",
    design: "Manuales, citados en otra parte",
    size: null,
    effect: null,
    limits: "Otros llaman ideales a noches más frescas, para el crecimiento y no para el cuajado.",
    wouldChange: "Cuajado frente a mínimas de la noche en el campo.",
  },
  "too-hot.night-cooler": {
    finding:
      "Para el crecimiento se llaman ideales las noches 9-12 C por debajo de un día de 24-30 C, las de 10-15.6 C y las de 15-18 C.",
    design: "Guías de extensión y una ficha de cultivo",
    size: null,
    effect: null,
    limits:
      "Crecimiento de pimiento dulce y chile, no cuajado. La mitad de eso queda donde el polen sufre de frío.",
    wouldChange: "Crecimiento y cuajado contados en las mismas plantas según la temperatura de la noche.",
  },
  "too-hot.pollen-hotter": {
    finding:
      "Flores calentadas a 41-55 C: la actividad y la concentración del polen solo bajan por encima de 47 C.",
    design: "Flores tratadas por poco tiempo",
    size: "varias líneas",
    effect: "50 C separa las líneas",
    limits: "Calor breve en flores abiertas, no días de calor en botones; no es un límite de campo.",
    wouldChange: "Lo mismo con plantas enteras en días enteros.",
  },
  "too-hot.heavy-fruit": {
    finding:
      "Unos 4 C más en un invernadero que llegó a 42 C dieron fruto de chile más liviano y con menos semillas.",
    design: "Dos plantaciones en un mismo invernadero",
    size: "un invernadero",
    effect: "mejor rango 21-33 C",
    limits: "Un solo invernadero; las proporciones impresas no concuerdan entre sí.",
    wouldChange: "Pesos de fruto de parcelas con repeticiones.",
  },
  "too-hot.cold-nights": {
    finding:
      "Con 14 C o menos de noche bajan la cantidad de polen y su germinación; 25/10 C dio el cuajado más bajo.",
    design: "Temperaturas controladas",
    size: "tres estudios",
    effect: "los óvulos bajan más de 60 %",
    limits: "Regímenes constantes; no se probaron noches frescas sueltas.",
    wouldChange: "Cuentas de flores caídas después de noches frescas registradas.",
  },
  "too-hot.cold-sets": {
    finding:
      "En un estudio, noches de 8-10 C subieron la parte de flores que cuajan, sin semilla; 20-24 C con 30 % de sombra subieron la caída de flores.",
    design: "Una variedad, resumen",
    size: "un estudio, una variedad",
    effect: null,
    limits: "El fruto sin semilla se queda chico. Habla en contra de la sombra cuando no hace calor.",
    wouldChange: "Lo mismo visto en más variedades y en el campo.",
  },
  "too-hot.sunscald": {
    finding:
      "El golpe de sol necesita luz y la superficie del fruto cerca de 38-40 C por horas, o a unos 50 C por diez minutos.",
    design: "Fruto calentado con luz, de memoria",
    size: null,
    effect: null,
    limits:
      "No se volvió a leer. La superficie del fruto no es el aire: el fruto descubierto está mucho más caliente.",
    wouldChange: "Temperaturas de la superficie leídas en fruto descubierto y en fruto a la sombra.",
  },
  "too-hot.end-rot-water": {
    finding:
      "Hubo más pudrición apical con 33-67 % del uso de agua del cultivo que con agua completa; puede costar 35 % de la cosecha.",
    design: "Ensayos de campo de niveles de riego; una revisión",
    size: "cinco años, un sitio",
    effect: null,
    limits: "Arenas en Georgia; se probaron cantidades, y no qué tan parejas llegaron.",
    wouldChange: "Ensayos de agua pareja contra dispareja con la misma cantidad.",
  },
  "too-hot.end-rot-calcium": {
    finding:
      "El exceso de potasa o de magnesio y el nitrógeno amoniacal mantienen el calcio fuera del fruto.",
    design: "Guía de extensión",
    size: null,
    effect: null,
    limits: "No se imprime ningún umbral.",
    wouldChange: "Calcio del fruto frente a dosis de potasa y de amonio.",
  },
  "too-hot.sprays-help": {
    finding:
      "Tres o cinco aplicaciones de calcio al 1 % dejaron 4.3-5.2 % de pudrición apical contra 14.4 %.",
    design: "Ensayo de campo",
    size: "una variedad",
    effect: "cosecha de 12 a 22 % mayor",
    limits: "Una variedad, un lugar.",
    wouldChange: "Más ensayos, con el agua pareja en todas las parcelas.",
  },
  "too-hot.sprays-do-not": {
    finding:
      "Los productores sostienen que las aplicaciones rara vez ayudan: el calcio casi no pasa de la hoja al fruto, y la causa es el agua.",
    design: "Práctica del oficio",
    size: null,
    effect: null,
    limits: "Está en contra de un ensayo; por eso se ofrece media cama y no un programa.",
    wouldChange: "Ensayos propios en media cama.",
  },
  "too-hot.moist-air": {
    finding: "El aire húmedo alrededor del fruto baja su calcio y sube la pudrición apical.",
    design: "Película nutritiva, 'Domino'",
    size: "una variedad",
    effect: null,
    limits:
      "Ningún cultivo en agua es un campo; no se imprime ningún límite de déficit de presión de vapor, así que ninguno decide.",
    wouldChange: "Un límite publicado para pimiento.",
  },
  "too-hot.hours": {
    finding:
      "Las horas entre los extremos de un día siguen un seno truncado de día y una caída exponencial de noche.",
    design: "Modelo ajustado a registros por hora de un sitio de pastizal corto",
    size: "un sitio, un año; un segundo para el aire",
    effect: "Error absoluto medio de hasta 2.64 C, para aire a 10 cm",
    limits:
      "Coeficientes leídos solo en reimplementaciones públicas. Las nubes al mediodía rompen el patrón.",
    wouldChange: "Un registrador junto a las plantas.",
  },
};
