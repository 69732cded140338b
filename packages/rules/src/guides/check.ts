import type { FieldProblem } from "../core/errors.ts";
import { problemsOf } from "../core/fields.ts";
import { guides } from "./register.ts";
import { type Guide, GuideSchema } from "./schema.ts";

/**
 * Looks an office's own guide over before it is kept: every field that is wrong, what came, what would be accepted. Gaps
 * and overlaps are found at the printed precision.
 */
export function checkGuide(raw: unknown): { guide: Guide } | { problems: FieldProblem[] } {
  const parsed = GuideSchema.safeParse(raw);
  if (!parsed.success) return { problems: problemsOf(parsed.error, raw) };
  const { id, status } = parsed.data;
  const problems: FieldProblem[] = [];
  if (guides.has(id)) {
    const message = "is the id of a guide held here";
    problems.push({ field: "id", message, accepted: "an id of the office's own", received: id });
  }
  if (status !== "office") {
    const message = "must be office: the others are given by who read the publication";
    problems.push({ field: "status", message, accepted: "office", received: status });
  }
  return problems.length > 0 ? { problems } : { guide: parsed.data };
}
