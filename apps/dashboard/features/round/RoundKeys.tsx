"use client";

import { type ReactNode, useEffect, useRef } from "react";

/** Moves through the round from the keyboard: j or down for the next draft, k or up for the one before, s to set aside. */
export function RoundKeys({ children }: { children: ReactNode }) {
  const list = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const listen = (event: KeyboardEvent) => {
      if (list.current) move(event, list.current);
    };
    document.addEventListener("keydown", listen);
    return () => document.removeEventListener("keydown", listen);
  }, []);
  return (
    <div ref={list} className="entries">
      {children}
    </div>
  );
}

const STEPS: Partial<Record<string, number>> = { j: 1, ArrowDown: 1, k: -1, ArrowUp: -1 };

function move(event: KeyboardEvent, list: HTMLElement): void {
  const target = event.target as HTMLElement;
  const inList = list.contains(target);
  if (event.metaKey || event.ctrlKey || event.altKey || target.matches("input, select, textarea")) return;
  const letter = event.key === "j" || event.key === "k";
  // Arrows scroll the page as ever until somebody is in the list; j and k lead into it.
  if (!inList && !(letter && target === document.body)) return;
  const step = STEPS[event.key];
  if (step !== undefined) {
    const entries = [...list.querySelectorAll<HTMLElement>("[data-entry]")];
    const here = entries.findIndex((entry) => entry.closest(".draft")?.contains(target));
    event.preventDefault();
    entries[Math.min(Math.max(here + step, 0), entries.length - 1)]?.focus();
  } else if (event.key === "s") {
    const aside = target.closest(".draft")?.querySelector("details");
    if (!aside) return;
    event.preventDefault();
    aside.open = true;
    aside.querySelector<HTMLElement>("input")?.focus();
  }
}
