"use client";

import { createContext, type ReactNode } from "react";

export interface Words {
  title: string;
  help: string;
  quote: string;
  again: string;
}

/** What to say when the server's part of a page has failed: sent along beforehand, so that no catalogue has to be. */
export const BrokenWords = createContext<Words | null>(null);

export function BrokenWordsProvider({ words, children }: { words: Words; children: ReactNode }) {
  return <BrokenWords value={words}>{children}</BrokenWords>;
}
