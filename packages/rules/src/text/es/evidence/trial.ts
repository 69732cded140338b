import type { ClaimWords } from "../../../evidence/types.ts";

export const trial: Record<string, ClaimWords> = {
  "trial.by-lot": {
    finding:
      "Los tratamientos que se repiten, y se dan a las parcelas por sorteo, se pueden distinguir de las diferencias del terreno; lado a lado y sin repeticiones, no.",
    design: "Guía para investigación en finca; Fisher de memoria",
    size: null,
    effect: null,
    limits: "El sorteo protege del terreno, no de una parcela que a propósito se trata distinto.",
    wouldChange: "Nada que se conozca: se sigue de lo que es el azar.",
  },
  "trial.repeats": {
    finding:
      "De cuatro a seis bloques completos, o de seis a siete pares de franjas, se tienen por suficientes para la mayoría de las fincas.",
    design: "Dos guías para investigación en finca",
    size: null,
    effect: null,
    limits:
      "Cuántos hacen falta depende de la dispersión de las parcelas y de la diferencia que importa; calcúlelo.",
    wouldChange: "La dispersión de las parcelas en la propia finca.",
  },
  "trial.variance": {
    finding:
      "El análisis de varianza pone las diferencias de los tratamientos frente a las de parcelas tratadas igual, y da resultados certificados con datos certificados.",
    design: "Un método; once series de datos certificadas, Fisher de memoria",
    size: "once series de datos",
    effect: null,
    limits:
      "Vale para parcelas que varían igual y no se afectan unas a otras; las partes y los conteos chicos a menudo no lo hacen.",
    wouldChange: "Residuos que se abren en abanico o se curvan.",
  },
  "trial.all-pairs": {
    finding:
      "El método de Tukey cumple su promesa para todos los pares de promedios a la vez, y la cumple de sobra donde las parcelas son desiguales.",
    design: "Un método; la extensión de Kramer de memoria",
    size: null,
    effect: null,
    limits:
      "Pide parcelas que varíen igual en todos los tratamientos. Halla menos que una comparación planeada de antemano.",
    wouldChange: "Una sola comparación nombrada antes de que empezara el ensayo.",
  },
  "trial.missing": {
    finding:
      "Cuando faltan parcelas, el modelo se ajusta a las que están; con cada parcela se va un grado de libertad.",
    design: "Un método; Yates de memoria",
    size: null,
    effect: null,
    limits: "Vale solo donde lo que se perdió no se perdió por el tratamiento.",
    wouldChange: "Saber por qué falta cada parcela.",
  },
  "trial.one-season": {
    finding: "El mismo ensayo en el mismo terreno puede salir distinto al año siguiente.",
    design: "Guía para investigación en finca",
    size: null,
    effect: null,
    limits: "Cuánto, difiere según el cultivo, el lugar y lo que se compara.",
    wouldChange: "Repeticiones en varias temporadas y fincas.",
  },
};
