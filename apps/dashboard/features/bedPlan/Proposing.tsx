import {
  type BedPlanState,
  checkPlan,
  type PlanCheck,
  type PlanProgress,
  type PlanProposal,
} from "@pith/rules";
import { useEffect, useRef, useState } from "react";
import { points } from "./Judgement.tsx";
import type { Ask, Told } from "./propose.worker.ts";
import type { View } from "./view.ts";
import { fill } from "./words.ts";

interface Props {
  state: BedPlanState;
  check: PlanCheck;
  view: View;
  proposal: PlanProposal | null;
  onProposal: (proposal: PlanProposal | null) => void;
  onTake: (proposal: PlanProposal) => void;
  onStart: () => void;
}

/** Asks for a proposal, follows the search, and lays its end beside the plan to take or to leave. */
export function Proposing({ state, check, view, proposal, onProposal, onTake, onStart }: Props) {
  const { words } = view;
  const [progress, setProgress] = useState<PlanProgress | null>(null);
  const [failed, setFailed] = useState(false);
  const worker = useRef<Worker | null>(null);
  const seed = useRef(0);
  const result = useRef<HTMLDivElement>(null);
  const ask = useRef<HTMLButtonElement>(null);
  /** The buttons under the comparison go with it: the cursor goes back to where it came from. */
  const settle = (how: () => void) => {
    how();
    requestAnimationFrame(() => ask.current?.focus());
  };
  const stop = () => {
    worker.current?.terminate();
    worker.current = null;
    setProgress(null);
  };
  useEffect(() => () => worker.current?.terminate(), []);
  useEffect(() => {
    if (proposal) result.current?.focus();
  }, [proposal]);

  const start = () => {
    stop();
    onStart();
    onProposal(null);
    setFailed(false);
    seed.current += 1;
    const searcher = new Worker(new URL("./propose.worker.ts", import.meta.url), { type: "module" });
    worker.current = searcher;
    searcher.onmessage = ({ data }: MessageEvent<Told>) => {
      if ("progress" in data) return setProgress(data.progress);
      stop();
      onProposal(data.proposal);
    };
    searcher.onerror = () => {
      stop();
      setFailed(true);
    };
    setProgress({ iteration: 0, iterations: 1, best: 0, unplaced: 0, bound: 0 });
    searcher.postMessage({ state, seed: seed.current } satisfies Ask);
  };

  return (
    <div className="flow">
      <p>{words.proposeHelp}</p>
      {failed && (
        <p className="refusal" role="alert">
          {words.searchFailed}
        </p>
      )}
      {progress ? (
        <div className="working">
          <progress max={progress.iterations} value={progress.iteration} aria-label={words.proposeTitle} />
          <p>
            {fill(progress.unplaced > 0 ? words.searchingUnplaced : words.searching, {
              n: progress.iteration,
              of: progress.iterations,
              best: points(progress.best),
              unplaced: progress.unplaced,
              bound: points(progress.bound),
            })}
          </p>
          <button type="button" className="quiet" onClick={() => settle(stop)}>
            {words.cancel}
          </button>
        </div>
      ) : (
        <p>
          <button type="button" ref={ask} className={proposal ? "quiet" : "press"} onClick={start}>
            {proposal ? words.again : words.propose}
          </button>
        </p>
      )}
      {proposal && (
        <div ref={result} tabIndex={-1} className="flow">
          <Compared check={check} proposal={proposal} view={view} />
          <p>{words.shown}</p>
          <p className="plan-acts">
            <button type="button" className="press" onClick={() => settle(() => onTake(proposal))}>
              {words.take}
            </button>
            <button type="button" className="quiet" onClick={() => settle(() => onProposal(null))}>
              {words.leave}
            </button>
          </p>
        </div>
      )}
    </div>
  );
}

function Compared({ check, proposal, view }: { check: PlanCheck; proposal: PlanProposal; view: View }) {
  const { words } = view;
  const proposed = checkPlan(proposal.state);
  const broken = (c: PlanCheck) => c.hard.filter((b) => b.kind !== "unplaced").length;
  const homeless = (c: PlanCheck) => c.hard.length - broken(c);
  const rows: [string, string | number, string | number][] = [
    [words.rulesBroken, broken(check), broken(proposed)],
    [words.withoutBed, homeless(check), homeless(proposed)],
    [words.costPoints, points(check.total), points(proposed.total)],
  ];
  const same =
    homeless(check) <= homeless(proposed) && broken(check) === 0 && proposed.total > check.total - 0.05;
  return (
    <>
      <table className="ruled plan-compared">
        <caption>{words.compared}</caption>
        <thead>
          <tr>
            <td />
            <th scope="col" className="value">
              {words.asNow}
            </th>
            <th scope="col" className="value">
              {words.asProposed}
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(([name, now, then]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td className="value" data-head={words.asNow}>
                {now}
              </td>
              <td className="value" data-head={words.asProposed}>
                {then}
              </td>
            </tr>
          ))}
          <tr>
            <th scope="row">{words.atLeast}</th>
            <td className="value" />
            <td className="value" data-head={words.asProposed}>
              {points(proposal.bound)}
            </td>
          </tr>
        </tbody>
      </table>
      {same && <p>{words.nothingBetter}</p>}
    </>
  );
}
