import type { Said } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import type { ReactNode } from "react";
import { Cautions } from "../../ui/Cautions.tsx";
import { Steps } from "../../ui/Steps.tsx";

/** An advice as the farmer reads it, in the order of the field: what, by when, be careful of, how. */
export async function SlipBody({ said, note }: { said: Said; note: ReactNode }) {
  const t = await getTranslations("advice");
  return (
    <>
      {said.window && <p className="decision-under">{said.window}</p>}
      <Cautions cautions={said.cautions} />
      {note}
      {said.steps.length > 0 && <Steps steps={said.steps} />}
      {said.cases.map((one) => (
        <div key={one.when} className="case flow">
          <p>
            <em>{one.when}</em> {one.decision}
          </p>
          {one.steps.length > 0 && <Steps steps={one.steps} />}
        </div>
      ))}
      {said.reason && (
        <p>
          <span className="label">{t("why")}</span> {said.reason}
        </p>
      )}
    </>
  );
}
