import * as contract from "@pith/contract";
import { type ProblemName, problemTypes, typeOf, usualProblem } from "@pith/contract";
import { exampleOf, type Schema } from "./exampleOf.ts";
import { WHOLE } from "./words.ts";

/** What holds for every operation alike is written into the document here, and not into each route. */

interface Media {
  schema?: Schema;
  example?: unknown;
}
interface Answer {
  description?: string;
  headers?: Record<string, unknown>;
  content?: Record<string, Media>;
}
interface Operation {
  operationId?: string;
  parameters?: object[];
  requestBody?: { content?: Record<string, Media> };
  responses?: Record<string, Answer>;
}
interface Document {
  paths?: Record<string, unknown>;
  components?: { schemas?: Record<string, unknown> };
}

const METHODS = ["get", "post", "patch", "put", "delete"] as const;
const text = (description: string) => ({ description, schema: { type: "string" } });
const inHeader = (name: string, description: string) => ({
  name,
  in: "header",
  required: false,
  description,
  schema: { type: "string" },
});

/** The document with a name for each operation, its common headers, and an example of each body and answer. */
export function complete<D extends Document>(document: D): D {
  const schemas = (document.components?.schemas ?? {}) as Record<string, Schema>;
  const ids = operationIds();
  for (const [path, item] of Object.entries(document.paths ?? {})) {
    for (const method of METHODS) {
      const operation = (item as Record<string, Operation | undefined>)[method];
      if (!operation) continue;
      operation.operationId = ids.get(`${method} ${path}`);
      addHeaders(operation, method, path);
      for (const media of Object.values(operation.requestBody?.content ?? {})) give(media, schemas);
      for (const [status, answer] of Object.entries(operation.responses ?? {})) {
        answer.headers = { ...answer.headers, ...headersOf(Number(status), method, path) };
        for (const [type, media] of Object.entries(answer.content ?? {})) {
          const name = type === "application/problem+json" ? usualProblem(Number(status)) : undefined;
          if (name) media.example = problemExample(name);
          else if (operation.operationId && WHOLE[operation.operationId])
            media.example = WHOLE[operation.operationId];
          else give(media, schemas);
        }
      }
    }
  }
  return document;
}

function give(media: Media, schemas: Record<string, Schema>): void {
  if (media.schema && media.example === undefined) media.example = exampleOf(media.schema, schemas);
}

const inOffice = (path: string) => path.startsWith("/v1/offices/");
const EDIT = /\/(?:settings|farms\/\{farmId\}|(?:sites|valves|beds|structures|plantings|materials)\/\{id\})$/;

function addHeaders(operation: Operation, method: string, path: string): void {
  if (!inOffice(path)) return;
  const added =
    method === "post"
      ? [inHeader("Idempotency-Key", "The same request with the same key is done once, for 24 hours")]
      : method === "get"
        ? [inHeader("If-None-Match", "Tags of what the caller has; 304 where one of them still stands")]
        : method === "patch" && EDIT.test(path)
          ? [inHeader("If-Match", "The tag of what was read; 412 where something else stands by now")]
          : [];
  operation.parameters = [...(operation.parameters ?? []), ...added];
  if (method === "get" && operation.responses) {
    operation.responses["304"] = { description: "What the caller has still stands" };
  }
}

function headersOf(status: number, method: string, path: string): Record<string, unknown> {
  return {
    "x-request-id": text("Names this request in the log and in problems"),
    ...(method === "get" &&
      inOffice(path) &&
      (status === 200 || status === 304) && { etag: text("Tag of these bytes") }),
    ...(inOffice(path) && {
      ratelimit: text("What is left of the minute, as draft-ietf-httpapi-ratelimit-headers writes it"),
      "ratelimit-policy": text("How much a minute holds"),
    }),
    ...((status === 429 || status === 409) && {
      "retry-after": text("Seconds to wait, where waiting helps"),
    }),
  };
}

function problemExample(name: ProblemName) {
  const { status, title, help } = problemTypes[name];
  return {
    type: typeOf(name),
    title,
    status,
    detail: help,
    requestId: "6f1c6a52-3d1f-4c0e-9a54-8f2c1d0b7e11",
    ...(name === "invalid" && {
      errors: [
        { field: "latitudeDeg", message: "must be at most 90", accepted: "at most 90", received: 120 },
      ],
    }),
  };
}

/** Each operation goes by the name that its route has in the contract: `getRound`, and `addSites` for `sites.add`. */
function operationIds(): Map<string, string> {
  const ids = new Map<string, string>();
  const take = (route: unknown, id: string) => {
    if (typeof route !== "object" || route === null || !("path" in route) || !("method" in route))
      return false;
    ids.set(`${route.method} ${route.path}`, id);
    return true;
  };
  for (const routes of Object.values(contract)) {
    if (typeof routes !== "object" || routes === null) continue;
    for (const [name, route] of Object.entries(routes)) {
      if (take(route, name) || typeof route !== "object" || route === null) continue;
      for (const [verb, one] of Object.entries(route))
        take(one, `${verb}${name[0]?.toUpperCase()}${name.slice(1)}`);
    }
  }
  return ids;
}
