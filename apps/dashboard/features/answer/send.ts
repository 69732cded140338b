import { type Actual, type Advisory, adviceRoutes, type FarmDetail, farmRoutes } from "@pith/contract";
import type { UnitSystem } from "@pith/rules";
import { getTranslations } from "next-intl/server";
import { instantText } from "../../format/dates.ts";
import { attempt, call } from "../../server/api.ts";
import { farmerSeat } from "../../server/seat.ts";
import { readerZone } from "../../server/zone.ts";
import type { FormState } from "../forms/plan.ts";
import { problemState, readForm } from "../forms/read.ts";
import { problemWords } from "../forms/words.ts";
import { sendKeyOf } from "../offline/sentLater.ts";
import { answerLine } from "./line.ts";
import { actualPlan, actualSchema, actualStart } from "./plan.ts";

/** The farmer's answer: done with what was really done, not done or cannot with a reason. */
export async function sendAnswer(
  target: { advisoryId: string; units: UnitSystem },
  before: FormState,
  data: FormData,
): Promise<{ refused: FormState } | Record<string, never>> {
  const { officeId } = await farmerSeat();
  const { advisoryId, units } = target;
  const params = { officeId, advisoryId };
  const advisory = await call(adviceRoutes.getAdvisory, { params });
  const [farm, words, t] = await Promise.all([
    call(farmRoutes.getFarm, { params: { officeId, farmId: advisory.farmId } }),
    problemWords(),
    getTranslations("answer"),
  ]);
  const plan = actualPlan(advisory, farm);
  const read = readForm(plan, actualSchema, data, units, words, actualStart(advisory, farm));
  const refused = (problem: Parameters<typeof problemState>[2], problems = read.problems) => ({
    refused: problemState(before, { ...read, problems }, problem, plan, actualSchema, units, words),
  });

  const kind = String(data.get("kind") ?? "");
  const reason = String(data.get("reason") ?? "").trim();
  if (kind !== "done" && kind !== "not-done" && kind !== "cannot") {
    return refused(null, { kind: t("chooseOne") });
  }
  if (kind === "done" && Object.keys(read.problems).length > 0) return refused(null);
  if (kind !== "done" && reason === "") return refused(null, { reason: t("reasonNeeded") });

  const nothing = { materialId: null, amountKg: null, areaM2: null, minutes: null, litres: null };
  // The API judges the numbers; the form's shape follows the same schema.
  const actual = kind === "done" ? ({ ...nothing, ...read.json } as never as Actual) : null;
  const given = { kind, actual, reason: reason === "" ? null : reason } as const;
  const saved = await attempt((client) =>
    client.call(adviceRoutes.answerAdvisory, {
      params,
      json: { ...given, ...seenIn(data) },
      ...sendKeyOf(data),
    }),
  );
  if (saved.done) return {};
  if (saved.problem.status !== CHANGED) return refused(saved.problem);
  const there = (await call(adviceRoutes.getAdvisory, { params })).answer;
  return there
    ? { refused: await besideTheirs(refused(saved.problem).refused, there, given, farm) }
    : refused(saved.problem);
}

const CHANGED = 412;

/** Which answer stood on the page that was answered; a page kept from before this was asked says nothing. */
function seenIn(data: FormData): { answerSeen?: number | null } {
  const seen = data.get("seen");
  if (typeof seen !== "string" || !/^\d*$/.test(seen)) return {};
  return { answerSeen: seen === "" ? null : Number(seen) };
}

/** Both answers side by side; sent once more, this one takes the place of the one that is there now. */
async function besideTheirs(
  refused: FormState,
  there: NonNullable<Advisory["answer"]>,
  given: Parameters<typeof answerLine>[0],
  farm: FarmDetail,
): Promise<FormState> {
  const [t, zone, said, mine] = await Promise.all([
    getTranslations("answer"),
    readerZone(),
    answerLine(there, farm),
    answerLine(given, farm),
  ]);
  const by = t("by", { name: there.answeredBy, when: instantText(there.answeredAt, zone) });
  const theirs = `${said} ${by}`;
  const seen = String(there.ledgerSeq);
  return {
    ...refused,
    message: t("meanwhile", { theirs }),
    typed: { ...refused.typed, seen },
    meanwhile: { theirs, mine, seen },
  };
}
