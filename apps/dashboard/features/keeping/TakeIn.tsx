"use client";

import { type FormEvent, useId, useState } from "react";

interface Words {
  file: string;
  send: string;
  sending: string;
  choose: string;
  unreachable: string;
  done: string;
}

interface Props {
  what: "office" | "farm";
  words: Words;
}

/** Sends an export as it is and says what came of it. Nothing is kept unless all of it is. */
export function TakeIn({ what, words }: Props) {
  const id = useId();
  const [busy, setBusy] = useState(false);
  const [said, setSaid] = useState<{ good: boolean; text: string } | null>(null);

  async function send(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    if (busy) return;
    const file = new FormData(event.currentTarget).get("file");
    if (!(file instanceof File) || file.size === 0) return setSaid({ good: false, text: words.choose });
    setBusy(true);
    setSaid(null);
    const answer = await fetch(`/office/keeping/in?what=${what}`, { method: "POST", body: file }).catch(
      () => null,
    );
    const body = (await answer?.json().catch(() => null)) as { detail?: string } | null;
    setBusy(false);
    if (answer?.ok) setSaid({ good: true, text: words.done });
    else setSaid({ good: false, text: body?.detail ?? words.unreachable });
  }

  return (
    <form onSubmit={send}>
      <div className="field">
        <label htmlFor={id}>{words.file}</label>
        <div className="field-line">
          <input id={id} type="file" name="file" accept=".ndjson,application/x-ndjson" />
        </div>
      </div>
      <button type="submit" className="quiet" aria-disabled={busy}>
        {busy ? words.sending : words.send}
      </button>
      <div role="status">{said && <p className={said.good ? "notice" : "refusal"}>{said.text}</p>}</div>
    </form>
  );
}
