"use client";

import { usePathname, useRouter } from "next/navigation";
import { useEffect, useState, useSyncExternalStore } from "react";
import { useLanguage } from "../../ui/Language.tsx";
import { isAway, missed, onSignal, tryReach } from "./signal.ts";
import { whenText } from "./whenText.ts";

interface Props {
  /** Language, light or dark, and office: a page that was kept under another is not to be read any more. */
  look: string;
  words: { offline: string; kept: string };
}

const AGAIN_MS = 15_000;
const LOOK = "pith-look";

/** Whether there is signal; of a page that the phone had kept, since when. */
export function Signal({ look, words }: Props) {
  const away = useSyncExternalStore(onSignal, isAway, () => false);
  const [kept, setKept] = useState<{ at: string; path: string }>();
  const language = useLanguage();
  const path = usePathname();
  const router = useRouter();

  useEffect(() => {
    // The worker writes it on a page that it gives out of its store.
    const at = document.documentElement.dataset.keptAt;
    if (at) setKept({ at, path: window.location.pathname });
    if (at || !navigator.onLine) missed();
  }, []);

  useEffect(() => {
    const timer = setInterval(() => isAway() && void tryReach(), AGAIN_MS);
    const online = () => void tryReach();
    window.addEventListener("online", online);
    window.addEventListener("offline", missed);
    return () => {
      clearInterval(timer);
      window.removeEventListener("online", online);
      window.removeEventListener("offline", missed);
    };
  }, []);

  const asItWas = kept?.path === path ? kept.at : undefined;
  useEffect(() => {
    // A form that is being filled in stays as it is: what is fetched anew could miss and take it along.
    if (away || !asItWas || isAway() || document.querySelector("main form.form")) return;
    setKept(undefined);
    router.refresh();
  }, [away, asItWas, router]);

  useEffect(() => {
    try {
      const before = localStorage.getItem(LOOK);
      localStorage.setItem(LOOK, look);
      if (before === null || before === look) return;
    } catch {
      // A browser that keeps nothing has no pages kept either.
      return;
    }
    navigator.serviceWorker?.controller?.postMessage({ anew: true });
  }, [look]);

  if (!away && !asItWas) return null;
  return (
    <div role="status" className="signal">
      {away && <p className="unknown no-print">{words.offline}</p>}
      {asItWas && <p>{words.kept.replace("{when}", whenText(asItWas, language))}</p>}
    </div>
  );
}
