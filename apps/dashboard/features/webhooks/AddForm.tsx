"use client";

import { useActionState } from "react";
import { type CopyWords, ShownOnce } from "../delivery/ShownOnce.tsx";
import { once } from "../forms/once.ts";
import type { Secret } from "./actions.ts";
import { EVENTS, keyOf } from "./events.ts";

interface Props {
  action: (before: Secret, data: FormData) => Promise<Secret>;
  words: Record<"secret" | "once" | "url" | "urlHint" | "events" | "add" | "saving", string> &
    CopyWords & { event: Record<ReturnType<typeof keyOf>, string> };
}

/** Tells one more address, and shows its secret this once. */
export function AddForm({ action, words: t }: Props) {
  const [{ secret, problem }, send, busy] = useActionState(action, { secret: null, problem: null });
  return (
    <form action={send} onSubmit={once(busy)} className="form">
      {problem && (
        <p className="refusal" role="alert">
          {problem}
        </p>
      )}
      {secret && <ShownOnce label={t.secret} value={secret} help={t.once} words={t} />}
      <div className="field">
        <label htmlFor="url">{t.url}</label>
        <input id="url" name="url" type="url" required maxLength={1000} aria-describedby="url-hint" />
        <p id="url-hint" className="hint">
          {t.urlHint}
        </p>
      </div>
      <fieldset className="form-section">
        <legend>{t.events}</legend>
        {EVENTS.map((event) => (
          <div key={event} className="field-flag">
            <label htmlFor={event}>{t.event[keyOf(event)]}</label>
            <input id={event} name="events" value={event} type="checkbox" defaultChecked />
          </div>
        ))}
      </fieldset>
      <p className="form-end">
        <button type="submit" className="press" aria-disabled={busy}>
          {busy ? t.saving : t.add}
        </button>
      </p>
    </form>
  );
}
