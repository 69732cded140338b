"use client";

import Link from "next/link";
import { type ReactNode, useEffect, useRef, useState } from "react";
import type { Offline } from "../offline/keeping.ts";
import { useKeeping } from "../offline/useKeeping.ts";
import { once } from "./once.ts";
import type { FieldView, FormState, SectionView } from "./plan.ts";
import { useStartNow } from "./useStartNow.ts";

interface Props {
  action: (before: FormState, data: FormData) => Promise<FormState>;
  sections: SectionView[];
  submit: string;
  cancel?: { href: string; label: string };
  words: { optional: string; remove: string; busy: string; kept: string };
  /** What is written where there is no signal is kept and sent later. */
  offline?: Offline;
  children?: ReactNode;
  /** What outlives an attempt, as photographs do. */
  photos?: ReactNode;
}

/** Every form of the dashboard that asks for fields: the plan's sections, problems beside their field, nothing typed twice. */
export function Form({ action, sections, submit, cancel, words, offline, children, photos }: Props) {
  const [state, send, busy] = useKeeping(action, offline);
  const form = useRef<HTMLFormElement>(null);
  useStartNow(
    form,
    sections.flatMap(({ fields }) => fields),
  );
  useEffect(() => {
    if (state.attempt === 0) return;
    const bad = form.current?.querySelector<HTMLElement>("[aria-invalid=true]");
    (bad ?? form.current?.querySelector<HTMLElement>("[role=alert]"))?.focus();
  }, [state]);

  return (
    <form ref={form} action={send} onSubmit={once(busy)} className="form" noValidate>
      {state.message && (
        <p className="refusal" role="alert" tabIndex={-1}>
          {state.message}
        </p>
      )}
      {state.kept && <p role="status">{words.kept}</p>}
      {/* A new attempt mounts the fields again, so that each starts from what was typed. */}
      <div key={state.attempt}>
        {sections.map((section, index) => (
          <fieldset key={section.title ?? index} className="form-section">
            {section.title && <legend>{section.title}</legend>}
            {section.fields.map((field) => (
              <Field key={field.name} field={field} state={state} optional={words.optional} />
            ))}
            {section.each && <Rows each={section.each} state={state} words={words} />}
          </fieldset>
        ))}
        {children}
      </div>
      {photos}
      <p className="form-end">
        <button type="submit" className="press" aria-disabled={busy}>
          {busy ? words.busy : submit}
        </button>
        {cancel && <Link href={cancel.href}>{cancel.label}</Link>}
      </p>
    </form>
  );
}

/** Rows that are alike, to add to and to take from. */
export function Rows({
  each,
  state,
  words,
}: {
  each: NonNullable<SectionView["each"]>;
  state: FormState;
  words: Props["words"];
}) {
  const typedRows = state.typed ? rowsTyped(state.typed, each.path) : each.rows.map((_, index) => index);
  const [rows, setRows] = useState(typedRows);
  const next = Math.max(-1, ...rows) + 1;
  return (
    <>
      {rows.map((row) => (
        <div key={row} className="form-row">
          {(each.rows[row] ?? each.template).map((field) => {
            const name = field.name.replace(/\.\d+\./, `.${row}.`);
            return <Field key={name} field={{ ...field, name }} state={state} optional={words.optional} />;
          })}
          <button type="button" className="quiet" onClick={() => setRows(rows.filter((r) => r !== row))}>
            {words.remove}
          </button>
        </div>
      ))}
      <p>
        <button type="button" className="quiet" onClick={() => setRows([...rows, next])}>
          {each.add}
        </button>
      </p>
    </>
  );
}

const rowsTyped = (typed: Record<string, string>, path: string) => [
  ...new Set(
    Object.keys(typed)
      .filter((name) => name.startsWith(`${path}.`))
      .map((name) => Number(name.slice(path.length + 1).split(".")[0])),
  ),
];

export function Field({ field, state, optional }: { field: FieldView; state: FormState; optional: string }) {
  const problem = state.problems[field.name];
  const id = field.id ?? `f-${field.name}`;
  const described = [field.unit && `${id}-unit`, field.hint && `${id}-hint`, problem && `${id}-problem`]
    .filter(Boolean)
    .join(" ");
  const common = {
    id,
    name: field.name,
    "aria-invalid": problem ? true : undefined,
    "aria-describedby": described || undefined,
  };
  const value = state.typed ? (state.typed[field.name] ?? "") : field.value;
  return (
    <div className={`field field-${field.kind}`}>
      <label htmlFor={id}>
        {field.label}
        {!field.required && field.kind !== "flag" && <span className="optional"> {optional}</span>}
      </label>
      <div className="field-line">
        <Control field={field} common={common} value={value} />
        {field.unit && (
          <span id={`${id}-unit`} className="unit">
            {field.unit}
          </span>
        )}
      </div>
      {field.hint && (
        <p id={`${id}-hint`} className="hint">
          {field.hint}
        </p>
      )}
      {problem && (
        <p id={`${id}-problem`} className="problem">
          {problem}
        </p>
      )}
    </div>
  );
}

function Control({ field, common, value }: { field: FieldView; common: object; value: string }) {
  switch (field.kind) {
    case "long":
      return <textarea {...common} defaultValue={value} rows={4} />;
    case "flag":
      return <input {...common} type="checkbox" value="yes" defaultChecked={value === "yes"} />;
    case "choice":
      return (
        <select {...common} defaultValue={value || field.choices[0]?.value}>
          {field.choices.map((choice) => (
            <option key={choice.value} value={choice.value}>
              {choice.label}
            </option>
          ))}
        </select>
      );
    case "number":
      return <input {...common} type="text" inputMode="decimal" autoComplete="off" defaultValue={value} />;
    case "moment":
      return <input {...common} type="datetime-local" defaultValue={value} />;
    default:
      return <input {...common} type={field.kind} defaultValue={value} />;
  }
}
