"use client";

import { useRouter } from "next/navigation";
import { useCallback, useEffect, useState } from "react";
import { sendWaiting } from "./queue.ts";
import { isAway, onSignal } from "./signal.ts";
import { change, letGo, type Waiting, waitingOf } from "./store.ts";
import { WaitingOne, type WaitingWords } from "./WaitingOne.tsx";

interface Props {
  who: string;
  /** Pages to have at hand without signal. */
  pages: string[];
  words: WaitingWords & Record<"title" | "help" | "send", string>;
}

const AGAIN_MS = 30_000;

/** What was written without signal and is not with the office yet. */
export function WaitingList({ who, pages, words }: Props) {
  const [list, setList] = useState<Waiting[]>([]);
  const router = useRouter();
  const look = useCallback(async () => setList(await waitingOf(who)), [who]);
  const send = useCallback(async () => {
    const arrived = navigator.onLine ? await sendWaiting(who) : 0;
    await look();
    if (arrived > 0) router.refresh();
  }, [who, look, router]);

  useEffect(() => {
    void send();
    const again = () => void send();
    const timer = setInterval(again, AGAIN_MS);
    const deaf = onSignal(() => !isAway() && again());
    const kept = () => void look();
    window.addEventListener("online", again);
    window.addEventListener("pith-kept", kept);
    return () => {
      clearInterval(timer);
      deaf();
      window.removeEventListener("online", again);
      window.removeEventListener("pith-kept", kept);
    };
  }, [send, look]);

  const keepPages = pages.join(" ");
  useEffect(() => {
    if (!("serviceWorker" in navigator)) return;
    void navigator.serviceWorker
      .register("/worker.js")
      .then(() => navigator.serviceWorker.ready)
      .then(({ active }) => active?.postMessage({ keep: keepPages.split(" ") }))
      .catch(() => {});
  }, [keepPages]);

  /** In the place of what another said: its writer has seen that now. */
  const sendMine = async ({ key, fields, meanwhile }: Waiting) => {
    const others = fields.filter(([name]) => name !== "seen");
    const seen: [string, string] = ["seen", meanwhile?.seen ?? ""];
    await change(key, { fields: [...others, seen], refused: null, meanwhile: undefined });
    await send();
  };
  return (
    <div aria-live="polite" className="waiting no-print">
      {list.length > 0 && (
        <section aria-labelledby="waiting-head">
          <h2 id="waiting-head">{words.title}</h2>
          <p className="faint">{words.help}</p>
          <ul className="listing">
            {list.map((one) => (
              <WaitingOne
                key={one.key}
                one={one}
                words={words}
                onLetGo={() => void letGo(one.key).then(look)}
                onSend={() => void sendMine(one)}
              />
            ))}
          </ul>
          <button type="button" className="press" onClick={() => void send()}>
            {words.send}
          </button>
        </section>
      )}
    </div>
  );
}
