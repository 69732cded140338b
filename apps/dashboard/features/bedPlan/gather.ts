import { bedPlanRoutes, farmRoutes } from "@pith/contract";
import { type BedPlanState, MARKET_TYPES, SHADE_SIDES, SPECIES } from "@pith/rules";
import { getMessages, getTranslations } from "next-intl/server";
import { todayIn } from "../../format/dates.ts";
import { call } from "../../server/api.ts";
import type { Seat } from "../../server/seat.ts";
import type { DeskProps } from "./Desk.tsx";

/** All that the plan's screen shows, with every word it says. */
export async function gatherPlan(
  { officeId }: Seat,
  where: { farmId: string; siteId: string; season: number },
): Promise<DeskProps & { farm: string; site: string }> {
  const { farmId } = where;
  const [detail, plan, messages, types, species, sides] = await Promise.all([
    call(farmRoutes.getFarm, { params: { officeId, farmId } }),
    call(bedPlanRoutes.getBedPlan, { params: { officeId, ...where } }),
    getMessages(),
    getTranslations("words.plantings.marketType"),
    getTranslations("words.plantings.species"),
    getTranslations("words.beds.shadedFrom"),
  ]);
  const site = detail.sites.find((s) => s.id === where.siteId);
  const named = (list: { id: string; name: string }[]) =>
    Object.fromEntries(list.map(({ id, name }) => [id, name]));
  return {
    where,
    plan: { ...plan, state: plan.state as BedPlanState },
    farm: detail.farm.name,
    site: site?.name ?? "",
    words: messages.bedPlan,
    units: detail.farm.units,
    bedNames: named(detail.beds),
    valveNames: named(detail.valves),
    sides: Object.fromEntries(SHADE_SIDES.map((side) => [side, sides(side)])),
    choices: {
      species: SPECIES.map((value) => ({ value, label: species(value) })),
      marketType: MARKET_TYPES.map((value) => ({ value, label: types(value) })),
    },
    varieties: [...new Set(detail.plantings.map((p) => p.varietyName))].sort(),
    today: todayIn(site?.timeZone),
  };
}
