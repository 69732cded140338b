import { ApiProblem, type Client, createClient, type Problem } from "@pith/contract";
import { headers } from "next/headers";
import { notFound, redirect } from "next/navigation";
import { callerHeader } from "./caller.ts";
import { config } from "./config.ts";
import { languageAsked } from "./language.ts";
import { sessionCookieOf } from "./session.ts";

/** The API as this request's person. */
async function clientOfRequest(): Promise<Client> {
  const incoming = await headers();
  const { apiOrigin } = config();
  return createClient({
    origin: apiOrigin,
    headers: {
      cookie: sessionCookieOf(incoming.get("cookie")),
      origin: apiOrigin,
      "accept-language": await languageAsked(),
      ...(await callerHeader()),
    },
    fetch: (input, init) => fetch(input, { ...init, cache: "no-store" }),
  });
}

/** A page asks only by its address: what the API cannot read there does not exist either. */
const NOT_HERE = new Set([400, 404, 422]);

/** One call for a page: nobody signed in leads to the sign-in, what is not there to the not-found page. */
export const call: Client["call"] = async (route, input) => (await callTagged(route, input)).value;

/** The same with the tag of what was read, so that the form made of it changes nothing that somebody else has changed. */
export const callTagged: Client["tagged"] = async (route, input) => {
  const client = await clientOfRequest();
  try {
    return await client.tagged(route, input);
  } catch (error) {
    await leaveIfSignedOut(error);
    if (error instanceof ApiProblem && NOT_HERE.has(error.problem.status)) notFound();
    throw error;
  }
};

/** For a change to what was read under this tag. */
export const unlessChanged = (tag: string | null) => (tag === null ? {} : { ifMatch: tag });

export type Tried<T> = { done: true; value: T } | { done: false; problem: Problem };

/** One call for a form: a problem document is a value that is shown beside its field. */
export async function attempt<T>(work: (client: Client) => Promise<T>): Promise<Tried<T>> {
  const client = await clientOfRequest();
  try {
    return { done: true, value: await work(client) };
  } catch (error) {
    await leaveIfSignedOut(error);
    if (error instanceof ApiProblem) return { done: false, problem: error.problem };
    return { done: false, problem: { type: "about:blank", title: "unreachable", status: 503 } };
  }
}

async function leaveIfSignedOut(error: unknown): Promise<void> {
  if (!(error instanceof ApiProblem) || error.problem.status !== 401) return;
  const address = (await headers()).get("x-address") ?? "/";
  redirect(`/sign-in?next=${encodeURIComponent(address)}`);
}
