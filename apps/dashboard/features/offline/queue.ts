import type { Meanwhile } from "../forms/plan.ts";
import { missed, reached } from "./signal.ts";
import { change, letGo, type Waiting, waitingOf } from "./store.ts";

/** Longer than this, a sending is given up and tried again later [ms]. A photograph is some hundred times a form. */
const FORM_MS = 15_000;
const PHOTO_MS = 60_000;

export interface Refusal {
  /** All of it in one, for where the fields are not seen. */
  refused: string;
  /** What stands over the form; the rest stands beside its fields. */
  lead?: string | null;
  problems?: Record<string, string>;
  meanwhile?: Meanwhile;
  /** The fields arrived and only a photograph was refused. */
  stored?: boolean;
}

/** What became of a try: with the office, waiting still, or refused. */
export type Tried = Arrived | "away" | Refusal;
interface Arrived {
  /** Where its writer is led. */
  next: string | undefined;
}

/** What the office says of what it was sent. */
interface Said extends Partial<Refusal> {
  message?: string;
  /** Where photographs of what was written down go. */
  photosTo?: string;
  next?: string;
  /** A problem document, from where photographs go. */
  detail?: string;
}

/**
 * Sends what waits, oldest first; stops where there is no signal. Answers how many arrived. One page at a time: two that
 * sent the same would each hear another answer.
 */
export const sendWaiting = (who: string): Promise<number> =>
  alone(async () => {
    let arrived = 0;
    for (const one of await waitingOf(who)) {
      if (one.refused !== null) continue;
      const tried = await sendOne(one);
      if (tried === "away") break;
      if ("next" in tried) arrived += 1;
    }
    return arrived;
  }, 0);

/** Sends one that was just kept, while its writer looks on. */
export const sendNow = (one: Waiting): Promise<Tried> => alone(() => sendOne(one), "away");

async function alone<T>(work: () => Promise<T>, otherwise: T): Promise<T> {
  return navigator.locks.request("pith-waiting", { ifAvailable: true }, async (lock) =>
    lock === null ? otherwise : work(),
  );
}

async function sendOne(one: Waiting): Promise<Tried> {
  const refuse = async (how: Refusal): Promise<Refusal> => {
    await change(one.key, how);
    return how;
  };
  let { photosTo, photos = [] } = one;
  let next: string | undefined;
  if (photosTo === undefined) {
    const answer = await post(one.url, new URLSearchParams(one.fields), FORM_MS, {
      accept: "application/json",
    });
    if (answer === null) return "away";
    const said = await saidIn(answer);
    const refused = answer.ok ? said.refused : (said.message ?? `${answer.status}`);
    if (refused !== undefined) {
      const { lead, problems, meanwhile } = said;
      return refuse({ refused, lead, problems, meanwhile });
    }
    photosTo = said.photosTo;
    next = said.next;
    if (photos.length > 0) {
      if (photosTo === undefined) return refuse({ refused: said.message ?? "" });
      await change(one.key, { photosTo });
    }
  }
  while (photosTo !== undefined) {
    const [photo, ...rest] = photos;
    if (!photo) break;
    const answer = await post(photosTo, photo.picture, PHOTO_MS, { "idempotency-key": photo.key });
    if (answer === null) return "away";
    if (!answer.ok) {
      const { detail = `${answer.status}` } = await saidIn(answer);
      return refuse({ refused: detail, stored: true });
    }
    photos = rest;
    await change(one.key, { photos });
  }
  await letGo(one.key);
  return { next };
}

/** Null where nobody answered who could take it: no signal, a fault that passes, somebody signed out. */
async function post(
  url: string,
  body: BodyInit,
  ms: number,
  headers: HeadersInit = {},
): Promise<Response | null> {
  try {
    const answer = await fetch(url, { method: "POST", body, headers, signal: AbortSignal.timeout(ms) });
    // A hotspot that wants to be signed in to answers too, with a page: nothing has arrived by that.
    if (answer.ok && !answer.headers.get("content-type")?.includes("json")) return null;
    reached();
    return answer.redirected || answer.status >= 500 || answer.status === 401 ? null : answer;
  } catch {
    missed();
    return null;
  }
}

const saidIn = (answer: Response): Promise<Said> => answer.json().catch(() => ({}));
