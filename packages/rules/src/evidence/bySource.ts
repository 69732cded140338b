import { quantities } from "../quantities/index.ts";
import { type Choice, choices } from "./choices.ts";
import { claims, sources } from "./register.ts";
import type { Claim, Grade, Source } from "./types.ts";
import { GRADES } from "./types.ts";

/** What a claim says against one of this source's, and which claim that is. */
export interface Conflict {
  claim: string;
  with: Claim;
}

/** Everything the register knows about one source: what it is, what is drawn from it, and what speaks against that. */
export interface SourcePage {
  source: Source;
  /** Each with design, size, effect, grade, limits and what would change the default. */
  claims: Claim[];
  /** Rules that lean on it, in the register's order. */
  rules: string[];
  /** The best grade among its claims; null where no claim names it and only an equation or a table does. */
  bestGrade: Grade | null;
  conflicts: Conflict[];
  /** Computations that take an equation or a number from it, and where in it. */
  computations: { id: string; question: string; locator: string | null }[];
  /** Choices of the office in which one of its claims speaks for an option. */
  choices: { choice: Choice; options: string[] }[];
}

/** Claims that name this source, in the register's order. */
export const claimsOfSource = (key: string): Claim[] =>
  [...claims.values()].filter((claim) => claim.sources.some((s) => s.key === key));

/** The page of one source; undefined for an id the register does not hold. */
export function sourcePage(key: string): SourcePage | undefined {
  const source = sources.get(key);
  if (!source) return undefined;
  const own = claimsOfSource(key);
  return {
    source,
    claims: own,
    rules: [...new Set(own.map((c) => c.rule))],
    bestGrade: GRADES.find((grade) => own.some((c) => c.grade === grade)) ?? null,
    conflicts: own.flatMap((claim) => conflictsOf(claim)),
    computations: computationsOf(key),
    choices: choicesOf(own.map((c) => c.id)),
  };
}

const conflictsOf = (claim: Claim): Conflict[] =>
  claim.conflicts.flatMap((id) => {
    const other = claims.get(id);
    return other ? [{ claim: claim.id, with: other }] : [];
  });

const choicesOf = (claimIds: string[]): SourcePage["choices"] =>
  choices.flatMap((choice) => {
    const options = choice.options.filter((o) => o.claims.some((id) => claimIds.includes(id)));
    return options.length > 0 ? [{ choice, options: options.map((o) => o.id) }] : [];
  });

const computationsOf = (key: string): SourcePage["computations"] =>
  Object.values(quantities).flatMap(({ id, question, sources: named }) => {
    const cited = named.find((s) => s.key === key);
    return cited ? [{ id, question, locator: cited.locator ?? null }] : [];
  });
