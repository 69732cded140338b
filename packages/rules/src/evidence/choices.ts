/**
 * Where published sources conflict and an office may say which reading it follows. What it chose is in the settings of
 * every state, so the ledger keeps which was in force.
 */

export const CHOICE_IDS = [
  "setting-depth.leggy",
  "topping.default",
  "stage.base-temperature",
  "rotation.interval",
] as const;
export type ChoiceId = (typeof CHOICE_IDS)[number];

export interface Choice {
  id: ChoiceId;
  rule: string;
  /** What is to be decided, for the office. */
  question: string;
  /** `claims` are ids of the evidence register that speak for it. */
  options: { id: string; says: string; claims: string[] }[];
  /** Id of the option that holds where nobody chose. */
  default: string;
}

export const choices: Choice[] = [];

/** The option in force; an unknown one counts as not chosen. */
export function optionOf(
  id: ChoiceId,
  settings: { choices?: Partial<Record<ChoiceId, string>> | undefined },
): string {
  const choice = choices.find((c) => c.id === id);
  if (!choice) throw new Error(`no choice ${id}`);
  const chosen = settings.choices?.[id];
  return choice.options.some((o) => o.id === chosen) ? (chosen as string) : choice.default;
}
