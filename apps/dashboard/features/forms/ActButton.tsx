"use client";

import { useActionState } from "react";
import { once } from "./once.ts";

interface Props {
  /** Leads on where it went well; else says why it did not. */
  action: () => Promise<string>;
  label: string;
  busy: string;
  weight?: "press" | "quiet";
}

/** One thing to do that computes the open drafts again, and may take a while. */
export function ActButton({ action, label, busy, weight = "press" }: Props) {
  const [problem, send, running] = useActionState<string | null>(action, null);
  return (
    <form action={send} onSubmit={once(running)}>
      {problem && (
        <p className="refusal" role="alert">
          {problem}
        </p>
      )}
      <button type="submit" className={weight} aria-disabled={running}>
        {running ? busy : label}
      </button>
    </form>
  );
}
