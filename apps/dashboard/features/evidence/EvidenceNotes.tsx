import { getTranslations } from "next-intl/server";
import { claimsById } from "./register.ts";

/** The evidence behind an advice, in the margin: what was found, how far it carries, where it does not. */
export async function EvidenceNotes({ ids }: { ids: string[] }) {
  const [t, claims] = await Promise.all([getTranslations("evidence"), claimsById()]);
  return (
    <>
      {ids.map((id) => {
        const claim = claims.get(id);
        if (!claim) return null;
        return (
          <div key={id} className="aside-note">
            <p>{claim.finding}</p>
            <p className="faint">
              <span className="grade">{t(`grades.${claim.grade}`)}.</span> {claim.limits}
            </p>
            <a href={`/evidence#${id}`}>
              {t("readMore")}
              <span className="unseen">: {claim.finding}</span>
            </a>
          </div>
        );
      })}
    </>
  );
}
