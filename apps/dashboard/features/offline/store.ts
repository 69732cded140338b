import { createStore, del, entries, get, set } from "idb-keyval";
import type { Meanwhile } from "../forms/plan.ts";

/** What a farmer wrote down where there was no signal, kept on the phone until the office has it. */

export interface Waiting {
  /** The same through every try: what arrived and was not heard of is not written down twice. */
  key: string;
  /** Whose it is: another person at the same phone neither sees nor sends it. */
  who: string;
  url: string;
  /** Where its form stands, to change it there. */
  page: string;
  label: string;
  at: string;
  fields: [string, string][];
  /** What the office said against it; it then waits for its writer. */
  refused: string | null;
  lead?: string | null;
  /** The same, field by field. */
  problems?: Record<string, string>;
  /** What another said of the same meanwhile: its writer chooses. */
  meanwhile?: Meanwhile;
  /** Sent after the fields, each once. */
  photos?: KeptPhoto[];
  /** Where its photographs go; known once the fields have arrived. */
  photosTo?: string;
}

export interface KeptPhoto {
  key: string;
  picture: Blob;
}

/** Made when first asked for: a server that writes the page has no such store. */
let made: ReturnType<typeof createStore> | undefined;
const store = () => {
  made ??= createStore("pith-waiting", "waiting");
  return made;
};

export const newKey = (): string =>
  [...crypto.getRandomValues(new Uint8Array(16))].map((byte) => byte.toString(16).padStart(2, "0")).join("");

/** What was let go while it was being sent does not come back. */
export async function change(key: string, how: Partial<Waiting>): Promise<void> {
  const before = await get<Waiting>(key, store());
  if (before) await set(key, { ...before, ...how }, store());
}

export const letGo = (key: string): Promise<void> => del(key, store());

export async function keep(one: Waiting): Promise<void> {
  await set(one.key, one, store());
  window.dispatchEvent(new Event("pith-kept"));
}

export async function waitingOf(who: string): Promise<Waiting[]> {
  const all = await entries<string, Waiting>(store());
  return all
    .map(([, one]) => one)
    .filter((one) => one.who === who)
    .sort((a, b) => (a.at < b.at ? -1 : 1));
}

/** The one that a page was opened to change, named in its address. */
export async function openedAgain(who: string): Promise<Waiting | undefined> {
  const key = new URLSearchParams(location.search).get("again");
  const one = key === null ? undefined : await get<Waiting>(key, store());
  return one?.who === who ? one : undefined;
}
