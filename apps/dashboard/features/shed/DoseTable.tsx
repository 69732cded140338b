import type { FarmDetail } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import { dayText } from "../../format/dates.ts";
import type { Doses } from "./doses.ts";
import { doseText } from "./doseText.ts";

/** Who gets how much of what in which week, on the whole bed, and in which tank. */
export async function DoseTable({ doses, detail }: { doses: Doses; detail: FarmDetail }) {
  const t = await getTranslations("shedSheet");
  const { units } = detail.farm;
  const tanks = doses.rows.some((row) => row.tank !== null);
  const weeks = doses.weeks.map((from, i) => ({
    from,
    place: i,
    head: t("weekFrom", { day: dayText(from, from) }),
  }));
  return (
    <table className="ruled doses">
      <caption className="unseen">{t("doses")}</caption>
      <thead>
        <tr>
          <th scope="col">{t("where")}</th>
          <th scope="col">{t("what")}</th>
          {tanks && <th scope="col">{t("tank")}</th>}
          {weeks.map(({ from, head }) => (
            <th key={from} scope="col" className="value">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {doses.rows.map((row, i) => {
          const continued = doses.rows[i - 1]?.source === row.source;
          const material = detail.materials.find((m) => m.id === row.materialId)?.name ?? t("notInShed");
          return (
            <tr key={`${row.source.href} ${row.materialId}`} className={continued ? "continued" : undefined}>
              <th scope="row">
                <span className={continued ? "unseen" : undefined}>{row.source.subjectName}</span>
              </th>
              <td data-head={t("what")}>{material}</td>
              {tanks && <td data-head={t("tank")}>{row.tank}</td>}
              {weeks.map(({ place, from, head }) => {
                const dose = row.weeks[place];
                // The weeks of a bed may begin on another day; its first says which.
                const day = row.weeks.findIndex((one) => one !== null) === place ? dose?.from : null;
                return (
                  <td key={from} className={place === 0 ? "value now" : "value"} data-head={head}>
                    {dose && doseText(dose.kg, units)}
                    {day && <small className="faint">{t("onDay", { day: dayText(day, day) })}</small>}
                  </td>
                );
              })}
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
