import { evidenceRoutes } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import type { WorthList } from "../../../../../features/evidence/WorthMeasuring.tsx";
import { attempt } from "../../../../../server/api.ts";
import { agentSeat } from "../../../../../server/seat.ts";

interface Props {
  params: Promise<{ farmId: string }>;
}

/** As many as somebody would really go and measure in a week. */
const MOST = 8;

/** What is worth measuring on a farm, in words, for the list that asks for it once somebody comes to read it. */
export async function GET(_: Request, { params }: Props) {
  const [{ officeId }, { farmId }, t, rules] = await Promise.all([
    agentSeat(),
    params,
    getTranslations("worthMeasuring"),
    getTranslations("rules"),
  ]);
  const read = await attempt((client) =>
    client.call(evidenceRoutes.getWorthMeasuring, { params: { officeId, farmId } }),
  );
  if (!read.done) return Response.json(null, { status: read.problem.status });
  const { items } = read.value;
  const list: WorthList = {
    items: items.slice(0, MOST).map(({ ruleId, subject, measure, text, how, cost }) => ({
      key: `${ruleId} ${subject.id}`,
      ruleId,
      rule: rules(ruleId as "irrigate"),
      subject: subject.name,
      measure,
      text,
      how,
      cost: t(`costs.${cost}`),
    })),
    rest:
      items.length === 0 ? t("none") : items.length > MOST ? t("more", { count: items.length - MOST }) : null,
  };
  return Response.json(list, { headers: { "cache-control": "no-store" } });
}
