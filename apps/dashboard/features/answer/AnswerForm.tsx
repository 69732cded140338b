"use client";

import { useEffect, useRef, useState } from "react";
import { Field, Rows } from "../forms/Form.tsx";
import { once } from "../forms/once.ts";
import type { FieldView, FormState, SectionView } from "../forms/plan.ts";
import { useStartNow } from "../forms/useStartNow.ts";
import type { Offline } from "../offline/keeping.ts";
import { useKeeping } from "../offline/useKeeping.ts";

const KINDS = ["done", "not-done", "cannot"] as const;

interface Props {
  action: (before: FormState, data: FormData) => Promise<FormState>;
  fields: FieldView[];
  /** Materials that went with the first. */
  alongside: SectionView["each"];
  kind: string;
  reason: string;
  /** Ledger entry of the answer that stands on this page, empty for none: only that one is corrected. */
  seen: string;
  offline: Offline;
  words: Record<
    | "legend"
    | "done"
    | "doneHint"
    | "notDone"
    | "notDoneHint"
    | "cannot"
    | "cannotHint"
    | "reason"
    | "reasonIfAny"
    | "submit"
    | "busy"
    | "kept"
    | "remove"
    | "optional",
    string
  >;
}

/** One of three answers; "done" opens what was really done, the others ask why. */
export function AnswerForm({ action, fields, alongside, kind, reason, seen, offline, words }: Props) {
  const [state, send, busy] = useKeeping(action, offline);
  const [picked, setPicked] = useState<string>();
  const chosen = picked ?? state.typed?.kind ?? kind;
  const form = useRef<HTMLFormElement>(null);
  useStartNow(form, fields);
  useEffect(() => {
    if (state.attempt !== 0)
      form.current?.querySelector<HTMLElement>("[aria-invalid=true], [role=alert]")?.focus();
  }, [state]);
  const labels = { done: words.done, "not-done": words.notDone, cannot: words.cannot };
  const hints = { done: words.doneHint, "not-done": words.notDoneHint, cannot: words.cannotHint };
  const problem = state.problems.kind;
  const why: FieldView = {
    name: "reason",
    label: chosen === "done" ? words.reasonIfAny : words.reason,
    kind: "long",
    unit: null,
    hint: null,
    required: chosen !== "done",
    value: reason,
    choices: [],
  };
  return (
    <form ref={form} action={send} onSubmit={once(busy)} className="form" noValidate>
      {state.message && !problem && (
        <p className="refusal" role="alert" tabIndex={-1}>
          {state.message}
        </p>
      )}
      {state.kept && <p role="status">{words.kept}</p>}
      {/* Mounted again with each attempt, as the form is reset once it was sent. */}
      <fieldset
        key={`choice ${state.attempt}`}
        className="choose"
        aria-describedby={problem ? "kind-problem" : undefined}
      >
        <legend className="unseen">{words.legend}</legend>
        {KINDS.map((one) => (
          <label key={one}>
            <input
              type="radio"
              name="kind"
              value={one}
              defaultChecked={chosen === one}
              onChange={() => setPicked(one)}
              aria-invalid={problem ? true : undefined}
            />
            <span>
              {labels[one]}
              <span className="choose-hint">{hints[one]}</span>
            </span>
          </label>
        ))}
      </fieldset>
      {problem && (
        <p id="kind-problem" className="problem" role="alert">
          {problem}
        </p>
      )}
      <div key={state.attempt}>
        <input type="hidden" name="seen" value={state.typed?.seen ?? seen} />
        <div hidden={chosen !== "done"}>
          {fields.map((field) => (
            <Field key={field.name} field={field} state={state} optional={words.optional} />
          ))}
          {alongside && <Rows each={alongside} state={state} words={words} />}
        </div>
        {chosen !== "" && <Field field={why} state={state} optional={words.optional} />}
      </div>
      <p className="form-end">
        <button type="submit" className="press" aria-disabled={busy}>
          {busy ? words.busy : words.submit}
        </button>
      </p>
    </form>
  );
}
