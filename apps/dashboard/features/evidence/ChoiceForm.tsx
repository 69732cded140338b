"use client";

import { useActionState } from "react";
import { once } from "../forms/once.ts";

interface Props {
  action: (before: string | null, data: FormData) => Promise<string | null>;
  id: string;
  question: string;
  options: { id: string; says: string; mark: string | null }[];
  chosen: string;
  save: string;
  busy: string;
}

/** Which reading the office follows where sources conflict. */
export function ChoiceForm({ action, id, question, options, chosen, save, busy }: Props) {
  const [problem, send, running] = useActionState(action, null);
  return (
    <form action={send} onSubmit={once(running)} id={`choice-${id}`} className="flow">
      {problem && (
        <p className="refusal" role="alert">
          {problem}
        </p>
      )}
      <fieldset className="readings">
        <legend>{question}</legend>
        {options.map((option) => (
          <label key={option.id} className="reading">
            <input type="radio" name="option" value={option.id} defaultChecked={option.id === chosen} />
            <span>
              {option.says}
              {option.mark && <span className="faint"> {option.mark}</span>}
            </span>
          </label>
        ))}
      </fieldset>
      <button type="submit" className="quiet" aria-disabled={running}>
        {running ? busy : save}
      </button>
    </form>
  );
}
