import type { FarmDetail, Records } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import { closedText } from "./closedText.ts";

interface Props {
  closed: Records["closed"];
  detail: FarmDetail;
  /** Of this bed alone. */
  bedId?: string;
}

/** Beds that a label closes now, to work and to picking: said wherever somebody may be about to go in, and printed. */
export async function ClosedNotice({ closed, detail, bedId }: Props) {
  const t = await getTranslations("closed");
  const mine = closed.filter((one) => bedId === undefined || one.bedId === bedId);
  if (mine.length === 0) return null;
  return (
    <section className="closed-notice" aria-label={t("head")}>
      <p className="closed-head">{t("head")}</p>
      <ul className="plain">
        {closedText(mine, detail, t).map((one) => (
          <li key={one.bedId}>{one.text}</li>
        ))}
      </ul>
      <p className="faint small">{t("why")}</p>
    </section>
  );
}
