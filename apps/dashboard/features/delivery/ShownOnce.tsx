"use client";

import { useId, useRef, useState } from "react";

export type CopyWords = Record<"copy" | "copied", string>;

interface Props {
  label: string;
  value: string;
  help: string;
  words: CopyWords;
}

/** A secret that is on no other page and never again on this one, in a line that can be taken whole. */
export function ShownOnce({ label, value, help, words: t }: Props) {
  const id = useId();
  const line = useRef<HTMLInputElement>(null);
  const [copied, setCopied] = useState(false);
  const copy = async () => {
    line.current?.select();
    setCopied(
      await navigator.clipboard.writeText(value).then(
        () => true,
        () => false,
      ),
    );
  };
  return (
    <div className="field" role="status">
      <label htmlFor={id}>{label}</label>
      <input id={id} ref={line} readOnly value={value} onFocus={(event) => event.target.select()} />
      <p className="hint">{help}</p>
      <button type="button" className="quiet" onClick={copy}>
        {copied ? t.copied : t.copy}
      </button>
    </div>
  );
}
