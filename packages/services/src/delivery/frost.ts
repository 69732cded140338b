import type { Answer } from "@pith/rules";

/**
 * Warnings that cannot wait for the morning, by the rules' own decisions: the night that comes is too cold for plants as
 * they stand. (A heater that is too small is a matter of the season, and waits.)
 */
const COLD_NIGHTS: Readonly<Record<string, readonly string[]>> = {
  "cold-tonight": ["heat-tonight", "bring-in", "cover-tonight", "frost-tonight"],
};

export const warnsOfFrost = (answer: Extract<Answer, { kind: "advice" }>): boolean =>
  COLD_NIGHTS[answer.rule.id]?.includes(answer.decision.code) ?? false;
