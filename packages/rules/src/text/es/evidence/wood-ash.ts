import type { ClaimWords } from "../../../evidence/types.ts";

export const woodAsh: Record<string, ClaimWords> = {
  "wood-ash.potash": {
    finding: "La ceniza de leña sin lavar tiene de 3 a 8 % de potasa y de 1 a 2 % de fosfato.",
    design: "Columnas y tablas de extensión.",
    size: null,
    effect: "25 lb/1000 pies² con 5 % traen 54.5 lb K2O/A",
    limits:
      "Difiere según la leña y el fuego. Un análisis siempre va primero; sin él lo más alto pone el límite y se cuenta con lo menos.",
    wouldChange: "Un análisis de esta ceniza.",
  },
  "wood-ash.lime-value": {
    finding: "La ceniza hace el trabajo de 20 a 67 % de su peso en caliza.",
    design: "Columnas de extensión; de 50 a 67 % coinciden, de 20 a 50 % es más bajo.",
    size: null,
    effect: "una necesidad de cal de 6 a 8 toma de 9 a 12 de ceniza",
    limits:
      "Un valor analizado siempre va primero. El pH de cerca de 14 de una columna no es creíble; la ceniza se toma como muy cáustica.",
    wouldChange: "El equivalente en carbonato de calcio de esta ceniza.",
  },
  "wood-ash.leached": {
    finding: "La lluvia se lleva dos tercios de la potasa: 6 % sin lavar, 2 % lavada.",
    design: "Tabla de extensión.",
    size: null,
    effect: "de 6 a 2 % K2O, de 2 a 1.2 % P2O5",
    limits: "Su cal se queda.",
    wouldChange: "Un análisis de ceniza que estuvo a la intemperie.",
  },
  "wood-ash.cap": {
    finding:
      "No más de 10 lb de ceniza por 1000 pies² en un año: se aplica el extremo bajo de los 10 a 15 de Oregón, el tope más estricto hallado.",
    design: "Consejo de extensión para céspedes.",
    size: null,
    effect: "49 g/m2",
    limits:
      "Para céspedes; se toma para camas porque los topes difieren diez veces y la ceniza no se puede quitar.",
    wouldChange: "Un ensayo de dosis de ceniza en hortalizas.",
  },
  "wood-ash.cap-others": {
    finding: "Otros permiten 25, 50 y hasta 100 lb/1000 pies².",
    design: "Columna de extensión, manual, y la cifra de una universidad citada en una columna.",
    size: null,
    effect: "122, 244 y 488 g/m2",
    limits: "Se tienen junto al más estricto y no se usan.",
    wouldChange: "Un ensayo de dosis de ceniza en hortalizas.",
  },
  "wood-ash.ceiling": {
    finding:
      "Ceniza solo donde el análisis de suelo muestra pH 6.0 o menos y potasio bajo: se aplica lo más estricto hallado.",
    design: "Consejo de extensión para una región seca.",
    size: null,
    effect: null,
    limits: "Cuenca del Columbia, donde los suelos son alcalinos; en otros lugares es estricto.",
    wouldChange: "Un tope regional.",
  },
  "wood-ash.ceiling-others": {
    finding: "Otros se detienen en pH 6.5 o en 7.0.",
    design: "Consejo de extensión.",
    size: null,
    effect: null,
    limits: "Se tienen junto al más estricto y no se usan.",
    wouldChange: "Un tope regional.",
  },
  "wood-ash.ammonium": {
    finding:
      "La ceniza hace que el sulfato de amonio, la urea y el nitrato de amonio suelten amoníaco; al menos un mes entre ellos.",
    design: "Consejo de extensión; química del amoníaco por encima de pH 9.",
    size: null,
    effect: null,
    limits:
      "El mes está publicado para céspedes. También se le exige al estiércol fresco y a mezclas de nitrógeno desconocido (práctica común).",
    wouldChange: "El amoníaco medido sobre ceniza.",
  },
  "wood-ash.seedlings": {
    finding:
      "La ceniza es demasiado salada para plántulas y cáustica para hojas jóvenes; los terrones y montones queman.",
    design: "Consejo de extensión.",
    size: null,
    effect: null,
    limits: "Cuatro semanas antes de las plantas es práctica común; no se halló ninguna cifra.",
    wouldChange: "Una prueba con berro en el suelo tratado.",
  },
  "wood-ash.do-not-use": {
    finding:
      "Nada de ceniza de basura, cartón, carbón mineral, ni de madera tratada a presión, pintada o teñida; nada para papas ni plantas de suelo ácido.",
    design: "Consejo de extensión.",
    size: null,
    effect: null,
    limits: "El boro de pegamentos, y los metales de pinturas y conservadores, no se ven a simple vista.",
    wouldChange: "Un análisis de metales y boro.",
  },
  "wood-ash.caustic": {
    finding:
      "Maneje la ceniza como cloro de uso doméstico: protección de los ojos, guantes, mascarilla, sin viento.",
    design: "Consejo de extensión.",
    size: null,
    effect: null,
    limits: "La ceniza mojada es peor que la seca.",
    wouldChange: "Nada: la advertencia va con cada respuesta.",
  },
  "wood-ash.embers": {
    finding: "Las brasas en la ceniza guardada provocan incendios; un recipiente con tapa que no arda.",
    design: "Columna de extensión.",
    size: null,
    effect: null,
    limits: "Las reglas locales contra incendios van primero.",
    wouldChange: "Nada: la advertencia va con cada respuesta.",
  },
  "wood-ash.metals": {
    finding:
      "Reglas de países del norte limitan los metales en la ceniza que va al suelo: arsénico de 25 a 30, cadmio de 5 a 30, cromo de 20 a 300, cobre de 100 a 700, mercurio de 0.2 a 1.0, níquel de 20 a 150, plomo de 40 a 300, zinc de 1000 a 7000 mg/kg en seco.",
    design: "Tabla de límites nacionales; en la copia se perdió el encabezado con los países.",
    size: null,
    effect: null,
    limits:
      "Se muestra como aquello con que se compara un análisis, y no se calcula con ello. El límite de su propio estado va primero.",
    wouldChange: "Un análisis de esta ceniza, y el límite que obliga aquí.",
  },
  "wood-ash.certified": {
    finding: "La ceniza de estiércol quemado está prohibida en suelo certificado en los Estados Unidos.",
    design: "Reglamento federal.",
    size: null,
    effect: null,
    limits: "Permitir la ceniza de leña le toca al certificador; sin prueba no entra en suelo certificado.",
    wouldChange: "Un cambio del reglamento.",
  },
  "wood-ash.speed": {
    finding: "La ceniza actúa más rápido que la caliza molida, y su trabajo no dura tanto.",
    design: "Guía de extensión y manual.",
    size: null,
    effect: null,
    limits: "Cuánto, no se halló, así que el pH se predice con las relaciones de la caliza.",
    wouldChange: "El pH leído dos meses después de esparcirla.",
  },
};
