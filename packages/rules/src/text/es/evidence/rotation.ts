import type { ClaimWords } from "../../../evidence/types.ts";

export const rotation: Record<string, ClaimWords> = {
  "rotation.phytophthora": {
    finding:
      "El suelo donde hubo marchitez por Phytophthora queda sin sus huéspedes de tres a cinco años. Sus esporas duran más, y el drenaje importa más.",
    design: "Consejo de extensión",
    size: null,
    effect: "De 3 a 5 años",
    limits:
      "Las oosporas duran más que cualquier rotación de este largo. El descanso baja el riesgo y no lo termina.",
    wouldChange: "Una cama donde hubo marchitez, con lo que vino después de su descanso anotado.",
  },
  "rotation.phytophthora-beans": {
    finding: "El frijol lima y los ejotes son huéspedes de Phytophthora capsici.",
    design: "Página de extensión sobre la enfermedad",
    size: null,
    effect: null,
    limits: "No se dice cuánto de ella dejan los frijoles en el suelo.",
    wouldChange: "La palabra de una clínica de plantas de que los frijoles de la región siguen limpios.",
  },
  "rotation.phytophthora-beans-no": {
    finding: "Los frijoles y los chícharos son cultivos que Phytophthora capsici no ataca.",
    design: "Diapositivas de extensión sobre rotación",
    size: null,
    effect: null,
    limits:
      "Anteriores al hallazgo de la marchitez en frijoles. El plano cuenta los frijoles como huéspedes: la lectura más segura.",
    wouldChange: "La palabra de una clínica de plantas sobre los frijoles de la región.",
  },
  "rotation.phytophthora-loss": {
    finding:
      "En 1996 se perdió por marchitez por Phytophthora más de la cuarta parte de la cosecha de pimiento de Nueva Jersey; empieza donde el agua queda dos días.",
    design: "Estimación de un especialista de extensión",
    size: "Una temporada muy lluviosa",
    effect: "Más de 25 % de la cosecha de un estado",
    limits: "Una temporada, tan lluviosa como la que más.",
    wouldChange: "Pérdidas contadas en un año seco.",
  },
  "rotation.chile": {
    finding: "El chile está en un mismo campo no más de una vez cada tres a cuatro años.",
    design: "Consejo de extensión",
    size: null,
    effect: "De dos a tres temporadas de por medio",
    limits: "Escrito para una tierra seca; rota con grano, maíz, alfalfa y algodón.",
    wouldChange: "Un ensayo de descansos en una temporada lluviosa y corta.",
  },
  "rotation.verticillium-uc": {
    finding:
      "Donde la marchitez por Verticillium fue un problema, los pimientos siguen a dos años de un cultivo que no sea huésped, como maíz, y no papas, tomates ni cucurbitáceas.",
    design: "Consejo de extensión a jardineros",
    size: null,
    effect: "2 años",
    limits: "La misma página dice que el hongo se queda en el suelo sin fin.",
    wouldChange: "Conteos de él en el suelo antes y después.",
  },
  "rotation.verticillium-uconn": {
    finding:
      "El suelo con marchitez por Verticillium de la berenjena se guarda cuatro años de tomate, papa, pimiento y fresa.",
    design: "Tabla de sugerencias",
    size: null,
    effect: "4 años",
    limits: "El renglón es de berenjena; el de pimiento no se leyó.",
    wouldChange: "El renglón de pimiento.",
  },
  "rotation.leaf-spot": {
    finding:
      "La mancha bacteriana de la hoja vive una o dos temporadas en lo que queda de las plantas de pimiento y tomate.",
    design: "Guías, de memoria",
    size: null,
    effect: "De 2 a 3 años",
    limits:
      "No se volvió a leer. La semilla y las plántulas la traen más seguido que el suelo. Se cuenta solo donde se halló en la cama.",
    wouldChange: "Las guías, leídas.",
  },
  "rotation.sclerotinia": {
    finding:
      "El moho blanco ataca la mayoría de las hortalizas. Para lechuga se sugieren tres años sin un huésped.",
    design: "Tabla de sugerencias; una lista de huéspedes",
    size: null,
    effect: "3 años",
    limits:
      "El renglón es de lechuga. Se cuenta solo donde se halló en la cama, o casi ninguna cama quedaría libre nunca.",
    wouldChange: "Un renglón de pimiento.",
  },
  "rotation.without-interval": {
    finding:
      "El tizón sureño y los nematodos agalladores viven en casi cualquier cultivo de hoja ancha. No se halló publicado para pimientos ningún descanso en años.",
    design: "Páginas de extensión",
    size: null,
    effect: null,
    limits: "Se nombran donde se hallaron, y de ninguna cama se dice que descansó de ellos.",
    wouldChange: "Una muestra de suelo que revise un laboratorio.",
  },
  "rotation.exudates": {
    finding:
      "El pimiento verde año tras año en un mismo suelo suelta exudados de raíz que actúan de vuelta sobre él.",
    design: "Esquema de un estudio",
    size: "No se dice en el esquema",
    effect: "Negativo",
    limits: "Solo se leyó el esquema; no se sabe cuántos años hacen falta.",
    wouldChange: "El estudio, leído entero.",
  },
};
