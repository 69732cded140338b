/**
 * Whether the office can be reached from here. A phone says that it is on line where nothing gets through, so this follows
 * what became of the last request.
 */

let away = false;
const listeners = new Set<() => void>();

function turn(now: boolean) {
  if (away === now) return;
  away = now;
  for (const listen of listeners) listen();
}

export const reached = () => turn(false);
export const missed = () => turn(true);
export const isAway = () => away;
export function onSignal(listen: () => void): () => void {
  listeners.add(listen);
  return () => listeners.delete(listen);
}

/** Longer than this, a question that changes nothing is given up. */
const PING_MS = 8000;

export async function tryReach(): Promise<void> {
  try {
    const answer = await fetch("/healthz", { cache: "no-store", signal: AbortSignal.timeout(PING_MS) });
    // A hotspot that wants to be signed in to answers too, with a page of its own.
    if (answer.ok && !answer.redirected) reached();
  } catch {
    missed();
  }
}
