import { besideEachOther, wordsOf } from "../en/readings.ts";
import { citeWords } from "./evidence/cites.ts";
import { settingDepth } from "./evidence/setting-depth.ts";
import { topping } from "./evidence/topping.ts";

const WORDS = { ...settingDepth, ...topping };

const besideInSpanish = besideEachOther.flatMap((claim) =>
  wordsOf({ ...claim, ...WORDS[claim.id] }).map(([key, text]) => [
    key,
    key.endsWith(".from") ? citeWords(text) : text,
  ]),
);

/** Claims that an answer sets side by side, in Spanish. */
export const readings: Record<string, string> = {
  ...Object.fromEntries(besideInSpanish),
  "reading.title": "Lo que está publicado, y lo que hace el oficio",
  "reading.column.side": "Lectura",
  "reading.column.finding": "Lo que dice",
  "reading.column.from": "De dónde",
  "reading.column.design": "Cómo se halló, y cuánto hay",
  "reading.column.effect": "Qué tan grande",
  "reading.column.limits": "Dónde no vale",
  "reading.side.practice": "Oficio ({grade})",
  "reading.side.practice-in-force": "Oficio ({grade}), se sigue aquí",
  "reading.side.published": "Publicado ({grade})",
  "reading.side.published-in-force": "Publicado ({grade}), se sigue aquí",
  "reading.side.gap": "Ningún estudio hallado",
  "reading.from.gap": "Se buscó, y no se halló ninguno.",
  "reading.effect.none": "No se dice.",
  "reading.grade.strong": "fuerte",
  "reading.grade.moderate": "moderado",
  "reading.grade.weak": "débil",
  "reading.grade.practice": "práctica",
};
