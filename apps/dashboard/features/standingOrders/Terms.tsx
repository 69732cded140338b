import type { StandingOrder } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import { Fragment } from "react";
import { dayText, longDayText } from "../../format/dates.ts";
import { amountNames, codeWords } from "./form.ts";

/** What an order permits, limit by limit. */
export async function Terms({ order }: { order: StandingOrder }) {
  const [t, advice, amountName] = await Promise.all([
    getTranslations("standingOrders"),
    getTranslations("advice"),
    amountNames(),
  ]);
  const { decisionCodes, mostPerWeek, leastGrade, measuredOnly, hours, mostAmounts, endsOn } = order.terms;
  const clock = (hour: number) => `${String(hour).padStart(2, "0")}:00`;
  const facts: [string, string][] = [
    [t("decisions"), decisionCodes.map((code) => codeWords(order.ruleId, code)).join(", ")],
    [t("mostPerWeek"), t("soMany", { most: mostPerWeek, issued: order.issuedThisWeek })],
    [t("leastGrade"), leastGrade ? advice(`grades.${leastGrade}`) : t("anyGrade")],
    [t("estimates"), measuredOnly ? t("measuredOnly") : t("estimatesToo")],
    [t("hours"), hours ? t("between", { from: clock(hours.from), to: clock(hours.to) }) : t("anyHour")],
    ...Object.entries(mostAmounts).map(([name, most]): [string, string] => [
      amountName(name),
      t("atMost", { most }),
    ]),
    [t("endsOn"), longDayText(endsOn)],
    [t("signed"), t("by", { name: order.signedBy, day: dayText(order.signedAt.slice(0, 10)) })],
    ...(order.confirmedBy && order.confirmedAt
      ? [
          [
            t("confirmed"),
            t("by", { name: order.confirmedBy, day: dayText(order.confirmedAt.slice(0, 10)) }),
          ] as [string, string],
        ]
      : []),
  ];
  return (
    <dl className="facts">
      {facts.map(([name, value]) => (
        <Fragment key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </Fragment>
      ))}
    </dl>
  );
}
