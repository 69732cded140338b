"use client";

import { useActionState } from "react";
import { type CopyWords, ShownOnce } from "../delivery/ShownOnce.tsx";
import { once } from "../forms/once.ts";
import type { Secret } from "./actions.ts";

interface Props {
  rotate: () => Promise<Secret>;
  words: Record<"secret" | "once" | "rotate", string> & CopyWords;
}

/** Makes a new secret and shows it this once. */
export function NewSecret({ rotate, words: t }: Props) {
  const [{ secret, problem }, send, busy] = useActionState<Secret>(rotate, { secret: null, problem: null });
  return (
    <form action={send} onSubmit={once(busy)} className="flow">
      {problem && (
        <p className="refusal" role="alert">
          {problem}
        </p>
      )}
      {secret && <ShownOnce label={t.secret} value={secret} help={t.once} words={t} />}
      <button type="submit" className="quiet" aria-disabled={busy}>
        {t.rotate}
      </button>
    </form>
  );
}
