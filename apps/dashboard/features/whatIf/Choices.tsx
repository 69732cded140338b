import { type Reader, render, say, type WhatIf } from "@pith/rules";
import type { ChoiceName, Starting } from "@pith/rules/what-if";
import { useTranslations } from "next-intl";
import { longDayText } from "../../format/dates.ts";
import { localeOf } from "../../format/language.ts";
import { inText } from "../../format/units.ts";
import type { Slider } from "./sliders.ts";

interface Props {
  sliders: Slider[];
  starting: Starting;
  choices: WhatIf;
  reader: Reader;
  onChange: (choices: WhatIf) => void;
}

/** A handle for each choice, its value in words, and the way back to how it is. */
export function Choices({ sliders, starting, choices, reader, onChange }: Props) {
  const t = useTranslations("whatIf");
  const textOf = useValueText(reader);
  const barred = (Object.keys(starting) as ChoiceName[]).filter((name) => starting[name].not !== null);
  return (
    <>
      {sliders.map(({ name, values, start }) => {
        const value = choices[name] ?? start;
        const moved = choices[name] !== undefined && choices[name] !== start;
        return (
          <div key={name} className={moved ? "choice moved" : "choice"}>
            <label htmlFor={name}>{t(`names.${name}`)}</label>
            <span className="choice-value">{textOf(name, value)}</span>
            <input
              id={name}
              type="range"
              min={0}
              max={values.length - 1}
              value={value === null ? 0 : values.indexOf(value)}
              aria-valuetext={textOf(name, value)}
              onChange={(event) => onChange({ ...choices, [name]: values[event.target.valueAsNumber] })}
            />
            <p className="faint">
              {t("asItIs", { value: textOf(name, start) })}
              {moved && (
                <button
                  type="button"
                  className="plainly"
                  onClick={() => onChange({ ...choices, [name]: undefined })}
                  aria-label={t("backOf", { name: t(`names.${name}`) })}
                >
                  {t("back")}
                </button>
              )}
            </p>
          </div>
        );
      })}
      {barred.length > 0 && (
        <dl className="choice-not">
          {barred.map((name) => {
            const { not } = starting[name];
            return (
              <div key={name}>
                <dt>{t(`names.${name}`)}</dt>
                <dd>{not && render(not, reader)}</dd>
              </div>
            );
          })}
        </dl>
      )}
    </>
  );
}

/** A choice's value as people say it. */
function useValueText(reader: Reader) {
  const t = useTranslations("whatIf");
  const units = {
    k2oKgPerHa: "kg/ha",
    ashGPerM2: "g/m2",
    buriedStemCm: "cm",
    withheldPct: "pct",
  } as const;
  return (name: ChoiceName, value: string | number | null): string => {
    if (value === null) return t("notSaid");
    if (name === "setOutOn") return longDayText(String(value), localeOf(reader.language));
    if (name === "cover") return render(say(`what-if.cover.${value}`), reader);
    if (name === "topped") return t(`tips.${value as "none"}`);
    return value === 0 ? t("none") : inText(Number(value), units[name], reader.units, reader.language);
  };
}
