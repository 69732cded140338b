"use client";

import type { Language } from "@pith/rules";
import { createContext, type ReactNode, useContext } from "react";

const Reader = createContext<Language>("en");

/** The reader's language for what runs in the browser: what it writes on the server first must be the same words. */
export function LanguageProvider({ language, children }: { language: Language; children: ReactNode }) {
  return <Reader value={language}>{children}</Reader>;
}

export const useLanguage = (): Language => useContext(Reader);
