import type { FieldProblem } from "@pith/contract";

export type ErrorCode = "not-found" | "forbidden" | "invalid" | "conflict" | "changed";

/** What a verb could not do, in one sentence. A DomainError of the rules passes through beside it. */
export class ServiceError extends Error {
  readonly code: ErrorCode;
  readonly problems: FieldProblem[] | undefined;
  constructor(code: ErrorCode, message: string, problems?: FieldProblem[]) {
    super(message);
    this.name = "ServiceError";
    this.code = code;
    this.problems = problems;
  }
}

/** Another office's row, another farmer's row and a row that is not there: the same answer, so that nobody learns which. */
export const notFound = (what: string): ServiceError =>
  new ServiceError("not-found", `There is no such ${what}.`);

/** Where a row must be there. */
export function found<T>(row: T | undefined, what: string): T {
  if (row === undefined) throw notFound(what);
  return row;
}
