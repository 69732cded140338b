import type { ClaimWords } from "../../../evidence/types.ts";

export const lookCloser: Record<string, ClaimWords> = {
  "look-closer.points": {
    finding:
      "Las guías ligan señales a causas con palabras; a menudo, a veces y rara vez se leen como razones de probabilidad de 4 a 1, 2 a 1 y a la par, y se suman como puntos.",
    design:
      "Práctica común de esta regla; las señales se pesan como si fueran independientes, las causas como si fueran igual de comunes",
    size: null,
    effect: null,
    limits:
      "Ningún estudio da esas razones para pimientos. Las señales de una causa vienen juntas, así que una lista larga la exagera.",
    wouldChange:
      "Conteos de qué tan seguido viene cada señal con cada causa, confirmados por un laboratorio.",
  },
  "look-closer.patterns": {
    finding:
      "El daño en plantas sueltas o en manchones que se extiende habla por algo vivo; en hileras, con el dibujo de una aplicación o por todas partes de una misma edad, por el tiempo, los químicos o el trabajo.",
    design: "Guías de diagnóstico de servicios de extensión, leídas en parte",
    size: null,
    effect: null,
    limits:
      "Patología vegetal general, no de pimientos. Las causas vivas pueden verse parejas, y otras en manchones.",
    wouldChange:
      "Conteos de qué tan seguido viene cada señal con cada causa, confirmados por un laboratorio.",
  },
  "look-closer.pests": {
    finding:
      "Los pulgones dejan mielecilla y enroscan las hojas; los trips las platean; la araña roja las llena de puntitos y telarañas en años calurosos y secos; los barrenadores y las larvas de mosca entran al fruto; los gusanos cortadores cortan tallos jóvenes.",
    design: "Guías de diagnóstico de servicios de extensión, leídas en parte",
    size: null,
    effect: null,
    limits:
      "Las plagas difieren por región; la guía de ácaros es de soya. Qué es caluroso en grados no lo dice ninguna guía.",
    wouldChange:
      "Conteos de qué tan seguido viene cada señal con cada causa, confirmados por un laboratorio.",
  },
  "look-closer.broad-mites-cool": {
    finding: "Al ácaro blanco le va bien el tiempo fresco y húmedo en un campo de Georgia.",
    design: "Guías de diagnóstico de servicios de extensión, leídas en parte",
    size: null,
    effect: null,
    limits:
      "Un campo; en otras partes es de los trópicos y de invernaderos, así que no se pesa ningún tiempo.",
    wouldChange:
      "Conteos de qué tan seguido viene cada señal con cada causa, confirmados por un laboratorio.",
  },
  "look-closer.broad-mites-house": {
    finding:
      "El ácaro blanco es sobre todo de invernaderos y sale con las plantas para trasplante criadas ahí.",
    design: "Guías de diagnóstico de servicios de extensión, leídas en parte",
    size: null,
    effect: null,
    limits: "Misisipi; en el norte tampoco pasa el invierno afuera.",
    wouldChange:
      "Conteos de qué tan seguido viene cada señal con cada causa, confirmados por un laboratorio.",
  },
  "look-closer.diseases": {
    finding:
      "La mancha bacteriana, la antracnosis y la marchitez por Phytophthora siguen a la lluvia tibia, la última desde partes bajas y mojadas; el tizón sureño, a rachas muy calurosas y lluviosas; el ahogamiento de plántulas, a semilleros mojados; la marchitez por Verticillium viene despacio.",
    design: "Guías de diagnóstico de servicios de extensión, leídas en parte",
    size: null,
    effect: null,
    limits:
      "24 C como tibio es de P. capsici; de mancha bacteriana es de memoria. Qué cuenta como lluvioso es práctica: las guías no dan milímetros.",
    wouldChange:
      "Conteos de qué tan seguido viene cada señal con cada causa, confirmados por un laboratorio.",
  },
  "look-closer.verticillium-cool": {
    finding: "El aire y el suelo frescos favorecen la marchitez por Verticillium del pimiento.",
    design: "Guías de diagnóstico de servicios de extensión, leídas en parte",
    size: null,
    effect: null,
    limits: "No se da ninguna temperatura. 20 C es práctica.",
    wouldChange:
      "Conteos de qué tan seguido viene cada señal con cada causa, confirmados por un laboratorio.",
  },
  "look-closer.verticillium-warm": {
    finding:
      "De sus dos hongos, a V. dahliae lo favorece una temperatura de moderada a alta y a V. albo-atrum una fresca.",
    design: "Guías de diagnóstico de servicios de extensión, leídas en parte",
    size: null,
    effect: null,
    limits: "Por esa razón el tiempo es una señal débil de ella: un punto en un sentido o en el otro.",
    wouldChange:
      "Conteos de qué tan seguido viene cada señal con cada causa, confirmados por un laboratorio.",
  },
  "look-closer.viruses": {
    finding:
      "Los mosaicos manchan de claro y oscuro y deforman las hojas jóvenes; el mosaico del pepino las achica y angosta; la marchitez manchada broncea y marca con anillos hojas y fruto.",
    design: "Guías de diagnóstico de servicios de extensión, leídas en parte",
    size: null,
    effect: null,
    limits:
      "Las guías mismas dicen que los virus no se pueden distinguir a simple vista, y que las infecciones mixtas son comunes.",
    wouldChange:
      "Conteos de qué tan seguido viene cada señal con cada causa, confirmados por un laboratorio.",
  },
  "look-closer.food": {
    finding:
      "El nitrógeno, el fósforo, el potasio y el magnesio faltan primero en las hojas viejas, el calcio y el hierro en las jóvenes; la sal quema las orillas de las hojas viejas y deja plantas enanas.",
    design: "Guías de diagnóstico de servicios de extensión, leídas en parte",
    size: null,
    effect: null,
    limits: "Todo salvo nitrógeno, magnesio y sal es de memoria. Las raíces enfermas se ven como hambre.",
    wouldChange:
      "Conteos de qué tan seguido viene cada señal con cada causa, confirmados por un laboratorio.",
  },
  "look-closer.weather-damage": {
    finding:
      "Los pimientos enfriados por debajo de 10 C muestran hojas oscuras y vidriosas al día siguiente; el viento rompe y quema; con raíces ahogadas las hojas se marchitan, amarillean y caen; la pudrición apical sigue al agua dispareja, el golpe de sol al fruto descubierto.",
    design: "Guías de diagnóstico de servicios de extensión, leídas en parte",
    size: null,
    effect: null,
    limits:
      "10 C es de invernaderos. Los 32 C a los que caen las flores son de memoria. Cuánta lluvia satura el suelo es práctica.",
    wouldChange:
      "Conteos de qué tan seguido viene cada señal con cada causa, confirmados por un laboratorio.",
  },
  "look-closer.drift": {
    finding:
      "Los herbicidas reguladores del crecimiento acucharan, angostan y tuercen lo que crece joven, por el viento o en estiércol, heno y composta, donde algunos duran un año.",
    design: "Guías de diagnóstico de servicios de extensión, leídas en parte",
    size: null,
    effect: null,
    limits:
      "Otros herbicidas blanquean o queman. Lo que aplica un vecino no está en ningún registro de aquí.",
    wouldChange:
      "Conteos de qué tan seguido viene cada señal con cada causa, confirmados por un laboratorio.",
  },
  "look-closer.sample": {
    finding:
      "Los laboratorios quieren plantas enteras, sacadas con pala y no jaladas, con señales tempranas y avanzadas, las raíces embolsadas aparte, secas, frescas, y pronto.",
    design: "Instrucciones de tres laboratorios de diagnóstico, leídas en parte",
    size: null,
    effect: null,
    limits: "Cada laboratorio tiene su propio formulario, costo y deseos; esos van primero.",
    wouldChange: "Otras instrucciones del laboratorio al que va la muestra.",
  },
  "look-closer.re-entry": {
    finding:
      "Después de una aplicación ningún trabajador entra al terreno tratado antes de que pase el plazo de reingreso de la etiqueta; de varios vale el más largo.",
    design: "Ley de los Estados Unidos a la fecha de 2007, y la guía de una universidad",
    size: null,
    effect: null,
    limits:
      "Hay excepciones para entrar antes y no se ofrecen. El texto revisado de 2015 no se volvió a leer. En otras partes vale otra ley.",
    wouldChange: "Una etiqueta o ley que pida más.",
  },
  "look-closer.pre-harvest": {
    finding:
      "No se cosecha ningún fruto antes de que pasen los días de la etiqueta desde la última aplicación; un plazo de reingreso más largo vale también para la cosecha.",
    design:
      "Orientación de un servicio nacional de información y de una universidad sobre lo que quieren decir las etiquetas",
    size: null,
    effect: null,
    limits:
      "Los días se cuentan como días de calendario de la finca. Donde una etiqueta cuenta horas, valen sus horas, y pueden terminar más tarde ese día.",
    wouldChange: "Una etiqueta que cuente de otra manera.",
  },
};
