import { type createRoute, z } from "@hono/zod-openapi";
import { ProblemSchema } from "./problem.ts";

/** Small words that route files are written in. */

export const Id = z.uuid();

/** Years that a record can be of: what is outside is a slip of the pen, and year 0 is none to the database. */
const inTime = (said: string) => said >= "1800" && said < "2201";
/** Time zones reach from 12 hours behind to 14 ahead. */
const REAL_OFFSET = /(?:Z|-(?:0\d|1[0-2]):\d\d|\+(?:0\d|1[0-4]):\d\d)$/i;

export const Day = z.iso.date().refine(inTime, "must be a day of the years 1800 to 2200");
export const Instant = z.iso
  .datetime({ offset: true })
  .refine((said) => inTime(said) && REAL_OFFSET.test(said), "must be an instant of the years 1800 to 2200");

type Responses = Parameters<typeof createRoute>[0]["responses"];

const problem = (description: string) => ({
  description,
  content: { "application/problem+json": { schema: ProblemSchema } },
});

/** What any route may answer when it cannot do what was asked. */
export const problems = {
  400: problem("The request could not be read"),
  401: problem("Nobody is signed in"),
  403: problem("Signed in, but not allowed"),
  404: problem("Not here, or not yours"),
  406: problem("Not in the form that `Accept` lists"),
  409: problem("Something changed in the meantime, or it is there already"),
  412: problem("Not what `If-Match` names any more"),
  413: problem("Too large"),
  415: problem("Not JSON"),
  422: problem("Read, but a field is outside what is accepted"),
  429: problem("Too many requests; `retry-after` says when to ask again"),
  500: problem("Something broke on our side"),
} satisfies Responses;

/** What is also answered where attempts are counted. */
export const tooMany = {
  429: problem("Too many attempts; `retry-after` says when to try again"),
} satisfies Responses;

/** A JSON answer. */
export const json = <S extends z.ZodType>(schema: S, description: string) => ({
  description,
  content: { "application/json": { schema } },
});

/** A JSON request body. */
export const body = <S extends z.ZodType>(schema: S) => ({
  required: true,
  content: { "application/json": { schema } },
});

/** What is asked of a long list: how many, and after which row, as `next` of the page before said. */
export const page = (most: number) => ({
  limit: z.coerce.number().int().min(1).max(most).optional(),
  after: z.string().min(1).max(300).optional(),
});
/** What to ask `after`; null where this was the last page. */
export const next = z.string().nullable();

export const officePath = z.object({ officeId: Id });
export const farmPath = officePath.extend({ farmId: Id });

/** Nothing to say but that it was done. */
export const DoneSchema = z.object({ done: z.literal(true) });
