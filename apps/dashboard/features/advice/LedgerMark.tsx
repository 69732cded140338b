import { adviceRoutes } from "@pith/contract";
import { getTranslations } from "next-intl/server";
import { attempt } from "../../server/api.ts";
import { seat } from "../../server/seat.ts";

/** Where an advice stands in the ledger: its number and its hash, on paper too. */
export async function LedgerMark({ seq, farmId }: { seq: number; farmId: string }) {
  const [mine, t] = await Promise.all([seat(), getTranslations("advice")]);
  const read = await attempt((client) =>
    client.call(adviceRoutes.listLedger, {
      params: { officeId: mine?.officeId ?? "" },
      query: { farmId, before: seq + 1, limit: 1 },
    }),
  );
  const entry = read.done ? read.value.entries.find((one) => one.seq === seq) : undefined;
  return (
    <p className="ledger-mark">
      {t("ledger")} <span className="number">{seq}</span>
      {entry && (
        <>
          <br />
          <span className="hash">{entry.hash}</span>
        </>
      )}
    </p>
  );
}
