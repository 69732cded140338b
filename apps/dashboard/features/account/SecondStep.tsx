"use client";

import { useActionState } from "react";
import { encode } from "uqr";
import { once } from "../forms/once.ts";
import { LineForm } from "../session/LineForm.tsx";
import { untried } from "../session/lines.ts";
import { beginSecondStep, confirmSecondStep, newCodes, type SetUp } from "./actions.ts";

type Key =
  | "password"
  | "begin"
  | "busy"
  | "scan"
  | "picture"
  | "typed"
  | "keep"
  | "print"
  | "code"
  | "turnOn"
  | "newCodes";
type Words = Record<Key, string>;

/** First the password, then the picture for the phone, the codes to keep on paper, and a first code typed back. */
export function BeginSecondStep({ words }: { words: Words }) {
  const [state, send, busy] = useActionState<SetUp, FormData>(beginSecondStep, untried);
  if (!state.uri || !state.secret || !state.codes) {
    return <PasswordForm state={state} send={send} busy={busy} submit={words.begin} words={words} />;
  }
  return (
    <>
      <p>{words.scan}</p>
      <Picture uri={state.uri} label={words.picture} />
      <p>
        {words.typed} <span className="secret">{state.secret.replace(/(.{4})(?=.)/g, "$1 ")}</span>
      </p>
      <KeptCodes codes={state.codes} words={words} />
      <LineForm
        action={confirmSecondStep}
        lines={[{ name: "code", label: words.code, type: "code" }]}
        submit={words.turnOn}
        busy={words.busy}
        id="first-code"
      />
    </>
  );
}

export function NewCodes({ words }: { words: Words }) {
  const [state, send, busy] = useActionState<SetUp, FormData>(newCodes, untried);
  if (state.codes) return <KeptCodes codes={state.codes} words={words} />;
  return <PasswordForm state={state} send={send} busy={busy} submit={words.newCodes} words={words} />;
}

function PasswordForm(given: {
  state: SetUp;
  send: (data: FormData) => void;
  busy: boolean;
  submit: string;
  words: Words;
}) {
  const { state, send, busy, submit, words } = given;
  return (
    <form action={send} onSubmit={once(busy)} className="form" noValidate>
      {state.message && (
        <p className="refusal" role="alert">
          {state.message}
        </p>
      )}
      <div className="field">
        <label htmlFor={`password-${submit}`}>{words.password}</label>
        <input
          key={state.attempt}
          id={`password-${submit}`}
          name="password"
          type="password"
          autoComplete="current-password"
        />
      </div>
      <p className="form-end">
        <button type="submit" className="press" aria-disabled={busy}>
          {busy ? words.busy : submit}
        </button>
      </p>
    </form>
  );
}

/** Drawn in one path, so that no style of its own is needed. */
function Picture({ uri, label }: { uri: string; label: string }) {
  const { data, size } = encode(uri, { border: 0 });
  const path = data.flatMap((row, y) => row.flatMap((dark, x) => (dark ? [`M${x} ${y}h1v1h-1z`] : [])));
  return (
    <svg className="scan" viewBox={`0 0 ${size} ${size}`} role="img" aria-label={label}>
      <path d={path.join("")} fill="currentColor" shapeRendering="crispEdges" />
    </svg>
  );
}

function KeptCodes({ codes, words }: { codes: string[]; words: Words }) {
  return (
    <>
      <p className="print-codes">{words.keep}</p>
      <ul className="kept-codes">
        {codes.map((code) => (
          <li key={code}>{code}</li>
        ))}
      </ul>
      <p>
        <button type="button" className="quiet" onClick={() => window.print()}>
          {words.print}
        </button>
      </p>
    </>
  );
}
