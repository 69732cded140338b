"use client";

import Link from "next/link";
import { useActionState, useEffect, useRef } from "react";
import { once } from "../forms/once.ts";
import type { FileState } from "./actions.ts";

interface Props {
  action: (before: FileState, data: FormData) => Promise<FileState>;
  words: Record<
    "file" | "hint" | "save" | "busy" | "cancel" | "where" | "field" | "wrong" | "problems",
    string
  >;
}

const untouched: FileState = { attempt: 0, message: null, fileName: null, faults: [] };

/** A guide from a file; what is wrong with it is listed by the field's path, and nothing is kept. */
export function FileForm({ action, words }: Props) {
  const [state, send, busy] = useActionState(action, untouched);
  const alert = useRef<HTMLParagraphElement>(null);
  useEffect(() => {
    if (state.attempt > 0) alert.current?.focus();
  }, [state]);
  return (
    <>
      <form action={send} onSubmit={once(busy)} className="form">
        <div className="field">
          <label htmlFor="f-guide">{words.file}</label>
          <input
            id="f-guide"
            name="guide"
            type="file"
            accept=".json,application/json"
            aria-invalid={state.message ? true : undefined}
            aria-describedby={state.message ? "f-guide-hint f-guide-problem" : "f-guide-hint"}
          />
          <p id="f-guide-hint" className="hint">
            {words.hint}
          </p>
          {state.message && (
            <p id="f-guide-problem" ref={alert} className="refusal" role="alert" tabIndex={-1}>
              {state.fileName && <span className="file-name">{state.fileName}: </span>}
              {state.message}
            </p>
          )}
        </div>
        <p className="form-end">
          <button type="submit" className="press" aria-disabled={busy}>
            {busy ? words.busy : words.save}
          </button>
          <Link href="/guides">{words.cancel}</Link>
        </p>
      </form>
      {state.faults.length > 0 && (
        <table className="ruled">
          <caption>{words.problems}</caption>
          <thead>
            <tr>
              <th scope="col">{words.where}</th>
              <th scope="col">{words.wrong}</th>
              <th scope="col">{words.field}</th>
            </tr>
          </thead>
          <tbody>
            {state.faults.map(({ field, where, text }) => (
              <tr key={`${field} ${text}`}>
                <th scope="row">{where}</th>
                <td>{text}</td>
                <td className="hash">{field}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </>
  );
}
