import {
  DomainError,
  type FieldProblem,
  type Problem,
  type ProblemName,
  problemText,
  problemTypes,
  typeOf,
  usualProblem,
} from "@pith/contract";
import { ClaimLost, type ErrorCode, ServiceError } from "@pith/services";
import type { Context } from "hono";
import { HTTPException } from "hono/http-exception";
import { errorForLog } from "./withoutValues.ts";

const STATUS = {
  "not-found": 404,
  forbidden: 403,
  invalid: 422,
  conflict: 409,
  changed: 412,
} as const satisfies Record<ErrorCode, number>;

/** A problem document (RFC 9457) as a response. What it is called follows from the status, unless it says more. */
export function problem(
  c: Context,
  status: number,
  detail?: string,
  errors?: Problem["errors"],
  name: ProblemName | undefined = usualProblem(status),
): Response {
  const say = sayer(c);
  const document: Problem = {
    type: name ? typeOf(name) : "about:blank",
    title: say(name ? problemTypes[name].title : "Error"),
    status,
    ...(detail && { detail: say(detail) }),
    requestId: c.get("requestId"),
    ...(errors && errors.length > 0 && { errors }),
  };
  return new Response(JSON.stringify(document), {
    status,
    headers: { "content-type": "application/problem+json; charset=utf-8" },
  });
}

/** In the language that the caller reads. */
const sayer = (c: Context) => (text: string) => problemText(text, c.get("language") === "es" ? "es" : "en");

function inWords(problems: FieldProblem[], c: Context): FieldProblem[] {
  const say = sayer(c);
  return problems.map((problem) => ({ ...problem, message: say(problem.message) }));
}

/** What is wrong with fields, each named. */
export function refusal(c: Context, problems: FieldProblem[]): Response {
  const said = new DomainError(inWords(problems, c));
  return problem(c, 422, said.message, said.problems);
}

/** Known errors keep their message; any other is logged whole and answered with the request id only. */
export function problemOf(
  error: unknown,
  c: Context,
  log: (line: Record<string, unknown>) => void,
): Response {
  if (error instanceof DomainError) return refusal(c, error.problems);
  if (error instanceof ServiceError) {
    return problem(c, STATUS[error.code], error.message, error.problems && inWords(error.problems, c));
  }
  if (error instanceof ClaimLost) return problem(c, 409, error.message, undefined, "under-way");
  if (error instanceof HTTPException) {
    const refusal = error.res ?? problem(c, error.status, error.message);
    if (error.status === 429 && !error.res) refusal.headers.set("retry-after", "60");
    return refusal;
  }
  log({
    level: "error",
    requestId: c.get("requestId"),
    ...errorForLog(error),
  });
  return problem(c, 500);
}
