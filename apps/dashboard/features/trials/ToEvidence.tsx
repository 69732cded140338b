"use client";

import { useActionState } from "react";
import { once } from "../forms/once.ts";

interface Props {
  action: (before: string | null, data: FormData) => Promise<string | null>;
  rules: { id: string; label: string }[];
  words: { about: string; put: string; busy: string };
}

/** Puts a trial's result among the office's own evidence, beside the rule it speaks about. */
export function ToEvidence({ action, rules, words }: Props) {
  const [problem, send, busy] = useActionState(action, null);
  return (
    <form action={send} onSubmit={once(busy)} className="flow no-print">
      {problem && (
        <p className="refusal" role="alert">
          {problem}
        </p>
      )}
      <label className="trial-field">
        <span>{words.about}</span>
        <select name="rule">
          {rules.map(({ id, label }) => (
            <option key={id} value={id}>
              {label}
            </option>
          ))}
        </select>
      </label>
      <button type="submit" className="quiet" aria-disabled={busy}>
        {busy ? words.busy : words.put}
      </button>
    </form>
  );
}
