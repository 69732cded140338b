"use client";

import { use } from "react";
import { BrokenWords } from "./BrokenWords.tsx";

/** What went wrong on the server stays there; the reader gets a way on and the number to quote. */
export function Broken({ error, reset }: { error: Error & { digest?: string }; reset: () => void }) {
  const words = use(BrokenWords);
  return (
    <section className="leaf-row" role="alert">
      <div className="side" />
      <div className="text flow">
        <h1>{words?.title}</h1>
        <p>{words?.help}</p>
        {error.digest && (
          <p className="faint">
            {words?.quote} <span className="number">{error.digest}</span>
          </p>
        )}
        <button type="button" className="press" onClick={reset}>
          {words?.again}
        </button>
      </div>
    </section>
  );
}
