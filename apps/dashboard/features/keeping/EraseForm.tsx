"use client";

import { useActionState, useId } from "react";
import { once } from "../forms/once.ts";
import type { Finding } from "../ledger/Check.tsx";

interface Props {
  action: (before: Finding | null, data: FormData) => Promise<Finding>;
  userId: string;
  words: { open: string; goes: string; name: string; erase: string; erasing: string };
}

/** Erasing is for good: what would go is said, and the person's name is typed again. */
export function EraseForm({ action, userId, words }: Props) {
  const id = useId();
  const [finding, send, running] = useActionState(action, null);
  return (
    <>
      <details>
        <summary className="tap">{words.open}</summary>
        <form action={send} onSubmit={once(running)}>
          <p>{words.goes}</p>
          <input type="hidden" name="userId" value={userId} />
          <div className="field">
            <label htmlFor={id}>{words.name}</label>
            <div className="field-line">
              <input id={id} type="text" name="name" autoComplete="off" required />
            </div>
          </div>
          <button type="submit" aria-disabled={running}>
            {running ? words.erasing : words.erase}
          </button>
        </form>
      </details>
      <div role="status">
        {finding && <p className={finding.good ? "notice" : "refusal"}>{finding.text}</p>}
      </div>
    </>
  );
}
