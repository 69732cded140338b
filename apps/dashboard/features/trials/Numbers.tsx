"use client";

import type { PlotValue } from "@pith/contract";
import { useRouter } from "next/navigation";
import { type FormEvent, useState, useTransition } from "react";
import type { NumbersState } from "./actions.ts";

interface Plot {
  id: string;
  /** Plot and bed, as on the label. */
  name: string;
}

interface Props {
  plots: Plot[];
  responses: { id: string; label: string }[];
  values: PlotValue[];
  today: string;
  keep: (values: PlotValue[]) => Promise<NumbersState>;
  words: {
    value: string;
    why: string;
    there: string;
    reasons: { id: string; label: string }[];
    save: string;
    busy: string;
    nothing: string;
    notANumber: string;
    offline: string;
  };
}

const keyOf = (plotId: string, responseId: string) => `${plotId} ${responseId}`;

/**
 * Plots' numbers, one plot under the other, for a phone as for a desk. What was typed stays typed until it is kept: where
 * the signal fails, the same press sends it again.
 */
export function Numbers({ plots, responses, values, today, keep, words }: Props) {
  const router = useRouter();
  const [pending, start] = useTransition();
  const [state, setState] = useState<NumbersState>({ saved: null, problem: null });
  const [wrong, setWrong] = useState<ReadonlySet<string>>(new Set());
  const known = new Map(values.map((v) => [keyOf(v.plotId, v.responseId), v]));

  function send(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    const data = new FormData(event.currentTarget);
    const bad = new Set<string>();
    const changed: PlotValue[] = [];
    for (const { id: plotId } of plots) {
      for (const { id: responseId } of responses) {
        const key = keyOf(plotId, responseId);
        const typed = String(data.get(key) ?? "").trim();
        const value = typed === "" ? null : Number(typed.replace(",", "."));
        const reason = String(data.get(`${key} why`) ?? "");
        const missing = (reason === "" ? null : reason) as PlotValue["missing"];
        const before = known.get(key);
        if (value !== null && (!Number.isFinite(value) || missing !== null)) bad.add(key);
        if (value === (before?.value ?? null) && missing === (before?.missing ?? null)) continue;
        changed.push({ plotId, responseId, on: before?.on ?? today, value, missing });
      }
    }
    setWrong(bad);
    if (bad.size > 0) return setState({ saved: null, problem: words.notANumber });
    if (changed.length === 0) return setState({ saved: words.nothing, problem: null });
    start(async () => {
      try {
        const next = await keep(changed);
        setState(next);
        if (next.saved) router.refresh();
      } catch {
        setState({ saved: null, problem: words.offline });
      }
    });
  }

  return (
    <form onSubmit={send} className="trial-numbers flow" noValidate>
      <ol className="listing">
        {plots.map((plot) => (
          <li key={plot.id}>
            <p className="listing-head">{plot.name}</p>
            {responses.map((response) => {
              const key = keyOf(plot.id, response.id);
              const before = known.get(key);
              return (
                <div key={response.id} className="trial-number-row">
                  <label>
                    <span>{response.label}</span>
                    <input
                      name={key}
                      type="text"
                      inputMode="decimal"
                      autoComplete="off"
                      defaultValue={before?.value ?? ""}
                      aria-invalid={wrong.has(key)}
                      aria-label={`${plot.name}: ${response.label}`}
                    />
                  </label>
                  <label>
                    <span>{words.why}</span>
                    <select
                      name={`${key} why`}
                      defaultValue={before?.missing ?? ""}
                      aria-label={`${plot.name}: ${response.label}, ${words.why}`}
                    >
                      <option value="">{words.there}</option>
                      {words.reasons.map(({ id, label }) => (
                        <option key={id} value={id}>
                          {label}
                        </option>
                      ))}
                    </select>
                  </label>
                </div>
              );
            })}
          </li>
        ))}
      </ol>
      <div aria-live="polite">
        {state.problem && <p className="refusal">{state.problem}</p>}
        {state.saved && <p className="notice">{state.saved}</p>}
      </div>
      <p className="form-end">
        <button type="submit" className="press" aria-disabled={pending}>
          {pending ? words.busy : words.save}
        </button>
      </p>
    </form>
  );
}
