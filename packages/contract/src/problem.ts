import { z } from "@hono/zod-openapi";

/** What the rules say of wrong input becomes the `errors` of a problem document. */
export { DomainError, problemsOf, problemText } from "@pith/rules";

/** One field that was wrong, as every problem document lists it. */
export const FieldProblemSchema = z.object({
  field: z.string(),
  message: z.string(),
  accepted: z.string().optional(),
  received: z.unknown().optional(),
});

/** What can be wrong, under names that stay. Each has its page at `/v1/problems/<name>`. */
export const problemTypes = {
  unreadable: {
    status: 400,
    title: "The request could not be read",
    help: "The body is not JSON, or it ended too early. Send it again as it should be.",
  },
  "signed-out": {
    status: 401,
    title: "Nobody is signed in",
    help: "Sign in, and send the session's cookie.",
  },
  forbidden: {
    status: 403,
    title: "Not allowed",
    help: "You are signed in, but your place in the office does not allow this; or a page from elsewhere called.",
  },
  "not-found": {
    status: 404,
    title: "Not here",
    help: "There is nothing under that address, or nothing that you may see. Both are answered alike.",
  },
  "not-acceptable": {
    status: 406,
    title: "Not in that form",
    help: "What `Accept` lists is not what is answered here. Most is answered as application/json.",
  },
  conflict: {
    status: 409,
    title: "Changed in the meantime",
    help: "Something is there already, or was changed since you read it. Read it again and decide again.",
  },
  "under-way": {
    status: 409,
    title: "Being done just now",
    help: "Another request with the same Idempotency-Key is at it. Ask again after `Retry-After` with the same key.",
  },
  "answer-lost": {
    status: 409,
    title: "Done, but the answer is lost",
    help: "The server fell after the change was stored and before its answer was. The change stands. Read what is there.",
  },
  changed: {
    status: 412,
    title: "Not what you read",
    help: "`If-Match` names another version than the one that stands. Read it again, and make your change to that.",
  },
  "too-large": { status: 413, title: "Too large", help: "The body is larger than is accepted here." },
  "not-json": { status: 415, title: "Not JSON", help: "Send the body as application/json." },
  invalid: {
    status: 422,
    title: "A field is outside what is accepted",
    help: "`errors` lists each field with what came and what would be accepted. Nothing was stored.",
  },
  "key-reused": {
    status: 422,
    title: "This key came with another request",
    help: "An Idempotency-Key belongs to one request for a day. Take a new one for a new request.",
  },
  "too-many": {
    status: 429,
    title: "Too many requests",
    help: "Wait as many seconds as `Retry-After` says.",
  },
  broken: {
    status: 500,
    title: "Something broke on our side",
    help: "It is written down under the request id. Asking again does no harm if you sent an Idempotency-Key.",
  },
} as const;
export type ProblemName = keyof typeof problemTypes;
export const problemNames = Object.keys(problemTypes) as [ProblemName, ...ProblemName[]];

/** What a status means where nothing more is said. */
export const usualProblem = (status: number): ProblemName | undefined =>
  problemNames.find((name) => problemTypes[name].status === status);

/** The stable URI of a kind of problem: a path at the API's own address. */
export const typeOf = (name: ProblemName): string => `/v1/problems/${name}`;

/** RFC 9457 problem document. */
export const ProblemSchema = z
  .object({
    /** `/v1/problems/<name>`: stays, and can be looked up. */
    type: z.string(),
    title: z.string(),
    status: z.number().int(),
    detail: z.string().optional(),
    requestId: z.string().optional(),
    errors: z.array(FieldProblemSchema).optional(),
  })
  .openapi("Problem");
export type Problem = z.infer<typeof ProblemSchema>;
export type FieldProblem = z.infer<typeof FieldProblemSchema>;
