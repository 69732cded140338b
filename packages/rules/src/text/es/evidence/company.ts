import type { ClaimWords } from "../../../evidence/types.ts";

export const company: Record<string, ClaimWords> = {
  "company.isolation-home": {
    finding:
      "La semilla para uso de la propia finca se mantiene bastante pura con 150 ft entre dos pimientos dulces, y con 600 ft en cuanto uno es picante, con un cultivo de barrera en medio.",
    design: "Orientación, sin ensayo; busca 98 % de semilla pura",
    size: null,
    effect: "150 ft (45.7 m); 600 ft (182.9 m); busca 98 % de semilla pura",
    limits:
      "Orientación que nadie probó en esta finca. También importan los insectos, los rompevientos y que florezcan al mismo tiempo. Sin un cultivo de barrera hace falta más.",
    wouldChange:
      "Plántulas de la propia semilla de la finca llevadas a planta, con las fuera de tipo contadas.",
  },
  "company.isolation-commercial": {
    finding:
      "La semilla comercial de un pimiento dulce se mantiene a un cuarto de milla de otros, y picante de dulce o de picante, a una milla.",
    design: "Costumbre del oficio según la da una guía",
    size: null,
    effect: "0.25 milla (402 m); 1 milla (1609 m)",
    limits: "Para semilla que se vende. El plano no se lo exige a una finca chica.",
    wouldChange: "Semilla vendida bajo un contrato que nombre una distancia.",
  },
  "company.isolation-other": {
    finding:
      "Otros dan de 300 a 1000 ft, y guardan semilla de 5 a 20 plantas; para semilla certificada en los Estados Unidos se recuerdan 200, 100 y 30 ft según la clase.",
    design: "Orientación tal como se cita; un reglamento de memoria",
    size: null,
    effect: "De 30 a 1000 ft",
    limits: "No se volvió a leer, el reglamento menos que nada: búsquelo antes de apoyarse en él.",
    wouldChange: "La tabla del reglamento, leída.",
  },
  "company.species": {
    finding:
      "Solo se separan variedades de una misma especie. Algunas especies de Capsicum también se cruzan entre sí, annuum y chinense entre ellas.",
    design: "Práctica común; que las especies se cruzan es de memoria",
    size: null,
    effect: null,
    limits: "No se volvió a leer. Donde se guarda semilla de gran valor, aleje también otras especies.",
    wouldChange: "Plantas de prueba de la semilla que muestren cruces entre especies.",
  },
  "company.microbes": {
    finding:
      "Los microbios alrededor de las raíces del pimiento difieren según la variedad, en un campo: más clases de bacterias bajo las más picantes, menos de hongos. En un sitio C. frutescens cultivado había perdido algunos que su pariente silvestre conserva.",
    design: "Correlación en un campo; un sitio",
    size: "Cinco variedades",
    effect: "Las comunidades difirieron; 19 géneros de bacterias iban con los capsaicinoides",
    limits:
      "Nada muestra que estar entre los de su propia variedad haga que los pimientos crezcan o rindan mejor. Los grupos se piden porque son más fáciles de trabajar y de cosechar.",
    wouldChange: "Un ensayo de una variedad en grupo contra las mismas plantas dispersas, con cosechas.",
  },
  "company.kin": {
    finding:
      "Algunas plantas echan raíces de otra manera entre extrañas que entre parientes. No se halló ningún estudio de ello en ningún pimiento.",
    design: "Ensayo en macetas con una planta de playa; revisiones",
    size: "Una especie probada aquí; varias en las revisiones",
    effect: "Más raíces entre extrañas",
    limits: "No se afirma de los pimientos, y ninguna parte de ningún plano se apoya en ello.",
    wouldChange: "Un ensayo publicado con Capsicum.",
  },
  "company.intercrop": {
    finding:
      "El pimiento junto al maíz tuvo más fósforo y potasio disponibles y más clases de microbios que el pimiento solo.",
    design: "Ensayo de campo",
    size: "Una región",
    effect: "P y K disponibles más altos, pH más bajo",
    limits: "Habla por mezclar cultivos, y no por grupos de una variedad. El maíz además da sombra.",
    wouldChange: "Un ensayo en una temporada corta, con cosechas.",
  },
  "company.shade": {
    finding:
      "Una plantación alta del lado del sol da sombra a mediodía a una baja hasta una distancia igual a lo que la sobrepasa en altura por la tangente de la distancia del sol al cenit.",
    design: "Geometría del sol; el día, 1 de septiembre, es práctica común",
    size: null,
    effect: "A 46 N el 1 de septiembre, 0.79 m por metro",
    limits:
      "Solo a mediodía: en hileras de norte a sur un vecino alto también quita sol de la mañana o de la tarde, y no se cuenta. Las alturas son lo que alguien espera.",
    wouldChange: "Luz medida entre las hileras.",
  },
  "company.water": {
    finding:
      "Las plantaciones de una misma válvula reciben una misma agua. La que a propósito recibe menos está en una válvula propia.",
    design: "Práctica común",
    size: null,
    effect: null,
    limits: "Goteros de dos caudales en una línea, o el riego a mano, permiten otra cosa.",
    wouldChange: "Una segunda línea en la cama.",
  },
  "company.weights": {
    finding:
      "Cuánto cuentan entre sí un grupo, una planta a la sombra, un metro de camino y una caja mezclada es práctica común.",
    design: "No se halló a nadie que publique pesos así",
    size: null,
    effect: null,
    limits: "Otra finca los pesaría de otra manera: las unidades están junto a los puntos.",
    wouldChange: "Horas de cosecha anotadas por cama.",
  },
  "company.search": {
    finding:
      "Un plano mejor se busca moviendo, intercambiando y volviendo a colocar bloques al azar a partir de una semilla de azar, con cada vez menos pasos a peor.",
    design:
      "Métodos de búsqueda publicados, de memoria; comprobados aquí contra todos los arreglos de planos chicos",
    size: null,
    effect: null,
    limits:
      "No se volvió a leer. Una propuesta es buena y no está probado que sea la mejor; la cota dice qué tan lejos de la mejor puede estar a lo más.",
    wouldChange: "Una demostración hecha por un programa que resuelva programación entera.",
  },
  "company.map": {
    finding:
      "Los grados de un archivo de mapa se vuelven metros sobre el elipsoide en la latitud de la finca.",
    design: "Fórmula, de memoria; cotejada con largos impresos de un grado",
    size: null,
    effect: null,
    limits:
      "No se volvió a leer. Vale para una finca, no para un condado. El archivo es tan bueno como quien lo dibujó.",
    wouldChange: "Una cinta métrica a lo largo de una cama.",
  },
};
