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

export type CallInput<R> = ParamsOf<R> & QueryOf<R> & JsonOf<R>;

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
  return {
    async call<R extends AnyRoute>(route: R, input: CallInput<R>): Promise<AnswerOf<R>> {
      const { params, query, json } = input as {
        params?: Record<string, unknown>;
        query?: Record<string, unknown>;
        json?: unknown;
      };
      const path = route.path.replace(/\{(\w+)\}/g, (_, name) => encodeURIComponent(String(params?.[name])));
      const search = new URLSearchParams();
      for (const [name, value] of Object.entries(query ?? {})) {
        if (value !== undefined) search.set(name, String(value));
      }
      const response = await send(`${options.origin}${path}${search.size ? `?${search}` : ""}`, {
        method: route.method.toUpperCase(),
        headers: { ...options.headers, ...(json !== undefined && { "content-type": "application/json" }) },
        ...(json !== undefined && { body: JSON.stringify(json) }),
      });
      if (!response.ok) throw new ApiProblem(await problemIn(response));
      // The server answers through the same schema, so the shape is what the route says.
      return (await response.json()) as AnswerOf<R>;
    },
  };
}

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
