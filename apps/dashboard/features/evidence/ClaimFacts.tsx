import type { Claim } from "@pith/rules";
import { getTranslations } from "next-intl/server";

/** Where it was found, how large, how far it carries and what would change the default. */
export async function ClaimFacts({ claim }: { claim: Pick<Claim, ClaimField> }) {
  const t = await getTranslations("evidence");
  return (
    <dl className="facts small">
      <dt>{t("grade")}</dt>
      <dd>{t(`grades.${claim.grade}`)}</dd>
      {claim.effect !== null && (
        <>
          <dt>{t("effect")}</dt>
          <dd>{claim.effect}</dd>
        </>
      )}
      <dt>{t("design")}</dt>
      <dd>{claim.design}</dd>
      <dt>{t("size")}</dt>
      <dd>{claim.size === null ? t("sizeUnsaid") : claim.size}</dd>
      <dt>{t("limits")}</dt>
      <dd>{claim.limits}</dd>
      <dt>{t("wouldChange")}</dt>
      <dd>{claim.wouldChange}</dd>
    </dl>
  );
}

type ClaimField = "grade" | "effect" | "design" | "size" | "limits" | "wouldChange";
