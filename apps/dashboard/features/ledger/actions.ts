"use server";

import { adviceRoutes } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import { attempt } from "../../server/api.ts";
import { agentSeat } from "../../server/seat.ts";
import { problemWords } from "../forms/words.ts";
import type { Finding } from "./Check.tsx";

/** Walks the whole chain. */
export async function verify(): Promise<Finding> {
  const [{ officeId }, t] = await Promise.all([agentSeat(), getTranslations("ledger")]);
  const walked = await attempt((client) => client.call(adviceRoutes.verifyLedger, { params: { officeId } }));
  if (!walked.done) return failed(walked.problem);
  const { whole, entries, head, firstBroken, checkpoints } = walked.value;
  if (whole) {
    const fallen = checkpoints.filter((checkpoint) => !checkpoint.holds);
    const held = checkpoints.length - fallen.length;
    return {
      good: fallen.length === 0,
      text: t("whole", { entries }),
      details: [
        ...(head ? [t("head", { head })] : []),
        ...(held > 0 ? [t("checkpointsHold", { held })] : []),
        ...fallen.map(({ seq, why }) => t("checkpointFallen", { seq, why: why ?? "" })),
      ],
    };
  }
  const broken = firstBroken ? t("broken", { seq: firstBroken.seq }) : t("brokenSomewhere");
  return { good: false, text: broken, details: firstBroken ? [firstBroken.why] : [] };
}

/** Computes one entry again from its stored inputs. */
export async function replay(seq: number): Promise<Finding> {
  const [{ officeId }, t] = await Promise.all([agentSeat(), getTranslations("ledger")]);
  const again = await attempt((client) =>
    client.call(adviceRoutes.replayEntry, { params: { officeId, seq } }),
  );
  if (!again.done) return failed(again.problem);
  const { identical, cannot, differences } = again.value;
  if (cannot !== null) return { good: false, text: t("cannotReplay", { why: cannot }), details: [] };
  if (identical) return { good: true, text: t("identical", { seq }), details: [] };
  return {
    good: false,
    text: t("differs", { count: differences.length }),
    details: differences.map(({ path, stored, now }) =>
      t("difference", { path, stored: JSON.stringify(stored) ?? "", now: JSON.stringify(now) ?? "" }),
    ),
  };
}

async function failed(problem: { title: string; detail?: string }): Promise<Finding> {
  const words = await problemWords();
  const text = problem.title === "unreachable" ? words.unreachable : (problem.detail ?? problem.title);
  return { good: false, text, details: [] };
}
