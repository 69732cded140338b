"use client";

import messages from "../messages/en.json" with { type: "json" };

const words = messages.broken;

/**
 * What went wrong on the server stays there; the reader gets a way on and the number to quote. It reads the catalogue
 * directly, because it must also work where the server's part of the page has failed.
 */
export default function Broken({ error, reset }: { error: Error & { digest?: string }; reset: () => void }) {
  return (
    <main id="main">
      <section className="leaf-row" role="alert">
        <div className="side" />
        <div className="text flow">
          <h1>{words.title}</h1>
          <p>{words.help}</p>
          {error.digest && (
            <p className="faint">
              {words.quote} <span className="number">{error.digest}</span>
            </p>
          )}
          <button type="button" className="press" onClick={reset}>
            {words.again}
          </button>
        </div>
      </section>
    </main>
  );
}
