import { type Guide, listGuide } from "@pith/rules";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { readerLocale } from "../../format/language.ts";
import { extractantWord } from "./words.ts";

type Listing = Pick<Guide, "id" | "title" | "region" | "status" | "source"> & {
  extractants: readonly string[];
};

/** Guides as a ruled table; each name opens its tables. */
export async function GuideList({
  guides,
  chosen,
  caption,
}: {
  guides: readonly Listing[];
  chosen: string | undefined;
  caption: string;
}) {
  const [t, statuses] = await Promise.all([getTranslations("guides"), getTranslations("ranges.statuses")]);
  const ways = new Intl.ListFormat(readerLocale(), { type: "unit" });
  return (
    <table className="ruled">
      <caption className="unseen">{caption}</caption>
      <thead>
        <tr>
          <th scope="col">{t("guide")}</th>
          <th scope="col">{t("region")}</th>
          <th scope="col">{t("extractants")}</th>
          <th scope="col">{t("known")}</th>
          <th scope="col">{t("source")}</th>
        </tr>
      </thead>
      <tbody>
        {guides.map(({ id, title, region, extractants, status, source }) => (
          <tr key={id}>
            <th scope="row">
              <Link href={`/guides/${id}`}>{title}</Link>
              {id === chosen && <strong className="in-use"> {t("inUse")}</strong>}
            </th>
            <td>{region}</td>
            <td>{ways.format(extractants.map(extractantWord))}</td>
            <td className={isUnverified(status) ? "unknown" : undefined}>{statuses(status)}</td>
            <td>
              {source.key === "office-guide" ? (
                source.locator
              ) : (
                <Link href={`/evidence#source-${source.key}`}>
                  {source.key}
                  {source.locator !== undefined && ` (${source.locator})`}
                </Link>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Not read in its publication: never used unless an office chooses it. */
export const isUnverified = (status: Guide["status"]): boolean =>
  status === "memory" || status === "secondary";

export const listings = (own: readonly { guide: Guide }[]): Listing[] =>
  own.map(({ guide }) => listGuide(guide));
