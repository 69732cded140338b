"use server";

import { adviceRoutes, standingOrderRoutes } from "@pith/contract";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { attempt } from "../../server/api.ts";
import { agentSeat } from "../../server/seat.ts";
import type { FormState } from "../forms/plan.ts";
import { problemWords } from "../forms/words.ts";
import { fieldOf, termsFrom } from "./form.ts";

const typedIn = (data: FormData): Record<string, string> =>
  Object.fromEntries([...data.entries()].filter(([, value]) => value !== "").map(([k, v]) => [k, String(v)]));

/** Signs an order anew on a farm, or another version of one. */
export async function sign(
  what: { farmId: string; ruleId: string } | { orderId: string },
  before: FormState,
  data: FormData,
): Promise<FormState> {
  const { officeId } = await agentSeat();
  const [words, t] = await Promise.all([problemWords(), getTranslations("standingOrders")]);
  const typed = typedIn(data);
  // The API judges the terms by the same schema.
  const terms = termsFrom(typed) as never;
  const refused = (message: string | null, problems: Record<string, string> = {}): FormState => ({
    attempt: before.attempt + 1,
    message,
    problems,
    typed,
  });
  if (!Object.keys(typed).some((name) => name.startsWith("code."))) return refused(t("noDecision"));
  const signed = await attempt((client) =>
    "orderId" in what
      ? client.call(standingOrderRoutes.signAnewStandingOrder, {
          params: { officeId, orderId: what.orderId },
          json: { terms },
        })
      : client.call(standingOrderRoutes.signStandingOrder, {
          params: { officeId, farmId: what.farmId },
          json: { ruleId: what.ruleId, terms },
        }),
  );
  if (signed.done) redirect(`/standing-orders/${signed.value.id}?saved=standingOrder`);
  const { errors, detail, title, status } = signed.problem;
  if (status === 503) return refused(words.unreachable);
  if (!errors) return refused(detail ?? title);
  return refused(
    null,
    Object.fromEntries(
      errors.map(({ field, message, accepted }) => [
        fieldOf(field),
        accepted ? `${message} (${accepted})` : message,
      ]),
    ),
  );
}

type Deed = { pause: boolean } | { confirm: number } | "revoke";

/** Pauses it, lets it go on, revokes it or says the second yes. Says why not, where not. */
export async function change(orderId: string, deed: Deed): Promise<string> {
  const { officeId } = await agentSeat();
  const params = { officeId, orderId };
  const done = await attempt((client) =>
    deed === "revoke"
      ? client.call(standingOrderRoutes.revokeStandingOrder, { params })
      : "pause" in deed
        ? client.call(standingOrderRoutes.pauseStandingOrder, { params, json: { paused: deed.pause } })
        : client.call(standingOrderRoutes.confirmStandingOrder, { params, json: { version: deed.confirm } }),
  );
  if (!done.done) return done.problem.detail ?? (await problemWords()).unreachable;
  redirect(`/standing-orders/${orderId}?saved=standingOrder`);
}

/** One tap: what an order issued is withdrawn, with the reason that an agent looked and took it back. */
export async function takeBack(advisoryId: string): Promise<string> {
  const { officeId } = await agentSeat();
  const [t, words] = await Promise.all([getTranslations("standingOrders"), problemWords()]);
  const done = await attempt((client) =>
    client.call(adviceRoutes.withdrawAdvisory, {
      params: { officeId, advisoryId },
      json: { reason: t("takenBack") },
    }),
  );
  if (!done.done) return done.problem.detail ?? words.unreachable;
  revalidatePath("/round");
  revalidatePath("/standing-orders");
  redirect(`/issued/${advisoryId}?saved=withdrawn`);
}

/** For which advice the office wants two people. */
export async function saveIssuing(before: FormState, data: FormData): Promise<FormState> {
  const { officeId } = await agentSeat();
  const words = await problemWords();
  const typed = typedIn(data);
  const saved = await attempt((client) =>
    client.call(standingOrderRoutes.changeIssuingSettings, {
      params: { officeId },
      json: {
        secondReader: typed.secondReader as "never",
        ruleIds: Object.keys(typed).flatMap((name) => (name.startsWith("rule.") ? [name.slice(5)] : [])),
      },
    }),
  );
  if (saved.done) redirect("/standing-orders?saved=issuing");
  const message = saved.problem.detail ?? words.unreachable;
  return { attempt: before.attempt + 1, message, problems: {}, typed };
}
