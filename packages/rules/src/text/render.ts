import { IntlMessageFormat } from "intl-messageformat";
import { en } from "./en/index.ts";
import { es } from "./es/index.ts";
import { type Language, LOCALES } from "./language.ts";
import type { Message, Param } from "./message.ts";
import { formatMeasure, type UnitSystem } from "./units.ts";

/** Who reads. */
export interface Reader {
  language: Language;
  units: UnitSystem;
  /** Names of beds, plantings and treatments by id. Left out where no names may stand, as in the ledger. */
  bedNames?: ReadonlyMap<string, string>;
}

const catalogues: Record<Language, Record<string, string>> = { en, es };
/** Made once: making a format costs a hundred times what using one does. */
const dayFormatOf = (language: Language) =>
  new Intl.DateTimeFormat(LOCALES[language], { day: "numeric", month: "long", timeZone: "UTC" });
const dayFormats: Record<Language, Intl.DateTimeFormat> = { en: dayFormatOf("en"), es: dayFormatOf("es") };
const listFormats: Record<Language, Intl.ListFormat> = {
  en: new Intl.ListFormat(LOCALES.en, { type: "conjunction" }),
  es: new Intl.ListFormat(LOCALES.es, { type: "conjunction" }),
};
const compiled = new Map<string, IntlMessageFormat>();

/** Says a message in the reader's language and units. An unknown key is a fault of ours and throws. */
export function render(message: Message, reader: Reader): string {
  const values: Record<string, string | number> = {};
  for (const [name, param] of Object.entries(message.params)) values[name] = renderParam(param, reader);
  return formatOf(message.key, reader).format(values) as string;
}

/** Says a catalogue word. */
export const renderWord = (key: string, reader: Reader): string => formatOf(key, reader).format() as string;

function renderParam(param: Param, reader: Reader): string | number {
  if (typeof param === "string" || typeof param === "number") return param;
  if ("bed" in param) return reader.bedNames?.get(param.bed) ?? String(param.nth);
  if ("planting" in param) return reader.bedNames?.get(param.planting) ?? String(param.nth);
  if ("treatment" in param) return reader.bedNames?.get(param.treatment) ?? String(param.nth);
  if ("word" in param) return renderWord(param.word, reader);
  if ("words" in param)
    return listFormats[reader.language].format(param.words.map((key) => renderWord(key, reader)));
  if ("day" in param) {
    return dayFormats[reader.language].format(new Date(`${param.day}T00:00:00Z`));
  }
  return formatMeasure(param, reader.units, reader.language);
}

function formatOf(key: string, reader: Reader): IntlMessageFormat {
  const id = `${reader.language}:${key}`;
  const known = compiled.get(id);
  if (known) return known;
  const text = catalogues[reader.language][key];
  if (text === undefined) throw new Error(`no text for "${key}" in ${reader.language}`);
  const format = new IntlMessageFormat(text, LOCALES[reader.language]);
  compiled.set(id, format);
  return format;
}
