"use client";

import { useEffect, useState } from "react";

type State = "looking" | "cannot" | "denied" | "off" | "on" | "busy";

interface Props {
  pushKey: string;
  /** SHA-256 of the addresses that are told, by which this browser knows itself. */
  told: string[];
  words: Record<Exclude<State, "busy"> | "turnOn" | "failed", string>;
  add: (subscription: { endpoint: string; keys: { p256dh: string; auth: string } }) => Promise<string | null>;
}

const canPush = () => "serviceWorker" in navigator && "PushManager" in window && "Notification" in window;

/** Lets this phone be told, and says in words what stands between where something does. */
export function ThisBrowser({ pushKey, told, add, words: t }: Props) {
  const [state, setState] = useState<State>("looking");
  const [problem, setProblem] = useState<string | null>(null);
  const known = told.join();
  useEffect(() => {
    void stateNow(known.split(",")).then(setState);
  }, [known]);

  const turnOn = async () => {
    if (state === "busy") return;
    setState("busy");
    setProblem(null);
    try {
      // Asked for by the press itself: browsers ask for nothing that nobody pressed for.
      if ((await Notification.requestPermission()) !== "granted") {
        setState(Notification.permission === "denied" ? "denied" : "off");
        return;
      }
      const worker = await navigator.serviceWorker.register("/worker.js");
      await navigator.serviceWorker.ready;
      const subscription =
        (await worker.pushManager.getSubscription()) ??
        (await worker.pushManager.subscribe({ userVisibleOnly: true, applicationServerKey: pushKey }));
      const { endpoint, keys } = subscription.toJSON();
      const refused = await add({
        endpoint: endpoint ?? "",
        keys: { p256dh: keys?.p256dh ?? "", auth: keys?.auth ?? "" },
      });
      setProblem(refused);
      setState(refused === null ? "on" : "off");
    } catch {
      setProblem(t.failed);
      setState("off");
    }
  };

  return (
    <div className="flow">
      <p role="status">{t[state === "busy" ? "looking" : state]}</p>
      {problem && (
        <p className="refusal" role="alert">
          {problem}
        </p>
      )}
      {(state === "off" || state === "busy") && (
        <button type="button" className="press" aria-disabled={state === "busy"} onClick={turnOn}>
          {t.turnOn}
        </button>
      )}
    </div>
  );
}

async function stateNow(told: string[]): Promise<State> {
  if (!canPush()) return "cannot";
  if (Notification.permission === "denied") return "denied";
  const worker = await navigator.serviceWorker.getRegistration("/worker.js");
  const subscription = await worker?.pushManager.getSubscription();
  if (!subscription) return "off";
  const hash = await crypto.subtle.digest("SHA-256", new TextEncoder().encode(subscription.endpoint));
  const hex = [...new Uint8Array(hash)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  return told.includes(hex) ? "on" : "off";
}
