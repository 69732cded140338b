"use client";

import { useRouter } from "next/navigation";
import { useEffect, useRef, useState, useTransition } from "react";
import { longWork, type Progress } from "./longWork.ts";
import { Working } from "./Working.tsx";
import type { ImportWords } from "./words.ts";

interface Props {
  /** The import's own page, under which it is saved. */
  page: string;
  /** What has become of it by now. */
  statusOf: () => Promise<string | null>;
  discard: () => Promise<void>;
  /** There is nothing that could be stored. */
  nothing: boolean;
  words: ImportWords;
}

/** Saves the accepted rows and shows how far that is, or puts the preview away. */
export function Settle({ page, statusOf, discard, nothing, words }: Props) {
  const router = useRouter();
  const [said, setSaid] = useState<{ text: string; refused: boolean } | null>(null);
  const [saving, setSaving] = useState(false);
  const [progress, setProgress] = useState<Progress | null>(null);
  const [leaving, leave] = useTransition();
  const stop = useRef<AbortController | null>(null);
  const note = useRef<HTMLParagraphElement>(null);
  // The button that stopped it is gone, and the cursor with it.
  useEffect(() => {
    if (said) note.current?.focus();
  }, [said]);

  const save = async () => {
    if (saving || leaving) return;
    const controller = new AbortController();
    stop.current = controller;
    setSaid(null);
    setProgress(null);
    setSaving(true);
    const ended = await longWork(`${page}/save`, undefined, controller.signal, setProgress);
    // It may have been too late to stop it, or the answer alone was lost: what stands is asked, not assumed.
    const saved = ended.how === "done" || (ended.how !== "refused" && (await statusOf()) === "saved");
    if (saved) return leave(() => router.push(`${page}?saved=import`));
    if (ended.how === "signed-out") return window.location.reload();
    setSaving(false);
    if (ended.how === "stopped") setSaid({ text: words.stopped, refused: false });
    else setSaid({ text: (ended.how === "refused" && ended.message) || words.unreachable, refused: true });
  };
  return (
    <div>
      {said && (
        <p
          ref={note}
          className={said.refused ? "refusal" : "notice"}
          role={said.refused ? "alert" : "status"}
          tabIndex={-1}
        >
          {said.text}
        </p>
      )}
      <p className="form-end">
        {!nothing && (
          <button
            type="button"
            className="press"
            aria-disabled={saving || leaving}
            onClick={() => void save()}
          >
            {saving ? words.saving : words.save}
          </button>
        )}
        {!saving && (
          <button type="button" className="quiet" onClick={() => leave(discard)}>
            {words.discard}
          </button>
        )}
      </p>
      {saving && <Working progress={progress} stop={() => stop.current?.abort()} words={words} />}
    </div>
  );
}
