"use client";

import { useActionState } from "react";
import { once } from "../forms/once.ts";
import type { Shown } from "./actions.ts";
import { type CopyWords, ShownOnce } from "./ShownOnce.tsx";

interface Props {
  make: () => Promise<Shown>;
  /** There is one already: a new one stops it. */
  again: boolean;
  words: Record<"address" | "once" | "make" | "makeAgain", string> & CopyWords;
}

/** Makes a calendar's address and shows it this once. */
export function CalendarLink({ make, again, words: t }: Props) {
  const [shown, send, busy] = useActionState<Shown>(make, { address: null, problem: null });
  return (
    <form action={send} onSubmit={once(busy)} className="flow">
      {shown.problem && (
        <p className="refusal" role="alert">
          {shown.problem}
        </p>
      )}
      {shown.address && <ShownOnce label={t.address} value={shown.address} help={t.once} words={t} />}
      <button type="submit" className="quiet" aria-disabled={busy}>
        {again || shown.address ? t.makeAgain : t.make}
      </button>
    </form>
  );
}
