import type { PlanBlock } from "@pith/contract";
import { type FormEvent, useEffect, useRef, useState } from "react";
import { type FormUnit, inField, toSi, unitLabel } from "../../format/units.ts";
import { Line, numberIn } from "./Fields.tsx";
import type { View } from "./view.ts";
import { fill } from "./words.ts";

interface Choice {
  value: string;
  label: string;
}

export interface BlockChoices {
  species: Choice[];
  marketType: Choice[];
}

interface Props {
  /** What it is now; nothing for a new one. */
  block: PlanBlock | null;
  choices: BlockChoices;
  varieties: string[];
  view: View;
  onDone: (block: PlanBlock) => void;
  onClose: () => void;
}

const NUMBERS: Record<"plants" | "rows" | "plantSpacingM" | "heightCm", [number, number, FormUnit?]> = {
  plants: [1, 1_000_000],
  rows: [1, 40],
  plantSpacingM: [0.05, 3, "m"],
  heightCm: [10, 300, "cm"],
};
type Numbered = keyof typeof NUMBERS;
const WHOLE = new Set<Numbered>(["plants", "rows"]);

/** What a block is: its variety, how many plants, how they stand and what they ask for. */
export function BlockForm({ block, choices, varieties, view, onDone, onClose }: Props) {
  const { words, units } = view;
  const [problems, setProblems] = useState<Record<string, string>>({});
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => form.current?.querySelector("input")?.focus(), []);
  // The spacing is read in centimetres or inches: nobody measures it in metres.
  const shown = (name: Numbered, value: number) =>
    name === "plantSpacingM" ? inField(value * 100, "cm", units) : inField(value, NUMBERS[name][2], units);
  const read = (name: Numbered, typed: number) =>
    name === "plantSpacingM" ? toSi(typed, "cm", units) / 100 : toSi(typed, NUMBERS[name][2], units);

  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const data = new FormData(event.currentTarget);
    const text = (name: string) => String(data.get(name) ?? "").trim();
    const wrong: Record<string, string> = {};
    const number = (name: Numbered): number | null => {
      if (name === "heightCm" && text(name) === "") return null;
      const [low, high] = NUMBERS[name];
      const typed = numberIn(text(name), Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY);
      const value = typed === undefined ? undefined : Math.round(read(name, typed) * 1e4) / 1e4;
      if (value === undefined || value < low || value > high || (WHOLE.has(name) && !Number.isInteger(value)))
        wrong[name] = fill(words.outOfRange, { low: shown(name, low), high: shown(name, high) });
      return value ?? null;
    };
    const numbers = {
      plants: number("plants") as number,
      rows: number("rows") as number,
      plantSpacingM: number("plantSpacingM") as number,
      heightCm: number("heightCm"),
    };
    const varietyName = text("varietyName");
    if (varietyName === "") wrong.varietyName = words.needed;
    setProblems(wrong);
    const first = Object.keys(wrong)[0];
    if (first) return form.current?.querySelector<HTMLElement>(`[name=${first}]`)?.focus();
    onDone({
      id: block?.id ?? crypto.randomUUID(),
      plantingId: block?.plantingId ?? null,
      pungent: block?.pungent ?? null,
      pinned: block?.pinned ?? false,
      at: block?.at ?? null,
      varietyName,
      species: text("species") as PlanBlock["species"],
      marketType: text("marketType") as PlanBlock["marketType"],
      ...numbers,
      water: text("water") as PlanBlock["water"],
      saveSeed: data.get("saveSeed") === "yes",
      firstPickOn: text("firstPickOn") || null,
    });
  };

  const field = (name: Numbered, otherwise: number | null) => {
    const value = block?.[name] ?? otherwise;
    const unit = name === "plantSpacingM" ? "cm" : NUMBERS[name][2];
    return (
      <Line
        id={`block-${name}`}
        label={words.fields[name]}
        {...(unit ? { unit: unitLabel(unit, units, view.reader.language) } : {})}
        {...(name === "heightCm" ? { optional: words.fields.optional } : {})}
        problem={problems[name]}
      >
        {(common) => (
          <input
            {...common}
            name={name}
            inputMode={WHOLE.has(name) ? "numeric" : "decimal"}
            defaultValue={value === null ? "" : shown(name, value)}
          />
        )}
      </Line>
    );
  };
  const choice = (name: "species" | "marketType" | "water", options: Choice[]) => (
    <Line id={`block-${name}`} label={words.fields[name]}>
      {(common) => (
        <select {...common} name={name} defaultValue={block?.[name]}>
          {options.map(({ value, label }) => (
            <option key={value} value={value}>
              {label}
            </option>
          ))}
        </select>
      )}
    </Line>
  );

  return (
    <form ref={form} onSubmit={submit} className="form plan-block-form" noValidate>
      <Line id="block-varietyName" label={words.fields.varietyName} problem={problems.varietyName}>
        {(common) => (
          <input
            {...common}
            name="varietyName"
            list="plan-varieties"
            maxLength={80}
            defaultValue={block?.varietyName}
          />
        )}
      </Line>
      <datalist id="plan-varieties">
        {varieties.map((name) => (
          <option key={name} value={name} />
        ))}
      </datalist>
      {choice("species", choices.species)}
      {choice("marketType", choices.marketType)}
      {field("plants", null)}
      {field("rows", 2)}
      {field("plantSpacingM", 0.45)}
      {field("heightCm", null)}
      {choice("water", [
        { value: "full", label: words.waters.full },
        { value: "deficit", label: words.waters.deficit },
      ])}
      <Line id="block-firstPickOn" label={words.fields.firstPickOn} optional={words.fields.optional}>
        {(common) => (
          <input {...common} type="date" name="firstPickOn" defaultValue={block?.firstPickOn ?? ""} />
        )}
      </Line>
      <div className="field field-flag">
        <label htmlFor="block-saveSeed">{words.fields.saveSeed}</label>
        <input
          id="block-saveSeed"
          type="checkbox"
          name="saveSeed"
          value="yes"
          defaultChecked={block?.saveSeed ?? false}
        />
      </div>
      <p className="form-end">
        <button type="submit" className="press">
          {block ? words.changeDo : words.addDo}
        </button>
        <button type="button" className="quiet" onClick={onClose}>
          {words.close}
        </button>
      </p>
    </form>
  );
}
