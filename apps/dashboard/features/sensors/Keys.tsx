"use client";

import { useActionState } from "react";
import { once } from "../forms/once.ts";
import { type KeyMade, makeKey, revokeKey, rotateKey } from "./actions.ts";

interface Words {
  name: string;
  series: string;
  make: string;
  busy: string;
  rotate: string;
  revoke: string;
  once: string;
  overlap: string;
  send: string;
}

/** A form that makes a key, and its secret once it is made. */
export function NewKey({
  farmId,
  series,
  origin,
  words,
}: {
  farmId: string;
  series: { id: string; label: string }[];
  origin: string;
  words: Words;
}) {
  const [made, send, busy] = useActionState(makeKey.bind(null, farmId), null);
  return (
    <>
      <form action={send} onSubmit={once(busy)} className="form">
        <fieldset className="form-section">
          <div className="field">
            <label htmlFor="key-name">{words.name}</label>
            <div className="field-line">
              <input id="key-name" name="name" type="text" maxLength={80} autoComplete="off" />
            </div>
          </div>
          <fieldset className="field key-series">
            <legend>{words.series}</legend>
            {series.map(({ id, label }) => (
              <div key={id} className="field-flag">
                <label htmlFor={`key-${id}`}>{label}</label>
                <input id={`key-${id}`} type="checkbox" name="series" value={id} />
              </div>
            ))}
          </fieldset>
        </fieldset>
        <p className="form-end">
          <button type="submit" className="press" aria-disabled={busy}>
            {busy ? words.busy : words.make}
          </button>
        </p>
      </form>
      <Made made={made} origin={origin} words={words} />
    </>
  );
}

/** What can be done with a key: another in its place, or an end at once. */
export function KeyActs({
  farmId,
  keyId,
  origin,
  words,
}: {
  farmId: string;
  keyId: string;
  origin: string;
  words: Words;
}) {
  const [rotated, rotate, rotating] = useActionState<KeyMade>(rotateKey.bind(null, farmId, keyId), null);
  const [revoked, revoke, revoking] = useActionState<KeyMade>(revokeKey.bind(null, farmId, keyId), null);
  return (
    <>
      <div className="key-acts">
        <form action={rotate} onSubmit={once(rotating)}>
          <button type="submit" className="quiet" aria-disabled={rotating}>
            {words.rotate}
          </button>
        </form>
        <form action={revoke} onSubmit={once(revoking)}>
          <button type="submit" className="quiet" aria-disabled={revoking}>
            {words.revoke}
          </button>
        </form>
      </div>
      <Made made={rotated ?? revoked} origin={origin} words={words} rotated />
    </>
  );
}

/** The secret, and how a device uses it. It is in this answer alone: leaving the page forgets it. */
function Made({
  made,
  origin,
  words,
  rotated = false,
}: {
  made: KeyMade;
  origin: string;
  words: Words;
  rotated?: boolean;
}) {
  if (made === null) return null;
  if ("message" in made) {
    return (
      <p className="refusal" role="alert">
        {made.message}
      </p>
    );
  }
  const pack = JSON.stringify([{ n: made.names[0], v: 21.5 }]);
  return (
    <div className="key-made" role="status">
      <p>{words.once}</p>
      {rotated && <p>{words.overlap}</p>}
      <p className="key-secret">
        <code>{made.secret}</code>
      </p>
      <p>{words.send}</p>
      <pre>
        <code>{`curl ${origin}/v1/readings \\
  -H 'Authorization: Bearer ${made.secret}' \\
  -H 'Content-Type: application/senml+json' \\
  -d '${pack}'`}</code>
      </pre>
    </div>
  );
}
