"use client";

import type { DeliverySettings } from "@pith/contract";
import { LANGUAGES } from "@pith/rules";
import { useActionState, useState } from "react";
import { LANGUAGE_NAMES } from "../../ui/languageNames.ts";
import { once } from "../forms/once.ts";

interface Props {
  action: (before: string | null, data: FormData) => Promise<string | null>;
  settings: DeliverySettings;
  words: Record<
    | "mail"
    | "push"
    | "text"
    | "at-once"
    | "daily"
    | "off"
    | "mailHint"
    | "pushHint"
    | "textHint"
    | "textTo"
    | "textToHint"
    | "language"
    | "dailyAt"
    | "quiet"
    | "quietFrom"
    | "quietTo"
    | "timeZone"
    | "save"
    | "saving",
    string
  >;
}

/** By which way, when, and when not. */
export function WishesForm({ action, settings: { wishes, offered }, words: t }: Props) {
  const [problem, send, busy] = useActionState(action, null);
  const [isQuiet, setQuiet] = useState(wishes.quiet !== null);
  const way = (name: "mail" | "push" | "text", hint: string) => (
    <div className="field">
      <label htmlFor={name}>{t[name]}</label>
      <select id={name} name={name} defaultValue={wishes[name]} aria-describedby={`${name}-hint`}>
        {(["at-once", "daily", "off"] as const).map((timing) => (
          <option key={timing} value={timing}>
            {t[timing]}
          </option>
        ))}
      </select>
      <p id={`${name}-hint`} className="hint">
        {hint}
      </p>
    </div>
  );
  const clock = (name: string, label: string, value: string) => (
    <div className="field">
      <label htmlFor={name}>{label}</label>
      <input id={name} name={name} type="time" defaultValue={value} required />
    </div>
  );
  return (
    <form action={send} onSubmit={once(busy)} className="form">
      {problem && (
        <p className="refusal" role="alert">
          {problem}
        </p>
      )}
      {way("mail", t.mailHint)}
      {way("push", t.pushHint)}
      {offered.text && (
        <>
          {way("text", t.textHint)}
          <div className="field">
            <label htmlFor="textTo">{t.textTo}</label>
            <input
              id="textTo"
              name="textTo"
              type="tel"
              autoComplete="tel"
              defaultValue={wishes.textTo ?? ""}
              aria-describedby="textTo-hint"
            />
            <p id="textTo-hint" className="hint">
              {t.textToHint}
            </p>
          </div>
        </>
      )}
      <div className="field">
        <label htmlFor="language">{t.language}</label>
        <select id="language" name="language" defaultValue={wishes.language}>
          {LANGUAGES.map((language) => (
            <option key={language} value={language} lang={language}>
              {LANGUAGE_NAMES[language]}
            </option>
          ))}
        </select>
      </div>
      {clock("dailyAt", t.dailyAt, wishes.dailyAt)}
      <div className="field field-flag">
        <label htmlFor="isQuiet">{t.quiet}</label>
        <input
          id="isQuiet"
          name="isQuiet"
          type="checkbox"
          defaultChecked={isQuiet}
          onChange={(event) => setQuiet(event.target.checked)}
        />
      </div>
      {isQuiet && (
        <>
          {clock("quietFrom", t.quietFrom, wishes.quiet?.from ?? "21:00")}
          {clock("quietTo", t.quietTo, wishes.quiet?.to ?? "06:00")}
        </>
      )}
      <div className="field">
        <label htmlFor="timeZone">{t.timeZone}</label>
        <input id="timeZone" name="timeZone" defaultValue={wishes.timeZone} required maxLength={60} />
      </div>
      <p className="form-end">
        <button type="submit" className="press" aria-disabled={busy}>
          {busy ? t.saving : t.save}
        </button>
      </p>
    </form>
  );
}
