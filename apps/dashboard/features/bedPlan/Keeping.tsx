import type { BedPlan } from "@pith/contract";
import { type FormEvent, useEffect, useState } from "react";
import { Line } from "./Fields.tsx";
import { type BedPlanWords, fill } from "./words.ts";

interface Props {
  words: BedPlanWords;
  dirty: boolean;
  version: number;
  busy: boolean;
  conflict: BedPlan | null;
  problem: string | null;
  note: string | null;
  onKeep: () => void;
  onKeepOver: () => void;
  onTakeTheirs: () => void;
}

/** Keeps the plan; says so where somebody else was faster, and lets either stand. */
export function Keeping(props: Props) {
  const { words, dirty, busy, conflict, problem, note, onKeep, onKeepOver, onTakeTheirs } = props;
  useUnsaved(dirty, words.leaveUnsaved);
  return (
    <div className="plan-keep">
      {problem && (
        <p className="refusal" role="alert">
          {fill(words.failed, { why: problem })}
        </p>
      )}
      {conflict ? (
        <div role="alert" className="refusal">
          <p>{words.conflict}</p>
          <p className="plan-acts">
            <button type="button" className="press" onClick={onKeepOver} aria-disabled={busy}>
              {words.keepMine}
            </button>
            <button type="button" className="quiet" onClick={onTakeTheirs}>
              {words.takeTheirs}
            </button>
          </p>
        </div>
      ) : (
        <button type="button" className="press" onClick={() => !busy && onKeep()} aria-disabled={busy}>
          {busy ? words.saving : words.save}
        </button>
      )}
      <p role="status" className="small faint">
        {dirty ? words.unsaved : (note ?? "")}
      </p>
    </div>
  );
}

/** Asks before changes are left behind: by another address, by a link, by closing the window. */
function useUnsaved(dirty: boolean, question: string) {
  useEffect(() => {
    if (!dirty) return;
    const unload = (event: BeforeUnloadEvent) => event.preventDefault();
    const click = (event: MouseEvent) => {
      const link = (event.target as Element).closest?.("a[href]");
      const href = link?.getAttribute("href") ?? "";
      if (!link || href.startsWith("#") || event.ctrlKey || event.metaKey) return;
      if (window.confirm(question)) return window.removeEventListener("beforeunload", unload);
      event.preventDefault();
      event.stopPropagation();
    };
    window.addEventListener("beforeunload", unload);
    document.addEventListener("click", click, true);
    return () => {
      window.removeEventListener("beforeunload", unload);
      document.removeEventListener("click", click, true);
    };
  }, [dirty, question]);
}

interface AdoptProps {
  words: BedPlanWords;
  dirty: boolean;
  broken: number;
  today: string;
  busy: boolean;
  note: string | null;
  problem: string | null;
  onAdopt: (days: { sownOn: string; plannedSetOutOn: string | null }) => void;
}

/** Makes plantings of the plan, once it is kept and breaks no rule. */
export function Adopting({ words, dirty, broken, today, busy, note, problem, onAdopt }: AdoptProps) {
  const [wrong, setWrong] = useState(false);
  const why = broken > 0 ? fill(words.adoptBroken, { n: broken }) : dirty ? words.adoptUnsaved : null;
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    if (why || busy) return;
    const data = new FormData(event.currentTarget);
    const sownOn = String(data.get("sownOn") ?? "");
    setWrong(sownOn === "");
    if (sownOn !== "")
      onAdopt({ sownOn, plannedSetOutOn: String(data.get("plannedSetOutOn") ?? "") || null });
  };
  return (
    <form onSubmit={submit} className="flow" noValidate>
      <p>{words.adoptHelp}</p>
      {problem && (
        <p className="refusal" role="alert">
          {fill(words.failed, { why: problem })}
        </p>
      )}
      <div className="plan-place">
        <Line id="adopt-sown" label={words.sownOn} problem={wrong ? words.needed : undefined}>
          {(common) => <input {...common} type="date" name="sownOn" defaultValue={today} />}
        </Line>
        <Line id="adopt-planned" label={words.plannedSetOutOn} optional={words.fields.optional}>
          {(common) => <input {...common} type="date" name="plannedSetOutOn" />}
        </Line>
        <button
          type="submit"
          className="press"
          aria-disabled={why !== null || busy}
          aria-describedby={why ? "adopt-why" : undefined}
        >
          {busy ? words.adopting : words.adopt}
        </button>
      </div>
      {why && (
        <p id="adopt-why" className="unknown">
          {why}
        </p>
      )}
      <p role="status">{note ?? ""}</p>
    </form>
  );
}
