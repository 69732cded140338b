import { z } from "zod";
import { int, word } from "../core/fields.ts";
import { rules } from "../rules/index.ts";
import { GRADES, SOURCE_KINDS } from "./types.ts";

/**
 * A source that an office holds itself: a regional bulletin, a neighbour station's report, the result of its own trial.
 * It stands beside the published ones with the same particulars, so that a reader can weigh it the same way.
 */

const words = (meaning: string, most: number) => z.string().trim().min(1).max(most).meta({ meaning });

export const OfficeSourceSchema = z
  .strictObject({
    id: z
      .string()
      .max(64)
      .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, "must be small letters, digits and single hyphens"),
    cite: words("who, when, what, where", 500),
    kind: word("kind of source", SOURCE_KINDS),
    year: int("year it appeared", "year", 1800, 2200).optional(),
    url: z
      .url({ protocol: /^https?$/, error: "must be an address that begins with http:// or https://" })
      .max(500)
      .optional(),
    /** Which rule it speaks about. */
    rule: z.string().max(64),
    finding: words("what was found", 1000),
    design: words("design or kind of statement", 300),
    size: words("trials, years, sites, as the source says", 300).nullable(),
    effect: words("how large, with its interval", 500).nullable(),
    grade: word("how far it carries", GRADES),
    limits: words("where it does not apply", 1000),
    wouldChange: words("what would change one's mind", 1000),
    /** The office's own trial of which this is the result. */
    trialId: z.string().min(1).max(64).optional(),
  })
  .superRefine((source, context) => {
    const wrong = (field: keyof typeof source, message: string, accepted: string) =>
      context.addIssue({ code: "custom", path: [field], message, params: { accepted } });
    const ids = rules.map((r) => r.id);
    if (!ids.includes(source.rule)) wrong("rule", "must be a rule's id", ids.join(", "));
    if ((source.kind === "practice") !== (source.grade === "practice"))
      wrong("grade", "is practice for practice, and for nothing else", "practice for the kind practice");
    if (source.trialId === undefined) return;
    if (source.kind !== "trial") wrong("kind", "must be trial where a trial is named", "trial");
    // What held once on one farm has not been repeated.
    if (source.grade === "strong")
      wrong("grade", "of one trial on one farm is moderate at most", "moderate, weak");
  });
export type OfficeSource = z.infer<typeof OfficeSourceSchema>;
