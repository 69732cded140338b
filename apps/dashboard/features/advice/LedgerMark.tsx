import type { Advisory } from "@pith/contract";
import { useTranslations } from "next-intl";

/** Where an advice stands in the ledger: its number and its hash, on paper too. */
export function LedgerMark({ advisory }: { advisory: Pick<Advisory, "ledgerSeq" | "ledgerHash"> }) {
  const t = useTranslations("advice");
  return (
    <p className="ledger-mark">
      {t("ledger")} <span className="number">{advisory.ledgerSeq}</span>
      <br />
      <span className="hash">{advisory.ledgerHash}</span>
    </p>
  );
}
