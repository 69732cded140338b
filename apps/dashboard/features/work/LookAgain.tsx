"use client";

import { useRouter } from "next/navigation";
import { useEffect } from "react";

const EVERY_MS = 3_000;

/** Looks again while something is under way and the page is looked at. */
export function LookAgain() {
  const { refresh } = useRouter();
  useEffect(() => {
    const timer = setInterval(() => {
      if (document.visibilityState === "visible") refresh();
    }, EVERY_MS);
    return () => clearInterval(timer);
  }, [refresh]);
  return null;
}
