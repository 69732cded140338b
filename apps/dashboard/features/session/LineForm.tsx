"use client";

import { type ReactNode, useActionState, useEffect, useRef, useState } from "react";
import { once } from "../forms/once.ts";
import { type Line, type LineState, untried } from "./lines.ts";

interface Props {
  action: (before: LineState, data: FormData) => Promise<LineState>;
  lines: Line[];
  submit: string;
  busy: string;
  /** The address behind the `#` goes along: it came by mail, and only this browser knows it. */
  withToken?: boolean;
  /** Stands beside the button. */
  beside?: ReactNode;
  /** Stands below what was done. */
  after?: ReactNode;
  id?: string;
}

export function LineForm({
  action,
  lines,
  submit,
  busy,
  withToken = false,
  beside,
  after,
  id = "line",
}: Props) {
  const [state, send, running] = useActionState(action, untried);
  const [token, setToken] = useState("");
  const said = useRef<HTMLParagraphElement>(null);
  useEffect(() => {
    if (state.attempt > 0) said.current?.focus();
  }, [state]);
  useEffect(() => {
    if (withToken) setToken(window.location.hash.slice(1));
  }, [withToken]);
  if (state.done) {
    return (
      <>
        <p ref={said} className="notice" role="status" tabIndex={-1}>
          {state.done}
        </p>
        {after}
      </>
    );
  }
  return (
    <form action={send} onSubmit={once(running)} className="form" noValidate>
      {state.message && (
        <p ref={said} className="refusal" role="alert" tabIndex={-1}>
          {state.message}
        </p>
      )}
      {withToken && <input type="hidden" name="token" value={token} />}
      {lines.map((line) => (
        <LineField
          key={`${line.name} ${state.attempt}`}
          id={`${id}-${line.name}`}
          line={line}
          kept={state.kept}
        />
      ))}
      <p className="form-end">
        <button type="submit" className="press" aria-disabled={running}>
          {running ? busy : submit}
        </button>
        {beside}
      </p>
    </form>
  );
}

function LineField({ id, line, kept }: { id: string; line: Line; kept: Record<string, string> }) {
  const { name, label, type, autoComplete, hint, value } = line;
  if (type === "flag") {
    return (
      <div className="field field-flag">
        <label htmlFor={id}>{label}</label>
        <input id={id} name={name} type="checkbox" />
      </div>
    );
  }
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        name={name}
        type={type === "code" ? "text" : type}
        autoComplete={type === "code" ? "one-time-code" : autoComplete}
        inputMode={type === "code" ? "text" : undefined}
        spellCheck={type === "text" ? undefined : false}
        defaultValue={kept[name] || value}
        aria-describedby={hint ? `${id}-hint` : undefined}
      />
      {hint && (
        <p id={`${id}-hint`} className="hint">
          {hint}
        </p>
      )}
    </div>
  );
}
