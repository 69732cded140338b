"use client";

import { useEffect, useEffectEvent, useRef } from "react";

/** On a phone the first way opens the camera and the second the pictures; elsewhere both choose a file. */
export function Way({
  label,
  busy,
  onFiles,
  camera = false,
}: {
  label: string;
  busy: boolean;
  onFiles: (files: File[]) => void;
  camera?: boolean;
}) {
  const input = useRef<HTMLInputElement>(null);
  const take = (chosen: HTMLInputElement | null) => {
    const files = [...(chosen?.files ?? [])];
    if (!chosen || files.length === 0) return;
    // The same picture may be chosen again after a fault.
    chosen.value = "";
    onFiles(files);
  };
  // On a slow line a picture may be chosen before this page's script has come.
  const takeEarly = useEffectEvent(() => take(input.current));
  useEffect(() => takeEarly(), []);
  return (
    <label className="press photo-way" data-busy={busy || undefined}>
      {label}
      <input
        ref={input}
        type="file"
        accept="image/*"
        className="unseen"
        disabled={busy}
        {...(camera ? { capture: "environment" as const } : { multiple: true })}
        onChange={({ target }) => take(target)}
      />
    </label>
  );
}
