import type { ClaimWords } from "../../../evidence/types.ts";

export const ripe: Record<string, ClaimWords> = {
  "ripe.storage": {
    finding: "Los pimientos se conservan de dos a tres semanas a 45-50 F (7-10 C) y 90-95 % de humedad.",
    design: "Guías de extensión",
    size: null,
    effect:
      "De 2 a 3 semanas; daño por frío por debajo de 45 F según una, considerable por debajo de 40 F según la otra",
    limits: "Fruto fresco y sano, enfriado pronto. Las variedades difieren.",
    wouldChange: "Fruto de esta variedad guardado a dos temperaturas y mirado cada semana.",
  },
  "ripe.storage-longer": {
    finding:
      "A 7.5 C los pimientos se conservan de tres a cinco semanas; a 5 C dos semanas, con daño por frío después; el fruto maduro se daña con el frío menos que el verde.",
    design: "Recomendaciones de poscosecha, leídas en una copia y en un libro de texto de otra parte",
    size: null,
    effect: "De 3 a 5 semanas a 7.5 C",
    limits: "Leído de segunda mano. Por encima de 95 % de humedad.",
    wouldChange: "Fruto de esta variedad guardado a dos temperaturas y mirado cada semana.",
  },
  "ripe.chilling": {
    finding:
      "Los pimientos dulces en verde maduro mostraron daño por frío a 5 C después de 10-14 días, y perdieron más agua a 7.5 C.",
    design: "Diez y dieciocho variedades, 5 y 7.5 C por 14 días y tres a 20 C",
    size: "dos ensayos",
    effect: "Parte vendible igual en las dos hasta 21 días",
    limits: "Pimientos dulces de campos comerciales. Un resumen.",
    wouldChange: "Un ensayo con el tipo comercial de que se trate.",
  },
  "ripe.breaker": {
    finding:
      "De todas las etapas, el fruto que empieza a tomar color es el que más se daña con el almacenamiento en frío; más humedad lo reduce.",
    design: "Ensayo de almacenamiento de pimientos dulces rojos al empezar a tomar color, con dos humedades",
    size: "un estudio",
    effect: null,
    limits: "Un grupo de variedades; estante y no planta.",
    wouldChange: "Noches frías registradas junto al fruto de cada etapa en la planta.",
  },
  "ripe.colouring": {
    finding:
      "El fruto que ya empezó a tomar color sigue tomándolo a 20-25 C y humedad alta; el etileno hace poco.",
    design: "Recomendaciones de poscosecha, leídas de segunda mano",
    size: null,
    effect: "20-25 C, por encima de 95 %",
    limits:
      "Fruto con color en parte. Que el fruto verde de tamaño completo rara vez toma color fuera de la planta es práctica común.",
    wouldChange: "Una docena de frutos de cada etapa guardados en lo tibio y contados.",
  },
  "ripe.ethylene": {
    finding:
      "Una guía de extensión dice que rastros de etileno apuran la madurez y que los pimientos no se guardan con manzanas, peras ni tomates.",
    design: "Guía de extensión",
    size: null,
    effect: null,
    limits: "Otra dice que los pimientos responden muy poco. Tenerlos aparte no cuesta nada.",
    wouldChange: "Fruto guardado con manzanas y sin ellas.",
  },
  "ripe.freezing": {
    finding:
      "El fruto se congela cerca de 31 F (-0.6 C); los libros de texto dicen -0.7 C y que el crecimiento casi se detiene por debajo de 10-13 C.",
    design: "Guía de extensión; valores de libro de texto, de memoria",
    size: null,
    effect: null,
    limits:
      "Los libros de texto no se volvieron a leer. Un termómetro en un abrigo meteorológico a 0 C cuenta aquí como helada, porque el fruto bajo cielo abierto está más frío que el abrigo.",
    wouldChange: "Un termómetro a la altura del fruto en la cama.",
  },
  "ripe.pick-stage": {
    finding:
      "Los tipos morrón y los verdes delgados se venden en verde maduro; los dulces largos, los mini y la mayoría de los picantes, con color; se cosecha de nuevo cada pocos días.",
    design: "Práctica común",
    size: null,
    effect: "Fruto verde cada semana, fruto con color dos veces por semana",
    limits: "Decide el mercado que se tiene; la plantación puede decir cuándo se cosecha su fruto.",
    wouldChange: "La palabra del productor de cuándo se cosecha el fruto de esta plantación.",
  },
  "ripe.first-fruit": {
    finding:
      "Los días del primer fruto verde maduro y con color salen del calor de las etapas y de lo que dicen las guías de la flor al fruto.",
    design: "Sumas de calor de chile en el campo hasta la primera flor; guías de memoria para el fruto",
    size: "dos estudios de campo para el calor; las guías no dan ninguno",
    effect: "42.5 días de la flor al verde maduro y 21 más al color, a 24 C",
    limits: "Como dice la regla de las etapas. Las guías no se volvieron a leer.",
    wouldChange: "Notas de la primera flor, del verde maduro y del color de esta plantación.",
  },
};
