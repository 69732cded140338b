import type { ClaimWords } from "../../../evidence/types.ts";

export const shed: Record<string, ClaimWords> = {
  "shed.least-cost": {
    finding:
      "El óptimo de un programa lineal es el menor costo con que se cumplen todas las condiciones dichas.",
    design:
      "Aritmética, no un ensayo. Libro citado de memoria; el óptimo y el veredicto se comparan con un programa de optimización independiente en bodegas al azar (docs/agronomy/shed.md).",
    size: null,
    effect: null,
    limits: "Lo más barato según los precios y etiquetas anotados. No sabe nada de trabajo, flete ni gusto.",
    wouldChange: "Otros precios, existencias, etiquetas o necesidades.",
  },
  "shed.whole-bags": {
    finding:
      "Lo que se vende por saco se compra en sacos enteros, y eso puede hacer más barata otra mezcla que la que darían los precios a granel.",
    design: "Cómo se vende el fertilizante; números enteros por ramificación y acotamiento.",
    size: null,
    effect: null,
    limits:
      "Para una finca grande la búsqueda se detiene después de una cuenta fijada; se dice cuán lejos puede estar el plan del menor costo.",
    wouldChange: "Un vendedor que parta los sacos.",
  },
  "shed.contents": {
    finding:
      "Donde una etiqueta no dice nada de calcio, magnesio, azufre, cloruro o amonio, lo dice la composición de la propia sal; los índices de sal están en tablas por clase.",
    design: "Pesos de fórmula; grados comerciales de memoria; índices de sal de segunda mano.",
    size: null,
    effect: null,
    limits:
      "Los productos comerciales son un poco menos puros. La etiqueta o un análisis siempre van primero.",
    wouldChange: "La etiqueta, o la hoja del fabricante.",
  },
  "shed.shortfall": {
    finding:
      "Donde no se puede cumplir con todo, se sostienen primero el nitrógeno, el fosfato y la potasa, después los otros.",
    design: "Un peso de tres a uno, por la parte de lo pedido y por superficie.",
    size: null,
    effect: null,
    limits:
      "Ningún ensayo dice cuánto vale la falta de uno frente a la de otro; un análisis de suelo puede invertir el orden.",
    wouldChange: "Una curva de respuesta de cada nutriente en este suelo.",
  },
};
