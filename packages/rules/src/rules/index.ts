import type { Rule } from "../core/rule.ts";

/** Every rule, in the order of the catalogue. */
export const rules: Rule[] = [];
