import { z } from "@hono/zod-openapi";

/** What the rules say of wrong input becomes the `errors` of a problem document. */
export { DomainError, problemsOf } from "@pith/rules";

/** One field that was wrong, as every problem document lists it. */
export const FieldProblemSchema = z.object({
  field: z.string(),
  message: z.string(),
  accepted: z.string().optional(),
  received: z.unknown().optional(),
});

/** RFC 9457 problem document. */
export const ProblemSchema = z
  .object({
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
