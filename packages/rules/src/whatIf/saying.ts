import type { Chart } from "../core/rule.ts";
import { Working } from "../core/working.ts";
import type { Message } from "../text/message.ts";

/** What a rule says about one choice, beside its own decision: in words, with how it was reckoned and what can be drawn. */
export interface Saying {
  said: Message[];
  working: Working;
  charts: Chart[];
}

export const saying = (said: Message[] = [], more: Partial<Saying> = {}): Saying => ({
  said,
  working: new Working(),
  charts: [],
  ...more,
});
