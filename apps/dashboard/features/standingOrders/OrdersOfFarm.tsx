import { standingOrderRoutes } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import { longDayText } from "../../format/dates.ts";
import { call } from "../../server/api.ts";
import { RuleName } from "../../ui/RuleName.tsx";
import { Terms } from "./Terms.tsx";

/** What may be said to a farm without anybody reading it first, for its own people; nothing where no order stands. */
export async function OrdersOfFarm({ officeId, farmId }: { officeId: string; farmId: string }) {
  const [{ orders }, t] = await Promise.all([
    call(standingOrderRoutes.listStandingOrders, { params: { officeId }, query: { farmId } }),
    getTranslations("standingOrders"),
  ]);
  if (orders.length === 0) return null;
  return (
    <>
      <h3>{t("ofFarm")}</h3>
      <p>{t("ofFarmHelp")}</p>
      {orders.map((order) => (
        <details key={order.id}>
          <summary>
            <RuleName id={order.ruleId} />, {t(`states.${order.state}`)},{" "}
            {t("until", { day: longDayText(order.terms.endsOn) })}
          </summary>
          <Terms order={order} />
        </details>
      ))}
    </>
  );
}
