"use client";

import { type ReactNode, useActionState, useState } from "react";
import { once } from "../forms/once.ts";

export interface IssueState {
  attempt: number;
  message: string | null;
}

interface Props {
  action: (before: IssueState, data: FormData) => Promise<IssueState>;
  words: { note: string; noteHint: string; preview: string; from: string; submit: string; busy: string };
  /** The advice above and below the agent's own words. */
  head: ReactNode;
  body: ReactNode;
}

/** The agent's own words, the slip the farmer will read with them in it, and the button that issues it. */
export function IssueDesk({ action, words, head, body }: Props) {
  const [state, send, busy] = useActionState(action, { attempt: 0, message: null });
  const [note, setNote] = useState("");
  return (
    <form action={send} onSubmit={once(busy)}>
      {state.message && (
        <p className="refusal" role="alert">
          {state.message}
        </p>
      )}
      <div className="field">
        <label htmlFor="note">{words.note}</label>
        <textarea
          id="note"
          name="note"
          rows={3}
          maxLength={2000}
          value={note}
          onChange={(event) => setNote(event.target.value)}
          aria-describedby="note-hint"
        />
        <p id="note-hint" className="hint">
          {words.noteHint}
        </p>
      </div>
      <p className="label">{words.preview}</p>
      <div className="slip">
        {head}
        {note.trim() !== "" && (
          <p>
            <span className="label">{words.from}</span> {note}
          </p>
        )}
        {body}
      </div>
      <button type="submit" className="press" aria-disabled={busy}>
        {busy ? words.busy : words.submit}
      </button>
    </form>
  );
}
