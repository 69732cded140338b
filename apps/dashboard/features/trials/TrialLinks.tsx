import { trialRoutes } from "@pith/contract";
import Link from "next/link";
import { getTranslations } from "next-intl/server";
import { call } from "../../server/api.ts";

/** The trials that run on a farm, for its own people to type numbers into; nothing where none runs. */
export async function TrialLinks({ officeId, farmId }: { officeId: string; farmId: string }) {
  const [{ trials }, t] = await Promise.all([
    call(trialRoutes.listTrials, { params: { officeId, farmId } }),
    getTranslations("trials"),
  ]);
  const running = trials.filter((trial) => trial.endedOn === null);
  if (running.length === 0) return null;
  return (
    <>
      <h3>{t("title")}</h3>
      <ul className="actions plain">
        {running.map((trial) => (
          <li key={trial.id}>
            <Link className="tap" href={`/record/${farmId}/trials/${trial.id}`}>
              {t("typeInto", { name: trial.name })}
            </Link>
          </li>
        ))}
      </ul>
    </>
  );
}
