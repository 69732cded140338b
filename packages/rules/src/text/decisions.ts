import { decisions } from "./en/decisions.ts";
import { lookCloser } from "./en/look-closer.ts";
import { type Reader, renderWord } from "./render.ts";

/** Where a rule's codes are said: look-closer's are the causes that it names. */
const SAID: Record<string, string> = { ...decisions, ...lookCloser };
const places = (ruleId: string) => [`${ruleId}.code.`, `${ruleId}.cause.`];

/** What a rule can decide. For choosing among them beforehand, when no answer is there to read them off. */
export const decisionsOf = (ruleId: string): string[] =>
  places(ruleId).flatMap((place) =>
    Object.keys(SAID)
      .filter((key) => key.startsWith(place))
      .map((key) => key.slice(place.length)),
  );

/** A decision in a few words; one that another version of the rule made is said by its code. */
export function decisionWords(ruleId: string, code: string, reader: Reader): string {
  const key = places(ruleId)
    .map((place) => `${place}${code}`)
    .find((one) => one in SAID);
  return key ? renderWord(key, reader) : code;
}
