"use client";

import { type ReactNode, useEffect, useRef, useState } from "react";
import { createPortal } from "react-dom";
import { AsideForm, type AsideWords } from "./AsideForm.tsx";

/** Moves through the round from the keyboard: j or down for the next draft, k or up for the one before, s to set aside, x to mark for issuing several. */
export function RoundKeys({
  many,
  words,
  children,
}: {
  /** More than are laid out at once. */
  many: boolean;
  words: AsideWords;
  children: ReactNode;
}) {
  const list = useRef<HTMLDivElement>(null);
  const aside = useOpened(list);
  useEffect(() => {
    const listen = (event: KeyboardEvent) => {
      if (list.current) move(event, list.current);
    };
    document.addEventListener("keydown", listen);
    return () => document.removeEventListener("keydown", listen);
  }, []);
  return (
    <div ref={list} className={many ? "entries many" : "entries"}>
      {children}
      {aside &&
        createPortal(<AsideForm key={aside.draftId} draftId={aside.draftId} words={words} />, aside.place)}
    </div>
  );
}

/** The entry whose day is asked for: its form is made when it is opened, because a round has hundreds that never are. */
function useOpened(list: { current: HTMLElement | null }) {
  const [opened, setOpened] = useState<{ draftId: string; place: Element } | null>(null);
  useEffect(() => {
    const listen = ({ target }: Event) => {
      if (!(target instanceof HTMLDetailsElement)) return;
      const { aside: draftId } = target.dataset;
      const place = target.querySelector("[data-aside-form]");
      if (!draftId || !place) return;
      setOpened((before) => (target.open ? { draftId, place } : before?.draftId === draftId ? null : before));
    };
    const { current } = list;
    // Opening does not bubble.
    current?.addEventListener("toggle", listen, true);
    return () => current?.removeEventListener("toggle", listen, true);
  }, [list]);
  useEffect(() => {
    opened?.place.querySelector<HTMLElement>("input:not([type=hidden])")?.focus();
  }, [opened]);
  return opened;
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
  } else if (event.key === "x") {
    const mark = target.closest(".draft")?.querySelector<HTMLInputElement>("[data-mark]");
    if (!mark) return;
    event.preventDefault();
    mark.checked = !mark.checked;
  } else if (event.key === "s") {
    const aside = target.closest(".draft")?.querySelector("details");
    if (!aside) return;
    event.preventDefault();
    aside.open = true;
    aside.querySelector<HTMLElement>("input:not([type=hidden])")?.focus();
  }
}
