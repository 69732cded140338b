import type { FormState } from "../forms/plan.ts";
import { PHOTOS, SEND_KEY, TAKEN } from "./names.ts";
import { type Refusal, sendNow } from "./queue.ts";
import { missed } from "./signal.ts";
import { type KeptPhoto, keep, letGo, newKey, type Waiting, waitingOf } from "./store.ts";

/** Where a form's answer goes when it is sent later, and how it is called while it waits. */
export interface Offline {
  url: string;
  /** Where the form itself stands. */
  page: string;
  label: string;
  who: string;
  /** Where to go once it has arrived, where the office names no other place. */
  next: string;
  /** Only the newest counts: it takes the place of one that still waits. */
  onlyNewest?: boolean;
}

/** The key of the one that waits, refused, while its form is open. */
export interface InPlaceOf {
  current: string | undefined;
}

type Action = (before: FormState, data: FormData) => Promise<FormState>;

/**
 * A farmer's form is kept on the phone first and then sent, so that nothing is lost whatever happens on the way; a page that
 * hangs on a server action could not even say so. It bears its key from the first try on: where the office stored it and
 * only its answer was lost, the next try adds nothing. What it was written in place of is let go once this stands safe.
 */
export function keeping(action: Action, offline: Offline | undefined, inPlaceOf: InPlaceOf): Action {
  if (!offline) return action;
  return async (before, data) => {
    const key = newKey();
    data.set(SEND_KEY, key);
    const one = entryOf(offline, key, data);
    try {
      await keep(one);
    } catch {
      // A browser that keeps nothing can only send.
      return action(before, data);
    }
    if (inPlaceOf.current) await letGo(inPlaceOf.current);
    inPlaceOf.current = undefined;
    for (const other of offline.onlyNewest ? await waitingOf(one.who) : [])
      if (other.url === one.url && other.key !== key) await letGo(other.key);

    const again = { ...before, attempt: before.attempt + 1, message: null, problems: {}, typed: null };
    const tried = navigator.onLine ? await sendNow(one) : "away";
    if (tried === "away") {
      if (!navigator.onLine) missed();
      window.dispatchEvent(new Event(TAKEN));
      return { ...again, kept: true };
    }
    if ("refused" in tried && !tried.stored) {
      // It waits with the refusal until the form, which holds it still, is sent again.
      inPlaceOf.current = key;
      return { ...again, ...refusedState(one, tried) };
    }
    location.assign(("next" in tried && tried.next) || offline.next);
    await shownAgain();
    return again;
  };
}

/** What has arrived is not sent again while the next page is on its way; who comes back to this one finds it as it was. */
const shownAgain = () =>
  new Promise<void>((resolve) => window.addEventListener("pageshow", () => resolve(), { once: true }));

/** A form that holds what was refused. */
export const refusedState = (
  { fields }: Pick<Waiting, "fields">,
  { refused, lead = refused, problems = {}, meanwhile }: Refusal,
): Pick<FormState, "message" | "problems" | "typed" | "kept"> => ({
  message: lead,
  problems,
  typed: { ...Object.fromEntries(fields), ...(meanwhile && { seen: meanwhile.seen }) },
  kept: false,
});

function entryOf({ url, page, label, who }: Offline, key: string, data: FormData): Waiting {
  const photos: KeptPhoto[] = data.getAll(PHOTOS).flatMap((picture) =>
    // Kept as bare bytes: a file of the camera's may be gone when it is sent.
    picture instanceof Blob ? [{ key: newKey(), picture: picture.slice(0, picture.size, picture.type) }] : [],
  );
  const fields = [...data].flatMap(([name, value]): [string, string][] =>
    typeof value === "string" && !name.startsWith("$") ? [[name, value]] : [],
  );
  const at = new Date().toISOString();
  return { url, page, label, who, key, at, fields, refused: null, ...(photos.length > 0 && { photos }) };
}
