/** How a source was read. `seen`: in the publication; `secondary`: quoted elsewhere; `memory`: not re-read. */
export type SourceStatus = "seen" | "secondary" | "memory" | "practice";

export const SOURCE_KINDS = [
  "standard",
  "handbook",
  "trial",
  "review",
  "extension",
  "laboratory",
  "data",
  "practice",
] as const;
export type SourceKind = (typeof SOURCE_KINDS)[number];

/** A published source, or common practice of the trade where there is none. */
export interface Source {
  id: string;
  /** Full citation. */
  cite: string;
  kind: SourceKind;
  year?: number;
  url?: string;
  doi?: string;
  status: SourceStatus;
}

/** How far a finding carries, in words a grower can weigh. What earns which: docs/agronomy/evidence.md. */
export const GRADES = ["strong", "moderate", "weak", "practice"] as const;
export type Grade = (typeof GRADES)[number];

/** One thing a rule leans on: what was found, where, how large, how far it carries, and what speaks against it. */
export interface Claim {
  /** `<rule id>.<name>`. */
  id: string;
  rule: string;
  finding: string;
  sources: { key: string; locator?: string }[];
  /** Trial design, method or kind of statement. */
  design: string;
  /** Number of trials, years, sites, as stated; `null` where the source does not say. */
  size: string | null;
  effect: string | null;
  grade: Grade;
  /** Where it does not apply. */
  limits: string;
  /** Ids of claims that say otherwise; they stand side by side. */
  conflicts: string[];
  /** What would change the default. */
  wouldChange: string;
}

/** A claim's words: what another language says in their place. */
export type ClaimWords = Pick<Claim, "finding" | "design" | "size" | "effect" | "limits" | "wouldChange">;
