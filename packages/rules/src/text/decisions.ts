import { en } from "./en/index.ts";

/**
 * What a rule can decide, as its words are filed: `<rule>.decision.<code>`. For choosing among them beforehand, when no
 * answer is there to read them off.
 */
export const decisionsOf = (ruleId: string): string[] => {
  const prefix = `${ruleId}.decision.`;
  return Object.keys(en)
    .filter((key) => key.startsWith(prefix))
    .map((key) => key.slice(prefix.length));
};
