import type { LabMapping } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import { instantText } from "../../format/dates.ts";
import { forgetLab } from "./actions.ts";

/** Whose columns are remembered, and the way to forget them. */
export async function Laboratories({
  labs,
  farmId,
  zone,
}: {
  labs: LabMapping[];
  farmId: string;
  zone: string;
}) {
  const t = await getTranslations("imports.laboratories");
  return (
    <section id="laboratories" className="laboratories flow">
      <h2>{t("title")}</h2>
      {labs.length === 0 ? (
        <p className="faint">{t("none")}</p>
      ) : (
        <ul className="listing records">
          {labs.map(({ lab, columns, updatedAt }) => (
            <li key={lab}>
              <span>
                <span className="lab-name">{lab}</span>{" "}
                <span className="faint small">
                  {t("columns", { count: columns.length, when: instantText(updatedAt, zone) })}
                </span>
              </span>
              <form action={forgetLab.bind(null, farmId, lab)}>
                <button type="submit" className="quiet" aria-label={t("forgetOne", { lab })}>
                  {t("forget")}
                </button>
              </form>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
