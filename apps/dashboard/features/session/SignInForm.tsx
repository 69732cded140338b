"use client";

import { useActionState, useEffect, useRef } from "react";
import type { SignInState } from "./actions.ts";

interface Props {
  action: (before: SignInState, data: FormData) => Promise<SignInState>;
  words: { email: string; password: string; submit: string; busy: string };
}

export function SignInForm({ action, words }: Props) {
  const [state, send, busy] = useActionState(action, { attempt: 0, message: null, email: "" });
  const refusal = useRef<HTMLParagraphElement>(null);
  useEffect(() => {
    if (state.attempt > 0) refusal.current?.focus();
  }, [state]);
  return (
    <form action={send} className="form" noValidate>
      {state.message && (
        <p ref={refusal} className="refusal" role="alert" tabIndex={-1}>
          {state.message}
        </p>
      )}
      <div className="field">
        <label htmlFor="email">{words.email}</label>
        <input
          key={state.attempt}
          id="email"
          name="email"
          type="email"
          autoComplete="username"
          defaultValue={state.email}
        />
      </div>
      <div className="field">
        <label htmlFor="password">{words.password}</label>
        <input id="password" name="password" type="password" autoComplete="current-password" />
      </div>
      <p className="form-end">
        <button type="submit" className="press" aria-disabled={busy}>
          {busy ? words.busy : words.submit}
        </button>
      </p>
    </form>
  );
}
