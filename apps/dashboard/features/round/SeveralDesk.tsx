"use client";

import Link from "next/link";
import { type ReactNode, useActionState } from "react";
import { once } from "../forms/once.ts";
import { issueSeveral, type ReadDraft } from "./several.ts";

interface Props {
  drafts: (ReadDraft & { slip: ReactNode })[];
  words: Record<"submit" | "busy" | "issued" | "asked" | "see" | "again" | "back", string>;
}

/** Every slip as its farmer will read it, and one press for all of them; each says below what became of it. */
export function SeveralDesk({ drafts, words }: Props) {
  const read = drafts.map(({ id, stateSha256, needsSecond }) => ({ id, stateSha256, needsSecond }));
  const [{ outcomes }, send, busy] = useActionState(issueSeveral.bind(null, read), { outcomes: null });
  const left = drafts.filter(({ id }) => (outcomes?.[id]?.done ?? "refused") === "refused").length;
  return (
    <>
      {drafts.map(({ id, slip }) => (
        <div key={id} className="several-one">
          {slip}
          <Outcome outcome={outcomes?.[id]} words={words} />
        </div>
      ))}
      <form action={send} onSubmit={once(busy)} className="form-end">
        {left > 0 && (
          <button type="submit" className="press" aria-disabled={busy}>
            {busy ? words.busy : outcomes === null ? words.submit : words.again}
          </button>
        )}
        <Link className="tap" href="/round">
          {words.back}
        </Link>
      </form>
    </>
  );
}

type Outcomes = NonNullable<Awaited<ReturnType<typeof issueSeveral>>["outcomes"]>;

function Outcome({ outcome, words }: { outcome: Outcomes[string] | undefined; words: Props["words"] }) {
  if (!outcome) return null;
  if (outcome.done === "refused")
    return (
      <p className="refusal" role="alert">
        {outcome.why}
      </p>
    );
  return (
    <p role="status" className="several-done">
      {words[outcome.done]}{" "}
      {outcome.done === "issued" && (
        <Link className="tap" href={`/issued/${outcome.id}`}>
          {words.see}
        </Link>
      )}
    </p>
  );
}
