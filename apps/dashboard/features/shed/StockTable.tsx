import type { FarmDetail, Records } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import type { Doses } from "./doses.ts";
import { doseText } from "./doseText.ts";
import { Lots } from "./Lots.tsx";
import { gradeText, Heads, InStock } from "./materialParts.tsx";

interface Props {
  doses: Doses;
  detail: FarmDetail;
  records: Records;
}

/** The materials that the doses take: what is there, which lot, what the weeks shown and the rest of the season need. */
export async function StockTable({ doses, detail, records }: Props) {
  const t = await getTranslations("shedSheet");
  const { units } = detail.farm;
  const used = detail.materials
    .map((material) => {
      const rows = doses.rows.filter((row) => row.materialId === material.id);
      const kg = rows.flatMap((row) => row.weeks.map((dose) => dose?.kg ?? 0)).reduce((a, b) => a + b, 0);
      return { material, rows, kg, laterKg: rows.reduce((sum, row) => sum + row.laterKg, 0) };
    })
    .filter(({ rows }) => rows.length > 0);
  if (used.length === 0) return <p>{t("noStock")}</p>;
  return (
    <table className="ruled">
      <caption className="unseen">{t("stock")}</caption>
      <Heads
        heads={[
          { name: t("what") },
          { name: t("inStock"), numbers: true },
          { name: t("theseWeeks"), numbers: true },
          { name: t("later"), numbers: true },
          { name: t("lies") },
        ]}
      />
      <tbody>
        {used.map(({ material, kg, laterKg }) => (
          <tr key={material.id}>
            <th scope="row">
              {material.name} <span className="faint number">{gradeText(material)}</span>
            </th>
            <InStock material={material} units={units} head={t("inStock")} unknown={t("notCounted")} />
            <td className="value" data-head={t("theseWeeks")}>
              {doseText(kg, units)}
            </td>
            <td className="value" data-head={t("later")}>
              {laterKg > 0 && doseText(laterKg, units)}
            </td>
            <td className="full" data-head={t("lies")}>
              <Lots records={records} materialId={material.id} detail={detail} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
