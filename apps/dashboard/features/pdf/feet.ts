import type { Advisory } from "@pith/contract";
import { dayAt, dayText } from "../../format/dates.ts";
import { localeOf } from "../../format/language.ts";
import type { SignedTo } from "./ledger.ts";
import type { PaperWords } from "./words.ts";

/** The number and hash of the entry that issued it. */
export const ledgerLine = (
  { ledgerSeq, ledgerHash }: Pick<Advisory, "ledgerSeq" | "ledgerHash">,
  { advice: t }: PaperWords,
): string => `${t("ledger")} ${ledgerSeq} · ${ledgerHash}`;

/** Up to where the ledger was signed, which vouches for every entry before; nothing where it was not. */
export const signedLine = (signed: SignedTo | null, { paper: t, language }: PaperWords): string =>
  signed === null
    ? ""
    : t("signedTo", {
        seq: String(signed.seq),
        day: dayText(dayAt(signed.at), undefined, localeOf(language)),
        hash: signed.hash,
      });
