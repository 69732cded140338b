import type { Analysis } from "../../trials/analyse.ts";
import type { Verdict } from "../../trials/verdict.ts";

/** A response with what it says. */
export interface Judged {
  analysis: Analysis;
  verdict: Verdict;
}
