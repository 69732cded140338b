import type { Said } from "@pith/contract";
import { type Answer, LANGUAGES, type Language, type Reader } from "@pith/rules";
import { sayAnswer } from "../saying/sayAnswer.ts";
import { canonicalText, hexOf, randomSalt, sha256Hex } from "./canonical.ts";

type Advice = Extract<Answer, { kind: "advice" }>;

/**
 * What the farmer reads, in every language that is offered, as it is kept beside the chain: it names the beds, which the
 * ledger does not, so the entry holds a salted hash of it. The salt lies beside the words and goes with them when they
 * are erased.
 */
type Rendered = { salt: string } & Record<string, Said | string>;

/** Says an advice in every language, cautions inside, and seals it. @throws where a caution would be left out */
export async function sealed(
  answer: Advice,
  reader: Reader,
  languages: readonly Language[] = LANGUAGES,
): Promise<{ stored: Record<string, unknown>; sha256: string }> {
  const said = languages.map((language) => [language, sayAnswer(answer, { ...reader, language })] as const);
  const rendered: Rendered = { ...Object.fromEntries(said), salt: hexOf(randomSalt()) };
  const fault = faultInRendering(rendered, answer.cautions, languages);
  if (fault) throw new Error(fault);
  return { stored: rendered, sha256: await sealOf(rendered) };
}

/** As it was issued: in the languages that were spoken then. */
interface Issued {
  id: string;
  version: number;
  severity: string;
  text: object;
}

/** What is wrong where a language that was said, or a caution in one of them, is not there word for word. */
export function faultInRendering(
  stored: Record<string, unknown>,
  cautions: readonly Issued[],
  languages: readonly string[],
): string | null {
  for (const language of languages) {
    const said = stored[language] as Said | undefined;
    if (!said) return `what was said in "${language}" is missing`;
    for (const { id, version, severity, text } of cautions) {
      const words = (text as Record<string, string>)[language];
      const there = said.cautions?.some(
        (c) => c.id === id && c.version === version && c.severity === severity && c.text === words,
      );
      if (words === undefined || !there) return `the caution ${id} is missing in "${language}"`;
    }
  }
  return null;
}

export const sealHolds = async (stored: Record<string, unknown>, sha256: string | null): Promise<boolean> =>
  (await sealOf(stored as Rendered)) === sha256;

/** The words as they were issued, in the language that is read, else in the first that is there. */
export function saidIn(stored: Record<string, unknown>, language: Language = "en"): Said {
  const first = Object.keys(stored).find((key) => key !== "salt");
  return (stored[language] ?? stored[first ?? ""]) as Said;
}

const sealOf = (rendered: Rendered): Promise<string> => sha256Hex(canonicalText(rendered));
