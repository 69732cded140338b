import { coldTonight } from "../cold-tonight.ts";
import { feeding } from "../feeding.ts";
import { lime } from "../lime.ts";
import { lookCloser } from "../look-closer.ts";
import { material } from "../material.ts";
import { nightHeat } from "../night-heat.ts";
import { rotation } from "../rotation.ts";
import { soilReading } from "../soil-reading.ts";
import { stage } from "../stage.ts";
import { trial } from "../trial.ts";

type Book = Record<string, string>;

/** The words of one place of a rule's text, by their code alone. */
const of = (book: Book, place: string): Book =>
  Object.fromEntries(
    Object.entries(book)
      .filter(([key]) => key.startsWith(place))
      .map(([key, text]) => [key.slice(place.length), text]),
  );

const lowered = (book: Book): Book =>
  Object.fromEntries(
    Object.entries(book).map(([key, text]) => [key, text.charAt(0).toLowerCase() + text.slice(1)]),
  );

/** How a sum of points names what it counts. */
const SIGNS = {
  sign: "señal",
  part: "parte",
  pattern: "lugar",
  speed: "rapidez",
  weather: "tiempo",
  clue: "registros",
  history: "antes",
};

/** Codes that the rules' own text says already: a working names them the same. */
export const borrowed: Book = {
  ...of(material, "material."),
  ...of(nightHeat, "night-heat.fuel."),
  ...of(coldTonight, "cold-tonight.phase."),
  ...of(coldTonight, "cold-tonight.cover."),
  ...of(stage, "stage.name."),
  ...of(trial, "trial.what."),
  ...of(rotation, "rotation.crop."),
  ...lowered(of(rotation, "rotation.disease.")),
  ...lowered(of(feeding, "feeding.tested.")),
  ...of(soilReading, "soil-reading.extractant."),
  ...of(soilReading, "soil-reading.extraction."),
  ...of(soilReading, "soil-reading.ph-band."),
  ...of(soilReading, "soil-reading.class."),
  ...of(lime, "lime.method."),
  ...of(lookCloser, "look-closer.sign."),
  ...Object.fromEntries(
    Object.entries(SIGNS).flatMap(([en, es]) =>
      Object.entries(of(lookCloser, `look-closer.${en}.`)).map(([code, text]) => [
        `${en} ${code}`,
        `${es} ${text}`,
      ]),
    ),
  ),
};
