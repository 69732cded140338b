"use client";

import Link from "next/link";
import { useRouter } from "next/navigation";
import { type FormEvent, useEffect, useRef, useState, useTransition } from "react";
import { Field } from "../forms/Form.tsx";
import type { FieldView, FormState } from "../forms/plan.ts";
import type { Added } from "./actions.ts";
import type { FieldMaker, GuideChoices, GuideFormWords } from "./fields.ts";
import { NutrientFields } from "./NutrientFields.tsx";
import { className, type NutrientRow, nutrientName, typedGuide } from "./typed.ts";

interface Props {
  add: (raw: Record<string, unknown>) => Promise<Added>;
  choices: GuideChoices;
  words: GuideFormWords;
}

/** A guide typed row by row. The fields keep what was typed until the guide is kept. */
export function GuideForm({ add, choices, words }: Props) {
  const router = useRouter();
  const [state, setState] = useState<FormState>({ attempt: 0, message: null, problems: {}, typed: null });
  const [rows, setRows] = useState<NutrientRow[]>([{ key: 0, classes: [0, 1] }]);
  const [busy, work] = useTransition();
  const form = useRef<HTMLFormElement>(null);
  /** Keys are never used again, so that a new row does not inherit what stood in one that was removed. */
  const lastKey = useRef(1);
  /** A new object each time, so that the same place can be asked for twice. */
  const [focusOn, setFocusOn] = useState<{ id: string } | null>(null);

  useEffect(() => {
    if (state.attempt === 0) return;
    const bad = form.current?.querySelector<HTMLElement>("[aria-invalid=true]");
    (bad ?? form.current?.querySelector<HTMLElement>("[role=alert]"))?.focus();
  }, [state]);
  useEffect(() => {
    if (focusOn) document.getElementById(focusOn.id)?.focus();
  }, [focusOn]);

  const refuse = (message: string | null, problems: Record<string, string>) =>
    setState(({ attempt }) => ({ attempt: attempt + 1, message, problems, typed: null }));

  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    if (busy) return;
    const data = new FormData(event.currentTarget);
    const { raw, controlOf, unreadable, twice } = typedGuide(data, rows);
    const wrong = Object.fromEntries([
      ...Object.entries(unreadable).map(([name, typed]) => [name, words.notANumber.replace("$typed", typed)]),
      ...twice.map((name) => [name, words.twice]),
    ]);
    if (Object.keys(wrong).length > 0) return refuse(words.seeFields, wrong);
    work(async () => {
      const added = await add(raw).catch(() => ({ message: words.unreachable, faults: [] }));
      if ("page" in added) return router.push(added.page);
      const problems: Record<string, string> = {};
      const loose: string[] = [];
      for (const { field, text, where } of added.faults) {
        const name = controlOf(field);
        if (name === null) loose.push(`${where}: ${text}`);
        else problems[name] ??= String(data.get(name) ?? "").trim() === "" ? words.needed : text;
      }
      refuse([added.message, ...loose].join(" "), problems);
    });
  };

  const field: FieldMaker = (name, key, kind, more) => ({
    name,
    label: words.label[key] ?? key,
    kind,
    unit: null,
    hint: words.hint[key] ?? null,
    required: true,
    value: "",
    choices: [],
    ...more,
  });
  const show = (name: string, key: string, kind: FieldView["kind"], more?: Partial<FieldView>) => (
    <Field field={field(name, key, kind, more)} state={state} optional={words.optional} />
  );
  const change = (key: number, classes: (before: number[]) => number[]) =>
    setRows((before) =>
      before.map((row) => (row.key === key ? { ...row, classes: classes(row.classes) } : row)),
    );
  const optional = { required: false };

  return (
    <form ref={form} className="form guide-form" onSubmit={submit} noValidate>
      {state.message && (
        <p className="refusal" role="alert" tabIndex={-1}>
          {state.message}
        </p>
      )}
      <fieldset className="form-section">
        <legend>{words.title.about}</legend>
        {show("title", "title", "text")}
        {show("region", "region", "text")}
        {show("locator", "locator", "long")}
        {show("unit", "unit", "choice", { choices: choices.unit })}
        {show("medium", "medium", "choice", { choices: choices.medium })}
        {show("note", "note", "long", optional)}
      </fieldset>
      {rows.map((row, place) => (
        <NutrientFields
          key={row.key}
          row={row}
          number={place + 1}
          choices={choices}
          field={field}
          state={state}
          words={words}
          addClass={() => {
            lastKey.current += 1;
            const added = lastKey.current;
            change(row.key, (classes) => [...classes, added]);
            setFocusOn({ id: `f-${className(row.key, added, "class")}` });
          }}
          removeClass={(gone) => {
            change(row.key, (classes) => classes.filter((one) => one !== gone));
            setFocusOn({ id: `add-class-${row.key}` });
          }}
          remove={
            rows.length > 1
              ? () => {
                  setRows((before) => before.filter((one) => one.key !== row.key));
                  setFocusOn({ id: "add-nutrient" });
                }
              : null
          }
        />
      ))}
      <p>
        <button
          id="add-nutrient"
          type="button"
          className="quiet"
          onClick={() => {
            const key = lastKey.current + 1;
            lastKey.current += 3;
            setRows((before) => [...before, { key, classes: [key + 1, key + 2] }]);
            setFocusOn({ id: `f-${nutrientName(key, "nutrient")}` });
          }}
        >
          {words.addNutrient}
        </button>
      </p>
      <fieldset className="form-section">
        <legend>{words.title.recommendations}</legend>
        {show("crop", "crop", "text", optional)}
        {show("rateUnit", "rateUnit", "choice", { choices: choices.rateUnit })}
        <div className="form-row">
          {show("nitrogen.low", "nitrogenLow", "number", optional)}
          {show("nitrogen.high", "nitrogenHigh", "number", optional)}
        </div>
        <div className="form-row">
          {show("targetPh.low", "targetPhLow", "number", optional)}
          {show("targetPh.high", "targetPhHigh", "number", optional)}
        </div>
      </fieldset>
      <p className="form-end">
        <button type="submit" className="press" aria-disabled={busy}>
          {busy ? words.busy : words.save}
        </button>
        <Link href="/guides">{words.cancel}</Link>
      </p>
    </form>
  );
}
