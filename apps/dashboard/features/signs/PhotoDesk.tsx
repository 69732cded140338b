"use client";

import { useRouter } from "next/navigation";
import { useId, useState } from "react";
import { keep, newKey } from "../offline/store.ts";
import { photoAddress, photosAddress } from "./addresses.ts";
import { Photo } from "./Photo.tsx";
import { send } from "./send.ts";
import { MOST_PHOTOS, shrink } from "./shrink.ts";
import { Way } from "./Way.tsx";
import type { PhotoWords } from "./words.ts";

interface Props {
  farmId: string;
  signId: string;
  photos: { id: string; alt: string }[];
  words: PhotoWords;
  /** A farmer's phone keeps what cannot be sent now: whose it is, where the sign stands, and how it is called. */
  offline?: { who: string; page: string; label: string };
}

type Doing = { is: "nothing" | "shrinking" | "removing" } | { is: "sending"; share: number };
interface Said {
  text: string;
  bad: boolean;
}

/** Takes or chooses photographs of a sign, makes them small, sends them, and takes back what was sent by mistake. */
export function PhotoDesk({ farmId, signId, photos, words, offline }: Props) {
  const router = useRouter();
  const [doing, setDoing] = useState<Doing>({ is: "nothing" });
  const [said, setSaid] = useState<Said | null>(null);
  const busy = doing.is !== "nothing";

  async function add(files: File[]) {
    setSaid(null);
    let kept = false;
    for (const file of files) {
      setDoing({ is: "shrinking" });
      const small = await shrink(file);
      if (!small) return end({ text: words.unreadable, bad: true });
      setDoing({ is: "sending", share: 0 });
      const [to, key] = [photosAddress(farmId, signId), newKey()];
      const sent = await send(to, key, small, (share) => setDoing({ is: "sending", share }));
      if (sent.how === "unreachable") {
        if (!offline) return end({ text: words.unreachable, bad: true });
        const at = new Date().toISOString();
        const photos = [{ key, picture: small }];
        await keep({ ...offline, url: "", key, at, fields: [], refused: null, photos, photosTo: to });
        kept = true;
        continue;
      }
      if (sent.how === "refused") return end({ text: words.refused.replace("{why}", sent.why), bad: true });
    }
    end({ text: kept ? words.kept : words.sent, bad: false });
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
    if (navigator.onLine) router.refresh();
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
      {photos.length >= MOST_PHOTOS ? (
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
