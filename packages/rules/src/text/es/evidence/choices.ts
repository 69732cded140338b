/** Each question on which sources conflict, and its readings by id, in Spanish. */
export const choiceWords: Record<string, { question: string; options: Record<string, string> }> = {
  "setting-depth.leggy": {
    question: "¿A qué profundidad se pone una planta espigada de tallo verde donde el suelo está tibio?",
    options: {
      "trade-rule": "Nunca enterrar un tallo: la parte de arriba del cepellón, y una estaca.",
      trials: "Hasta las hojas de semilla, a lo más hasta la primera hoja verdadera.",
    },
  },
  "topping.default": {
    question: "¿Se quita la punta a las plantas jóvenes?",
    options: {
      "no-unless-time":
        "No; donde el fruto todavía tomaría color antes de la helada con el retraso publicado más largo, en media cama.",
      practice: "Sí en el suelo, no en macetas, como hacen los productores en temporadas frescas.",
      published:
        "Sí por la cosecha, donde el fruto todavía tomaría color antes de la helada con el retraso publicado más largo.",
    },
  },
  "rotation.interval": {
    question:
      "Las fuentes dan un descanso más corto y uno más largo para una cama. ¿Cuál vale donde no se halló ninguna enfermedad?",
    options: {
      shortest: "El más corto publicado; el más largo donde esa enfermedad se halló en la cama.",
      longest: "El más largo publicado, siempre.",
    },
  },
  "stage.base-temperature": {
    question:
      "¿Por encima de qué temperatura se cuenta el calor donde no se conoce la base propia de una variedad? Las bases publicadas no coinciden.",
    options: {
      "heat-units":
        "12.8 C (55 F), la base con que se contaron las sumas de calor publicadas de chile en el campo.",
      "compact-9.3": "9.3 C, como se ajustó a una variedad picante compacta.",
      "compact-13.3": "13.3 C, como se ajustó a una variedad dulce compacta.",
      "biquinho-16.8": "16.8 C, como se halló en dos variedades biquinho.",
      "compact-17.8": "17.8 C, como se ajustó a otra variedad picante compacta.",
    },
  },
};
