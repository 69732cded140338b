"use client";

import { useState, useTransition } from "react";
import type { ImportWords } from "./words.ts";

interface Props {
  save: () => Promise<{ message: string }>;
  discard: () => Promise<void>;
  /** There is nothing that could be stored. */
  nothing: boolean;
  words: ImportWords;
}

/** Saves the accepted rows, or puts the preview away. */
export function Settle({ save, discard, nothing, words }: Props) {
  const [refusal, setRefusal] = useState<string | null>(null);
  const [busy, start] = useTransition();
  return (
    <div>
      {refusal && (
        <p className="refusal" role="alert">
          {refusal}
        </p>
      )}
      <p className="form-end">
        {!nothing && (
          <button
            type="button"
            className="press"
            aria-disabled={busy}
            onClick={() => start(async () => setRefusal((await save())?.message ?? null))}
          >
            {busy ? words.saving : words.save}
          </button>
        )}
        <button type="button" className="quiet" onClick={() => start(discard)}>
          {words.discard}
        </button>
      </p>
    </div>
  );
}
