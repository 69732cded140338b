"use client";

import { useActionState, useId, useState } from "react";
import { once } from "../forms/once.ts";
import { type Choice, type PlaceState, untriedPlace } from "./place.ts";

type Key = "email" | "name" | "role" | "farms" | "submit" | "busy";

interface Props {
  action: (before: PlaceState, data: FormData) => Promise<PlaceState>;
  words: Record<Key, string>;
  roles: Choice[];
  farms: Choice[];
  /** Asks for address and name too, of somebody who is not in yet. */
  asksWho?: boolean;
  /** Where they stand, or may stand. */
  now: { role: string; farmIds: string[] };
}

/** Somebody's role, and the farms of whoever has not all of them. */
export function PlaceForm({ action, words, roles, farms, asksWho = false, now }: Props) {
  const [state, send, busy] = useActionState(action, untriedPlace);
  const [chosen, setChosen] = useState(now.role);
  const id = useId();
  const hasFarms = chosen === "farmer" || chosen === "reader";
  return (
    <form action={send} onSubmit={once(busy)} className="form" noValidate>
      <Outcome state={state} />
      {asksWho && (
        <>
          <div className="field">
            <label htmlFor={`${id}-email`}>{words.email}</label>
            <input
              key={`email ${state.attempt}`}
              id={`${id}-email`}
              name="email"
              type="email"
              autoComplete="off"
              defaultValue={state.kept?.email}
            />
          </div>
          <div className="field">
            <label htmlFor={`${id}-name`}>{words.name}</label>
            <input
              key={`name ${state.attempt}`}
              id={`${id}-name`}
              name="name"
              type="text"
              autoComplete="off"
              defaultValue={state.kept?.name}
            />
          </div>
        </>
      )}
      <div className="field">
        <label htmlFor={`${id}-role`}>{words.role}</label>
        <select
          id={`${id}-role`}
          name="role"
          value={chosen}
          onChange={(event) => setChosen(event.target.value)}
        >
          {roles.map(({ value, label }) => (
            <option key={value} value={value}>
              {label}
            </option>
          ))}
        </select>
      </div>
      {hasFarms && (
        <fieldset className="farm-choices">
          <legend>{words.farms}</legend>
          {farms.map(({ value, label }) => (
            <div key={value} className="field-flag">
              <label htmlFor={`${id}-${value}`}>{label}</label>
              <input
                id={`${id}-${value}`}
                name="farm"
                type="checkbox"
                value={value}
                defaultChecked={now.farmIds.includes(value)}
              />
            </div>
          ))}
        </fieldset>
      )}
      <p className="form-end">
        <button type="submit" className="press" aria-disabled={busy}>
          {busy ? words.busy : words.submit}
        </button>
      </p>
    </form>
  );
}

/** One thing to do with a person or an invitation. */
export function PlaceButton(given: {
  action: (before: PlaceState) => Promise<PlaceState>;
  label: string;
  busy: string;
  named?: string;
}) {
  const { action, label, busy, named } = given;
  const [state, send, running] = useActionState(action, untriedPlace);
  return (
    <form action={send} onSubmit={once(running)}>
      <Outcome state={state} />
      <button type="submit" className="quiet" aria-label={named} aria-disabled={running}>
        {running ? busy : label}
      </button>
    </form>
  );
}

function Outcome({ state }: { state: PlaceState }) {
  if (state.message) {
    return (
      <p className="refusal" role="alert">
        {state.message}
      </p>
    );
  }
  return state.done ? (
    <p className="notice" role="status">
      {state.done}
    </p>
  ) : null;
}
