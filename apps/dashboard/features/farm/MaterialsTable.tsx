import type { FarmDetail, Records } from "@pith/contract";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { dayText, todayIn } from "../../format/dates.ts";
import { inText } from "../../format/units.ts";
import { Lots } from "../shed/Lots.tsx";
import { gradeText, Heads, InStock } from "../shed/materialParts.tsx";

type Material = FarmDetail["materials"][number];

/** The shed: what each material holds, how much of it is there in which lots, what more costs, and where it may be used. */
export async function MaterialsTable({ detail, records }: { detail: FarmDetail; records: Records }) {
  const [t, words] = await Promise.all([getTranslations("farm"), getTranslations("words.materials")]);
  if (detail.materials.length === 0) return <p>{t("noMaterials")}</p>;
  const { units, id: farmId } = detail.farm;
  return (
    <table className="ruled">
      <caption className="unseen">{t("shed")}</caption>
      <Heads
        heads={[
          { name: t("material") },
          { name: t("analysis"), numbers: true },
          { name: t("stock"), numbers: true },
          { name: t("bag"), numbers: true },
          { name: t("price"), numbers: true },
          { name: t("lots") },
          { name: t("certified") },
        ]}
      />
      <tbody>
        {detail.materials.map((material) => (
          <tr key={material.id}>
            <th scope="row">
              <Link href={`/farms/${farmId}/edit/materials/${material.id}`}>{material.name}</Link>{" "}
              <span className="faint">{words(`kind.${material.kind}`)}</span>
            </th>
            <td className="value" data-head={t("analysis")}>
              {gradeText(material)}
            </td>
            <InStock material={material} units={units} head={t("stock")} unknown={t("unknown")} />
            <td className="value" data-head={t("bag")}>
              {typeof material.bagKg === "number" && inText(material.bagKg, "kg", units)}
            </td>
            <td className="value" data-head={t("price")}>
              {material.canBuy === false
                ? t("notToBuy")
                : material.pricePerKg !== null && inText(material.pricePerKg, "per-kg", units)}
            </td>
            <td className="full">
              <Lots records={records} materialId={material.id} detail={detail} />
            </td>
            <td className="full" data-head={t("certified")}>
              {words(`certifiedUse.${material.certifiedUse}`)}
              <Proof material={material} today={todayIn(detail.sites[0]?.timeZone)} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The paper that proves its use on certified ground, and whether it still does. */
async function Proof({ material, today }: { material: Material; today: string }) {
  const t = await getTranslations("farm");
  const { certifiedProof, certifiedProofUntil: until, certifiedUse } = material;
  if (certifiedUse !== "allowed" && certifiedUse !== "restricted") return null;
  if (!certifiedProof && !until) return <span className="unknown"> {t("noProof")}</span>;
  return (
    <>
      {certifiedProof && <span className="faint"> {certifiedProof}</span>}
      {until && (
        <span className={until < today ? "problem-word" : "faint"}>
          {" "}
          {t(until < today ? "expired" : "proven", { day: dayText(until, today) })}
        </span>
      )}
    </>
  );
}
