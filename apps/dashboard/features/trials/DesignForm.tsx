"use client";

import { type FormEvent, startTransition, useActionState, useState } from "react";
import { type DesignState, RESPONSES, undesigned } from "./design.ts";

interface Choice {
  value: string;
  label: string;
}

interface Props {
  action: (before: DesignState, data: FormData) => Promise<DesignState>;
  designs: (Choice & { help: string })[];
  kinds: Choice[];
  better: Choice[];
  beds: Choice[];
  words: Record<string, string>;
}

/** What is compared, on which beds, how often, and what is measured. */
export function DesignForm({ action, designs, kinds, better, beds, words: w }: Props) {
  const [state, send, busy] = useActionState(action, undesigned);
  const [design, setDesign] = useState(designs[1]?.value ?? "");
  // What was typed must outlive a refusal, so the form is sent by hand and not reset.
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const { submitter } = event.nativeEvent as SubmitEvent;
    const data = new FormData(event.currentTarget, submitter);
    startTransition(() => send(data));
  };
  const problem = (name: string) =>
    state.problems[name] && (
      <span className="refusal small" id={`${name}-problem`}>
        {state.problems[name]}
      </span>
    );
  const described = (name: string) => ({
    id: `trial-${name}`,
    "aria-invalid": name in state.problems,
    "aria-describedby": name in state.problems ? `${name}-problem` : undefined,
  });
  const field = (name: string, label: string | undefined, rest: Record<string, unknown> = {}) => (
    <div className="trial-field">
      <label htmlFor={`trial-${name}`}>{label}</label>
      <input name={name} {...described(name)} autoComplete="off" {...rest} />
      {problem(name)}
    </div>
  );
  const long = (name: string, label: string | undefined) => (
    <div className="trial-field">
      <label htmlFor={`trial-${name}`}>{label}</label>
      <textarea name={name} rows={4} {...described(name)} />
      {problem(name)}
    </div>
  );
  const select = (name: string, label: string | undefined, options: Choice[]) => (
    <div className="trial-field">
      <label htmlFor={`trial-${name}`}>{label}</label>
      <select name={name} {...described(name)}>
        {options.map(({ value, label: said }) => (
          <option key={value} value={value}>
            {said}
          </option>
        ))}
      </select>
      {problem(name)}
    </div>
  );
  return (
    <form onSubmit={submit} className="form trial-design" noValidate>
      {state.message && (
        <p className="refusal" role="alert">
          {state.message}
        </p>
      )}
      <fieldset className="form-section">
        <legend>{w.what}</legend>
        {field("name", w.name)}
        <div className="trial-field">
          <label htmlFor="trial-design">{w.design}</label>
          <select
            name="design"
            {...described("design")}
            value={design}
            onChange={(event) => setDesign(event.target.value)}
          >
            {designs.map(({ value, label }) => (
              <option key={value} value={value}>
                {label}
              </option>
            ))}
          </select>
          <span className="faint small">{designs.find((d) => d.value === design)?.help}</span>
          {problem("design")}
        </div>
        {field("factor1", w.factor)}
        {long("levels1", w.levels)}
        {design === "factorial-blocks" && (
          <>
            {field("factor2", w.factor2)}
            {long("levels2", w.levels2)}
          </>
        )}
      </fieldset>
      <fieldset className="form-section">
        <legend>{w.measured}</legend>
        {RESPONSES.map((row) => (
          <div key={row} className="form-row">
            {field(`${row}.name`, row === RESPONSES[0] ? w.response : w.responseMore)}
            {field(`${row}.unit`, w.unit)}
            {select(`${row}.kind`, w.kind, kinds)}
            {select(`${row}.better`, w.better, better)}
          </div>
        ))}
      </fieldset>
      <fieldset className="form-section">
        <legend>{w.where}</legend>
        <div className="trial-field">
          <span>{w.beds}</span>
          {beds.map(({ value, label }) => (
            <label key={value} className="reading">
              <input type="checkbox" name="bedIds" value={value} />
              <span>{label}</span>
            </label>
          ))}
          {problem("bedIds")}
        </div>
        {field("plotLengthM", w.plotLength, { inputMode: "decimal", defaultValue: "3" })}
        {field("gapM", w.gap, { inputMode: "decimal", defaultValue: "0.5" })}
        {field("blocks", w.blocks, { inputMode: "numeric", defaultValue: "4" })}
      </fieldset>
      <fieldset className="form-section">
        <legend>{w.howMany}</legend>
        <p className="faint small">{w.howManyHelp}</p>
        {field("cv", w.cv, { inputMode: "decimal", defaultValue: "15" })}
        {field("differencePct", w.difference, { inputMode: "decimal", defaultValue: "20" })}
        <button type="submit" name="ask" value="blocks" className="quiet">
          {w.ask}
        </button>
        <p aria-live="polite">{state.blocksSaid}</p>
      </fieldset>
      <p className="form-end">
        <button type="submit" className="press" aria-disabled={busy}>
          {busy ? w.busy : w.save}
        </button>
      </p>
    </form>
  );
}
