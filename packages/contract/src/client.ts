import type { z } from "@hono/zod-openapi";
import type { Problem } from "./problem.ts";

/** The shape that every route of ours has. */
interface AnyRoute {
  method: string;
  path: string;
  request?: {
    params?: unknown;
    query?: unknown;
    body?: { content?: Record<string, { schema?: unknown }> };
  };
  responses: Record<number, unknown>;
}

type InputOf<S> = S extends z.ZodType ? z.input<S> : never;
type OutputOf<S> = S extends z.ZodType ? z.output<S> : never;
type ParamsOf<R> = R extends { request: { params: infer S } }
  ? { params: InputOf<S> }
  : { params?: undefined };
type QueryOf<R> = R extends { request: { query: infer S } } ? { query?: InputOf<S> } : { query?: undefined };
type JsonOf<R> = R extends { request: { body: { content: { "application/json": { schema: infer S } } } } }
  ? { json: InputOf<S> }
  : { json?: undefined };
type JsonIn<T> = T extends { content: { "application/json": { schema: infer S } } } ? OutputOf<S> : never;
type AnswerOf<R> = R extends { responses: infer A }
  ? (A extends { 200: infer T } ? JsonIn<T> : never) | (A extends { 201: infer T } ? JsonIn<T> : never)
  : never;

export type CallInput<R> = ParamsOf<R> &
  QueryOf<R> &
  JsonOf<R> & { ifMatch?: string; idempotencyKey?: string };

/** An answer that was a problem document. */
export class ApiProblem extends Error {
  readonly problem: Problem;
  constructor(problem: Problem) {
    super(problem.detail ?? problem.title);
    this.name = "ApiProblem";
    this.problem = problem;
  }
}

export interface ClientOptions {
  /** Where the API answers, without a slash at the end. */
  origin: string;
  /** Sent with every call, e.g. the session cookie. */
  headers?: Record<string, string>;
  fetch?: typeof fetch;
}

/**
 * A typed client: `client.call(getFarm, { params: { officeId, farmId } })`. Throws {@link ApiProblem} for a problem
 * document, and the fetch error itself where the API cannot be reached.
 */
export function createClient(options: ClientOptions) {
  const send = options.fetch ?? fetch;

  async function answerOf<R extends AnyRoute>(route: R, input: CallInput<R>) {
    const {
      params,
      query,
      json,
      ifMatch,
      idempotencyKey = newKey(),
    } = input as {
      params?: Record<string, unknown>;
      query?: Record<string, unknown>;
      json?: unknown;
      ifMatch?: string;
      idempotencyKey?: string;
    };
    const path = route.path.replace(/\{(\w+)\}/g, (_, name) => encodeURIComponent(String(params?.[name])));
    const search = new URLSearchParams();
    for (const [name, value] of Object.entries(query ?? {})) {
      if (value !== undefined) search.set(name, String(value));
    }
    const keyed = route.method === "post" && path.startsWith("/v1/offices/");
    const ask = () =>
      send(url, {
        method: route.method.toUpperCase(),
        headers,
        ...(json !== undefined && { body: JSON.stringify(json) }),
      });
    const url = `${options.origin}${path}${search.size ? `?${search}` : ""}`;
    const headers = {
      ...options.headers,
      ...(keyed && { "idempotency-key": idempotencyKey }),
      ...(json !== undefined && { "content-type": "application/json" }),
      ...(ifMatch !== undefined && { "if-match": ifMatch }),
    };
    // A connection that breaks may have carried the request. With its key it is not done twice, and reading never is.
    const response = await (keyed || route.method === "get" ? ask().catch(ask) : ask());
    if (!response.ok) throw new ApiProblem(await problemIn(response));
    // The server answers through the same schema, so the shape is what the route says.
    return { value: (await response.json()) as AnswerOf<R>, tag: response.headers.get("etag") };
  }

  return {
    call: async <R extends AnyRoute>(route: R, input: CallInput<R>): Promise<AnswerOf<R>> =>
      (await answerOf(route, input)).value,
    /** The same with the tag of what was read, to be named as `ifMatch` by the change that is made to it. */
    tagged: answerOf,
  };
}

const newKey = (): string =>
  Array.from(globalThis.crypto.getRandomValues(new Uint8Array(16)), (b) =>
    b.toString(16).padStart(2, "0"),
  ).join("");

export type Client = ReturnType<typeof createClient>;

async function problemIn(response: Response): Promise<Problem> {
  const fallback = { type: "about:blank", title: response.statusText || "Error", status: response.status };
  try {
    const read = (await response.json()) as Partial<Problem>;
    return { ...fallback, ...read };
  } catch {
    return fallback;
  }
}
