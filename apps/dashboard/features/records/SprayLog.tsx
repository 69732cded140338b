import type { FarmDetail, Records } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import { instantText } from "../../format/dates.ts";
import { closesOf } from "./closes.ts";

/** Every spraying with what its label closes, newest first, as somebody may ask to see it. */
export async function SprayLog({ sprays, detail }: { sprays: Records["sprays"]; detail: FarmDetail }) {
  const [t, words] = await Promise.all([getTranslations("sprayLog"), getTranslations("words.sprays")]);
  if (sprays.length === 0) return <p>{t("none")}</p>;
  return (
    <table className="ruled">
      <caption className="unseen">{t("title")}</caption>
      <thead>
        <tr>
          {(["bed", "at", "product", "registration", "target", "work", "picking"] as const).map((column) => (
            <th key={column} scope="col">
              {t(column)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {sprays.map((spray) => {
          const bed = detail.beds.find((one) => one.id === spray.bedId);
          const zone = detail.sites.find((one) => one.id === bed?.siteId)?.timeZone;
          const { workFrom, pickingFrom } = closesOf(spray, zone);
          return (
            <tr key={spray.id}>
              <th scope="row">{bed?.name}</th>
              <td data-head={t("at")}>
                <time dateTime={spray.at}>{instantText(spray.at, zone)}</time>
              </td>
              <td data-head={t("product")}>{spray.product}</td>
              <td data-head={t("registration")}>
                {spray.registration ?? <span className="unknown">{t("notWritten")}</span>}
              </td>
              <td data-head={t("target")}>{words(`target.${spray.target}`)}</td>
              <td data-head={t("work")}>{workFrom ?? t("notClosed")}</td>
              <td data-head={t("picking")}>{pickingFrom ?? t("notClosed")}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
