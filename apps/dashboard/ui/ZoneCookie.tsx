"use client";

import { useEffect } from "react";
import { keepZone } from "../features/session/zone.ts";

/** Tells the server in which zone the reader's clock runs, so that an instant is shown on the reader's day. */
export function ZoneCookie({ known }: { known: string }) {
  useEffect(() => {
    const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
    if (zone && zone !== known) void keepZone(zone);
  }, [known]);
  return null;
}
