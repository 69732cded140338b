import { adviceRoutes } from "@pith/contract";
import { call } from "../../server/api.ts";
import { codesOf } from "./form.ts";

/** Tells one night's warning from the next; nobody would set a bound to it. */
const WHICH_NIGHT = "night";

/** So many drafts of a rule are read for the names of its amounts. */
const A_FEW = 3;

/** What a rule can decide, and the amounts that its drafts on this farm name, for an order's form. */
export async function seenOf(officeId: string, farmId: string, ruleId: string) {
  const { drafts: mine } = await call(adviceRoutes.getRound, {
    params: { officeId },
    query: { farmId, ruleId, setAside: "yes" },
  });
  const read = await Promise.all(
    mine.slice(0, A_FEW).map(({ id }) => call(adviceRoutes.getDraft, { params: { officeId, draftId: id } })),
  );
  const amounts = read
    .flatMap(({ answer }) => (answer.kind === "advice" ? Object.keys(answer.amounts) : []))
    .filter((name) => name !== WHICH_NIGHT);
  return {
    codes: codesOf(
      ruleId,
      mine.map((draft) => draft.decisionCode),
    ),
    amounts: [...new Set(amounts)],
  };
}
