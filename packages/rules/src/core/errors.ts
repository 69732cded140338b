/** One thing wrong with what came in: which field, what came, what would be accepted. */
export interface FieldProblem {
  /** Dotted path of the field, e.g. `soilTest.values.0.extractant`; empty for the whole input. */
  field: string;
  /** One sentence for people. */
  message: string;
  /** What would be accepted, e.g. `0 to 14`. */
  accepted?: string;
  /** What came, as it came. */
  received?: unknown;
}

/** Thrown by every public function for input outside its stated domain. Never for a missing measurement. */
export class DomainError extends Error {
  readonly problems: FieldProblem[];
  constructor(problems: FieldProblem[]) {
    super(problems.map((p) => (p.field ? `${p.field}: ${p.message}` : p.message)).join("; "));
    this.name = "DomainError";
    this.problems = problems;
  }
}

/** Throws a {@link DomainError} for one field. */
export function refuse(field: string, message: string, accepted?: string, received?: unknown): never {
  throw new DomainError([{ field, message, accepted, received }]);
}
