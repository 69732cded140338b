import { type FormEvent, useState } from "react";
import { Field } from "../forms/Form.tsx";
import type { FieldView, FormState } from "../forms/plan.ts";
import type { FieldMaker, GuideChoices, GuideFormWords } from "./fields.ts";
import { className, type NutrientRow, nutrientName } from "./typed.ts";

interface Props {
  row: NutrientRow;
  /** Its place in the form, from 1. */
  number: number;
  choices: GuideChoices;
  field: FieldMaker;
  state: FormState;
  words: GuideFormWords;
  addClass: () => void;
  removeClass: (place: number) => void;
  /** Null where it is the only one. */
  remove: (() => void) | null;
}

/** One nutrient of a guide: its extractant, its classes from the lowest upwards, and their rates where it has them. */
export function NutrientFields({
  row,
  number,
  choices,
  field,
  state,
  words,
  addClass,
  removeClass,
  remove,
}: Props) {
  const [rated, setRated] = useState(false);
  const show = (name: string, key: string, kind: FieldView["kind"], more?: Partial<FieldView>) => (
    <Field field={field(name, key, kind, more)} state={state} optional={words.optional} />
  );
  const onChange = ({ target }: FormEvent<HTMLFieldSetElement>) => {
    if (target instanceof HTMLSelectElement && target.name === nutrientName(row.key, "rates")) {
      setRated(target.value !== "");
    }
  };
  return (
    <fieldset className="form-section" onChange={onChange}>
      <legend>{words.title.nutrient.replace("$number", String(number))}</legend>
      <div className="guide-fields">
        {show(nutrientName(row.key, "nutrient"), "nutrient", "choice", { choices: choices.nutrient })}
        {show(nutrientName(row.key, "extractant"), "extractant", "choice", { choices: choices.extractant })}
        {show(nutrientName(row.key, "decimals"), "decimals", "choice", { choices: choices.decimals })}
        {show(nutrientName(row.key, "rates"), "rates", "choice", { choices: choices.rates })}
      </div>
      {row.classes.map((place, i) => {
        const named = (part: string) => className(row.key, place, part);
        const isTop = i === row.classes.length - 1;
        return (
          <fieldset key={place} className="guide-class guide-fields">
            <legend>{words.title.class.replace("$number", String(i + 1))}</legend>
            {show(named("class"), "class", "choice", { choices: choices.class })}
            {show(named("low"), "low", "number", { value: i === 0 ? "0" : "" })}
            {show(named("high"), isTop ? "highOpen" : "high", "number")}
            {show(named("response"), "response", "choice", { choices: choices.response })}
            {rated && (
              <>
                {show(named("rate.low"), "rateLow", "number", { required: false })}
                {show(named("rate.high"), "rateHigh", "number", { required: false })}
              </>
            )}
            {row.classes.length > 2 && (
              <button type="button" className="quiet" onClick={() => removeClass(place)}>
                {words.removeClass}
                <span className="unseen">: {words.title.class.replace("$number", String(i + 1))}</span>
              </button>
            )}
          </fieldset>
        );
      })}
      <p className="actions">
        <button id={`add-class-${row.key}`} type="button" className="quiet" onClick={addClass}>
          {words.addClass}
        </button>
        {remove && (
          <button type="button" className="quiet" onClick={remove}>
            {words.removeNutrient}
            <span className="unseen">: {words.title.nutrient.replace("$number", String(number))}</span>
          </button>
        )}
      </p>
    </fieldset>
  );
}
