"use client";

import { useRouter } from "next/navigation";
import { useEffect, useId, useRef, useState } from "react";
import { photoAddress, photosAddress } from "./addresses.ts";
import { Photo } from "./Photo.tsx";
import { send } from "./send.ts";
import { shrink } from "./shrink.ts";
import type { PhotoWords } from "./words.ts";

interface Props {
  farmId: string;
  signId: string;
  photos: { id: string; alt: string }[];
  words: PhotoWords;
}

/** The most photographs that the office keeps of one sign. */
const MOST = 10;

type Doing = { is: "nothing" | "shrinking" | "removing" } | { is: "sending"; share: number };
interface Said {
  text: string;
  bad: boolean;
}

/** Takes or chooses photographs of a sign, makes them small, sends them, and takes back what was sent by mistake. */
export function PhotoDesk({ farmId, signId, photos, words }: Props) {
  const router = useRouter();
  const [doing, setDoing] = useState<Doing>({ is: "nothing" });
  const [said, setSaid] = useState<Said | null>(null);
  const busy = doing.is !== "nothing";

  async function add(files: File[]) {
    setSaid(null);
    for (const file of files) {
      setDoing({ is: "shrinking" });
      const small = await shrink(file);
      if (!small) return end({ text: words.unreadable, bad: true });
      setDoing({ is: "sending", share: 0 });
      const sent = await send(photosAddress(farmId, signId), small, (share) =>
        setDoing({ is: "sending", share }),
      );
      if (sent.how === "unreachable") return end({ text: words.unreachable, bad: true });
      if (sent.how === "refused") return end({ text: words.refused.replace("{why}", sent.why), bad: true });
    }
    end({ text: words.sent, bad: false });
  }

  async function remove(id: string) {
    setSaid(null);
    setDoing({ is: "removing" });
    const answer = await fetch(photoAddress(farmId, id), { method: "DELETE", redirect: "manual" }).catch(
      () => null,
    );
    end(answer?.ok ? { text: words.removed, bad: false } : { text: words.notRemoved, bad: true });
  }

  function end(result: Said) {
    setDoing({ is: "nothing" });
    setSaid(result);
    router.refresh();
  }

  return (
    <div className="photo-desk">
      {photos.length === 0 && <p className="faint">{words.none}</p>}
      <ul className="photos large">
        {photos.map(({ id, alt }) => (
          <li key={id}>
            <Photo farmId={farmId} id={id} alt={alt} />
            <details className="no-print">
              <summary>
                {words.remove}
                <span className="unseen">: {alt}</span>
              </summary>
              <button type="button" className="quiet" aria-disabled={busy} onClick={() => busy || remove(id)}>
                {words.removeSure}
              </button>
            </details>
          </li>
        ))}
      </ul>
      <div role="status">
        {doing.is === "shrinking" && <p>{words.shrinking}</p>}
        {doing.is === "removing" && <p>{words.removing}</p>}
        {said && !said.bad && <p className="notice">{said.text}</p>}
      </div>
      {doing.is === "sending" && <Sending share={doing.share} words={words} />}
      {said?.bad && (
        <p className="refusal" role="alert">
          {said.text}
        </p>
      )}
      {photos.length >= MOST ? (
        <p>{words.full}</p>
      ) : (
        <div className="photo-ways no-print">
          <Way label={words.take} busy={busy} onFiles={add} camera />
          <Way label={words.choose} busy={busy} onFiles={add} />
        </div>
      )}
    </div>
  );
}

function Sending({ share, words }: { share: number; words: PhotoWords }) {
  const id = useId();
  return (
    <div className="working">
      <p id={id}>{words.sending.replace("{share}", String(Math.round(share * 100)))}</p>
      <progress aria-labelledby={id} max={1} value={share} />
    </div>
  );
}

/** On a phone the first way opens the camera and the second the pictures; elsewhere both choose a file. */
function Way({
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
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the script has come
  useEffect(() => take(input.current), []);
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
