import { type PlantingState, type Reader, render, type WhatIf } from "@pith/rules";
import { answerSaid, type ChoiceName, chosenText, type Explored, type Starting } from "@pith/rules/what-if";
import { useTranslations } from "next-intl";
import { useState, useTransition } from "react";
import { draft, keepAsNote, type Where } from "./actions.ts";

interface Props {
  where: Where;
  planting: PlantingState;
  starting: Starting;
  tried: WhatIf;
  explored: Explored[];
  reader: Reader;
  today: string;
  onReset: () => void;
}

/** What becomes of it: a draft to read and issue, a note among the records, or nothing. */
export function Keeping({ where, planting, starting, tried, explored, reader, today, onReset }: Props) {
  const t = useTranslations("whatIf");
  const [busy, go] = useTransition();
  const [told, setTold] = useState<{ kind: "kept" | "refused"; text: string; of: WhatIf } | null>(null);
  const names = Object.keys(tried) as ChoiceName[];
  const idle = busy || names.length === 0;
  const noteText = () =>
    [
      // Whoever comes upon it in the record must not take it for advice, which never goes without its cautions.
      t("noteHead"),
      ...names.map((name) => render(chosenText(planting, name, tried, starting), reader)),
      ...explored.flatMap(({ said, changed, tried: then }) => {
        const answer = changed ? answerSaid(then) : null;
        return [...said, ...(answer ? [answer] : [])].map((message) => render(message, reader));
      }),
    ].join("\n");
  const act = (work: () => Promise<{ kind: "kept" | "refused"; text: string }>) => {
    if (!idle) go(async () => setTold({ ...(await work()), of: tried }));
  };

  return (
    <div className="what-if-keeping flow">
      <p className="actions">
        <button
          type="button"
          className="press"
          aria-disabled={idle}
          onClick={() => act(async () => ({ kind: "refused", text: (await draft(where, tried)).refused }))}
        >
          {busy ? t("busy") : t("draft")}
        </button>
        <button
          type="button"
          className="quiet"
          aria-disabled={idle}
          onClick={() =>
            act(async () =>
              (await keepAsNote(where, today, noteText()))
                ? { kind: "kept", text: t("noteKept") }
                : { kind: "refused", text: t("noteNotKept") },
            )
          }
        >
          {t("note")}
        </button>
        <button type="button" className="quiet" aria-disabled={idle} onClick={() => !idle && onReset()}>
          {t("reset")}
        </button>
      </p>
      <p className="faint">{t("keepHelp")}</p>
      {/* What was said of another choice is not said of this one. */}
      {told && told.of === tried && (
        <p
          role={told.kind === "kept" ? "status" : "alert"}
          className={told.kind === "kept" ? "notice" : "refusal"}
        >
          {told.text}
        </p>
      )}
    </div>
  );
}
