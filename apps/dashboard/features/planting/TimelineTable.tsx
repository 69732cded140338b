import { type Reader, render } from "@pith/rules";
import { getTranslations } from "next-intl/server";
import { dayText } from "../../format/dates.ts";
import { spanOf } from "./marks.ts";
import type { Lane, Timeline } from "./timeline.ts";
import { markText } from "./when.ts";

/** Everything that is drawn, day by day in words. */
export async function TimelineTable({ season, reader }: { season: Timeline; reader: Reader }) {
  const [t, rules] = await Promise.all([getTranslations("timeline"), getTranslations("rules")]);
  const nameOf = ({ id, name }: Lane): string => {
    if (name === null) return t(`lanes.${id}` as "lanes.sown");
    return "stage" in name ? render(name.stage, reader) : rules(name.rule as "irrigate");
  };
  const rows = season.groups
    .flatMap(({ lanes }) =>
      lanes.flatMap((lane) =>
        lane.marks.map((mark) => ({ key: `${lane.id} ${spanOf(mark)[0]}${mark.kind}`, lane, mark })),
      ),
    )
    .sort((a, b) => spanOf(a.mark)[0].localeCompare(spanOf(b.mark)[0]));
  return (
    <details className="no-print">
      <summary>{t("asTable")}</summary>
      <table className="ruled">
        <caption className="unseen">{t("tableTitle")}</caption>
        <thead>
          <tr>
            <th scope="col">{t("what")}</th>
            <th scope="col">{t("when")}</th>
            <th scope="col">{t("how")}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ key, lane, mark }) => (
            <tr key={key}>
              <th scope="row">{nameOf(lane)}</th>
              <td>{markText(mark, (day) => dayText(day, season.today), t)}</td>
              <td>{t(`marks.${mark.kind}`)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
