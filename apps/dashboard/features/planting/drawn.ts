import { type Advisory, type AdvisoryDetail, adviceRoutes, type Draft } from "@pith/contract";
import { call } from "../../server/api.ts";
import { allAdvisories } from "../advice/allAdvisories.ts";

/** What a rule says now of a planting: its draft or, where nothing has changed since it was issued, that advice. */
export interface Drawn {
  ruleId: string;
  decision: string;
  answer: AdvisoryDetail["answerOfRule"];
  /** Where the whole advice can be read. */
  href: string;
}

/** Rules whose windows are a planting's own days; what is due to soil and shed stands with its advice. */
export const WINDOW_RULES = ["sow-by", "hardening", "set-out", "topping", "ripe"];

/** Rules whose whole answers are drawn: stages, cold nights, and windows. */
const DRAWN_RULES = ["stage", "cold-record", ...WINDOW_RULES];

const GONE: readonly Advisory["status"][] = ["withdrawn", "superseded", "expired"];

/** The drawing reads whole answers; of everything else on the page the headline is enough. */
export async function readDrawn(officeId: string, plantingId: string, drafts: Draft[]): Promise<Drawn[]> {
  const drawn = await Promise.all(
    DRAWN_RULES.map(async (ruleId): Promise<Drawn | null> => {
      const draft = drafts.find((one) => one.ruleId === ruleId);
      if (draft) {
        const params = { officeId, draftId: draft.id };
        const { answer, said } = await call(adviceRoutes.getDraft, { params });
        return { ruleId, answer, decision: said.decision, href: `/drafts/${draft.id}` };
      }
      const advisories = await allAdvisories(officeId, { plantingId, ruleId });
      const issued = advisories.find(({ status }) => !GONE.includes(status));
      if (!issued) return null;
      const params = { officeId, advisoryId: issued.id };
      const { answerOfRule: answer, said } = await call(adviceRoutes.getAdvisory, { params });
      return { ruleId, answer, decision: said.decision, href: `/issued/${issued.id}` };
    }),
  );
  return drawn.filter((one) => one !== null);
}
