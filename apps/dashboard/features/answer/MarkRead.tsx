"use client";

import { useEffect } from "react";
import { markRead } from "./actions.ts";

/** Tells the office that the farmer has opened it; only once the page is really shown, not when it is fetched ahead. */
export function MarkRead({ advisoryId }: { advisoryId: string }) {
  useEffect(() => {
    void markRead(advisoryId);
  }, [advisoryId]);
  return null;
}
