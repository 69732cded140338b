import messages from "../messages/en.json" with { type: "json" };

/** Every rule that has a name to choose it by. */
type RuleId = keyof typeof messages.rules;
export const RULES = Object.keys(messages.rules) as RuleId[];
export const isRule = (id: string): id is RuleId => RULES.some((one) => one === id);
