import { type createRoute, z } from "@hono/zod-openapi";
import { ProblemSchema } from "./problem.ts";

/** Small words that route files are written in. */

export const Id = z.uuid();
export const Day = z.iso.date();
export const Instant = z.iso.datetime({ offset: true });

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
  409: problem("Something changed in the meantime, or it is there already"),
  413: problem("Too large"),
  422: problem("Read, but a field is outside what is accepted"),
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

export const officePath = z.object({ officeId: Id });
export const farmPath = officePath.extend({ farmId: Id });

/** Nothing to say but that it was done. */
export const DoneSchema = z.object({ done: z.literal(true) });
