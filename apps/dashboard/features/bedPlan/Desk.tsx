"use client";

import type { BedPlan, PlanBlock } from "@pith/contract";
import {
  type BedPlanState,
  checkPlan,
  costOfMove,
  moveBlock,
  type Placement,
  type PlanBed,
  type PlanProposal,
  planDrawing,
  planModel,
  render,
  type UnitSystem,
} from "@pith/rules";
import { useMemo, useReducer, useRef, useState } from "react";
import { useLanguage } from "../../ui/Language.tsx";
import { adoptPlan, type BedPlacement, keepPlan, setBedPlaces, type Where } from "./actions.ts";
import { type BlockChoices, BlockForm } from "./BlockForm.tsx";
import { changed, historyAfter, placedAs, split, stateOf } from "./blocks.ts";
import { Chosen } from "./Chosen.tsx";
import { Drawings } from "./Drawings.tsx";
import { FromMap } from "./FromMap.tsx";
import { changeText, Judgement } from "./Judgement.tsx";
import { Adopting, Keeping } from "./Keeping.tsx";
import { Legend } from "./Legend.tsx";
import { Placements } from "./Placements.tsx";
import { Proposing } from "./Proposing.tsx";
import { firstPlace } from "./spots.ts";
import { Tray } from "./Tray.tsx";
import { useMoving } from "./useMoving.ts";
import { broken, type View, viewOf } from "./view.ts";
import { type BedPlanWords, fill } from "./words.ts";

export interface DeskProps {
  where: Where;
  plan: BedPlan;
  words: BedPlanWords;
  units: UnitSystem;
  bedNames: Record<string, string>;
  valveNames: Record<string, string>;
  sides: Record<string, string>;
  choices: BlockChoices;
  varieties: string[];
  today: string;
}

const STEP_M = { metric: 0.25, us: 0.3048 };

/** The bed plan in hand: moved, judged beside every move, kept, and made plantings of. */
export function Desk(props: DeskProps) {
  const { where, plan, words, units, bedNames, valveNames, sides, choices, varieties, today } = props;
  const [{ past, now: blocks, next }, act] = useReducer(historyAfter, {
    past: [],
    now: plan.blocks,
    next: [],
  });
  const [kept, setKept] = useState({ version: plan.version, blocks: plan.blocks });
  const [beds, setBeds] = useState(plan.state.beds as PlanBed[]);
  const [selected, setSelected] = useState<string | null>(null);
  const [form, setForm] = useState<"none" | "add" | "change">("none");
  const [proposal, setProposal] = useState<PlanProposal | null>(null);
  const [show, setShow] = useState<"map" | "strips">();
  const [said, setSaid] = useState("");
  const [busy, setBusy] = useState<"keep" | "adopt" | "map" | null>(null);
  const [conflict, setConflict] = useState<BedPlan | null>(null);
  const [notes, setNotes] = useState<Partial<Record<"keep" | "adopt" | "map", string>>>({});
  const [problems, setProblems] = useState<Partial<Record<"keep" | "adopt" | "map", string>>>({});
  const area = useRef<HTMLDivElement>(null);

  const state = useMemo(() => stateOf(plan, beds, blocks), [plan, beds, blocks]);
  const model = useMemo(() => planModel(state), [state]);
  const check = useMemo(() => checkPlan(state), [state]);
  const dirty = JSON.stringify(blocks) !== JSON.stringify(kept.blocks);
  const stepM = STEP_M[units];
  const set = (to: PlanBlock[]) => {
    setProposal(null);
    act({ to });
  };
  const step = (way: "undo" | "redo") => {
    setProposal(null);
    act(way);
  };

  const language = useLanguage();
  const still = useMemo(() => planDrawing(state), [state]);
  const stillView = viewOf({ words, units, language, bedNames, blocks, drawing: still });
  const hands = useMoving({
    blocks,
    beds,
    drawing: still,
    stepM,
    area,
    selected,
    onSelect: (id) => {
      setSelected(id);
      setForm("none");
    },
    onDrop: (id, at) => {
      const block = blocks.find((b) => b.id === id);
      if (!block) return;
      if (JSON.stringify(block.at) !== JSON.stringify(at)) set(changed(blocks, id, { at }));
      setSaid(fill(words.dropped, { name: stillView.blockName(id), place: stillView.placeLine(block, at) }));
    },
    onBack: (id) => setSaid(fill(words.back, { name: stillView.blockName(id) })),
  });
  const { moving } = hands;
  const change = useMemo(
    () => (moving ? costOfMove(state, moving.id, moving.to, model) : null),
    [moving, state, model],
  );

  // What is drawn: the plan as a proposal, or a hand that has not let go yet, would have it.
  const shownState = useMemo((): BedPlanState => {
    if (proposal) return proposal.state;
    return moving ? moveBlock(state, moving.id, moving.to) : state;
  }, [proposal, moving, state]);
  const drawing = useMemo(() => planDrawing(shownState), [shownState]);
  const shownCheck = useMemo(
    () => (shownState === state ? check : checkPlan(shownState)),
    [shownState, state, check],
  );
  const shownBlocks = useMemo(() => placedAs(blocks, shownState), [blocks, shownState]);
  const view: View = viewOf({ words, units, language, bedNames, blocks: shownBlocks, drawing });
  const block = blocks.find((b) => b.id === selected);
  const movingBlock = moving && shownBlocks.find((b) => b.id === moving.id);
  const announced =
    moving?.by === "keyboard" && movingBlock && change
      ? fill(change.breaks.length > 0 ? words.announceBreaks : words.announce, {
          place: view.placeLine(movingBlock),
          change: changeText(change.total, view),
          breaks: change.breaks.map((b) => render(b.text, view.reader)).join(" "),
        })
      : said;

  const done = (what: "keep" | "adopt" | "map", note: string | null, problem: string | null = null) => {
    setBusy(null);
    setNotes((n) => ({ ...n, [what]: note ?? "" }));
    setProblems((p) => ({ ...p, [what]: problem ?? undefined }));
  };
  const keep = async (version: number) => {
    setBusy("keep");
    const sent = blocks;
    const answer = await keepPlan(where, version, sent).catch(() => null);
    if (!answer) return done("keep", null, words.unreachable);
    if (answer.how === "refused") return done("keep", null, answer.why);
    if (answer.how === "conflict") {
      setConflict(answer.newest);
      return done("keep", null);
    }
    setConflict(null);
    setKept({ version: answer.value.version, blocks: sent });
    done("keep", fill(words.saved, { version: answer.value.version }));
  };
  const takeTheirs = (theirs: BedPlan) => {
    setKept({ version: theirs.version, blocks: theirs.blocks });
    setBeds(theirs.state.beds as PlanBed[]);
    set(theirs.blocks);
    setConflict(null);
    done("keep", words.tookTheirs);
  };
  const adopt = async (days: { sownOn: string; plannedSetOutOn: string | null }) => {
    setBusy("adopt");
    const answer = await adoptPlan(where, kept.version, days).catch(() => null);
    if (!answer) return done("adopt", null, words.unreachable);
    if (answer.how === "refused") return done("adopt", null, answer.why);
    if (answer.how === "conflict") {
      setConflict(answer.newest);
      return done("adopt", null, words.conflict);
    }
    const { added, moved, plan: adopted } = answer.value;
    setKept({ version: adopted.version, blocks: adopted.blocks });
    set(adopted.blocks);
    done("adopt", fill(words.adopted, { added, moved }));
  };
  const setPlaces = async (places: BedPlacement[]) => {
    setBusy("map");
    const answer = await setBedPlaces(where, places).catch(() => null);
    if (answer?.how !== "done") {
      return done(
        "map",
        fill(words.failed, { why: answer?.how === "refused" ? answer.why : words.unreachable }),
      );
    }
    setBeds(answer.value.state.beds as PlanBed[]);
    done("map", fill(words.mapDone, { n: places.length }));
  };

  /** Takes a block without a bed up at the first place that breaks nothing new; arrow keys go on from there. */
  const pickUp = (id: string) => {
    const one = blocks.find((b) => b.id === id);
    const to =
      one && firstPlace(one, blocks, beds, (at) => costOfMove(state, id, at, model).breaks.length === 0);
    if (!to) return;
    setSelected(id);
    hands.setMoving({ id, to, by: "keyboard" });
  };

  return (
    <div className="plan-desk">
      <div className="plan-toolbar no-print">
        <button
          type="button"
          className="quiet"
          aria-disabled={past.length === 0}
          onClick={() => step("undo")}
        >
          {words.undo}
        </button>
        <button
          type="button"
          className="quiet"
          aria-disabled={next.length === 0}
          onClick={() => step("redo")}
        >
          {words.redo}
        </button>
        <button type="button" className="quiet" onClick={() => setForm(form === "add" ? "none" : "add")}>
          {words.add}
        </button>
        <span className="plan-show">
          {(["map", "strips"] as const).map((how) => (
            <button
              key={how}
              type="button"
              className="quiet"
              aria-pressed={show === how}
              onClick={() => setShow(show === how ? undefined : how)}
            >
              {how === "map" ? words.asMap : words.asStrips}
            </button>
          ))}
        </span>
        <Keeping
          words={words}
          dirty={dirty}
          version={kept.version}
          busy={busy === "keep"}
          conflict={conflict}
          problem={problems.keep ?? null}
          note={notes.keep || null}
          onKeep={() => keep(kept.version)}
          onKeepOver={() => conflict && keep(conflict.version)}
          onTakeTheirs={() => conflict && takeTheirs(conflict)}
        />
      </div>
      <p className="hint no-print">{words.help}</p>
      {blocks.length === 0 && <p>{words.noBlocks}</p>}
      {form === "add" && (
        <section className="no-print" aria-label={words.add}>
          <BlockForm
            block={null}
            choices={choices}
            varieties={varieties}
            view={view}
            onDone={(fresh) => {
              set([...blocks, fresh]);
              setSelected(fresh.id);
              setForm("none");
            }}
            onClose={() => setForm("none")}
          />
        </section>
      )}
      <div className="plan-spread">
        <div ref={area} className="plan-sheet">
          <Drawings
            drawing={drawing}
            beds={beds}
            blocks={shownBlocks}
            view={view}
            sides={sides}
            show={show}
            hands={{
              selected,
              moving: moving?.id ?? null,
              broken: broken(shownCheck.hard),
              ...(proposal ? {} : { onKey: hands.onKey, onGrab: hands.onGrab }),
            }}
          />
          <Legend
            drawing={drawing}
            blocks={blocks}
            view={view}
            valveNames={valveNames}
            beds={beds}
            sides={sides}
          />
        </div>
        <div className="plan-side">
          <div className="plan-live no-print" data-move-buttons>
            <p aria-live="polite" className="unseen">
              {announced}
            </p>
            {moving && movingBlock && change && (
              <>
                <p aria-hidden="true">
                  {fill(words.movingNote, {
                    name: view.blockName(moving.id),
                    place: view.placeLine(movingBlock),
                    change: changeText(change.total, view),
                  })}
                </p>
                {moving.by === "keyboard" && (
                  <p className="plan-acts">
                    <button type="button" className="press" onClick={hands.drop}>
                      {words.putHere}
                    </button>
                    <button type="button" className="quiet" onClick={hands.back}>
                      {words.putBack}
                    </button>
                  </p>
                )}
              </>
            )}
          </div>
          <Tray blocks={blocks} view={view} selected={selected} onSelect={setSelected} onPlace={pickUp} />
          <section className="no-print flow" aria-label={words.selected}>
            <h2>{words.selected}</h2>
            {!block && <p className="faint">{words.chooseOne}</p>}
            {block && form === "change" && (
              <BlockForm
                key={block.id}
                block={block}
                choices={choices}
                varieties={varieties}
                view={view}
                onDone={(to) => {
                  set(changed(blocks, block.id, to));
                  setForm("none");
                }}
                onClose={() => setForm("none")}
              />
            )}
            {block && form !== "change" && (
              <Chosen
                key={block.id}
                block={block}
                beds={beds}
                view={view}
                onPlace={(at: Placement | null) => set(changed(blocks, block.id, { at }))}
                onPin={() => set(changed(blocks, block.id, { pinned: !block.pinned }))}
                onSplit={(off) => set(split(blocks, block.id, off))}
                onRemove={() => {
                  set(blocks.filter((b) => b.id !== block.id));
                  setSelected(null);
                  setSaid(fill(words.removed, { name: view.blockName(block.id) }));
                }}
                onChange={() => setForm("change")}
              />
            )}
          </section>
          <Judgement check={check} view={view} change={change} />
        </div>
        <div className="plan-more">
          <section className="no-print" aria-labelledby="plan-propose">
            <h2 id="plan-propose">{words.proposeTitle}</h2>
            <Proposing
              state={state}
              check={check}
              view={view}
              proposal={proposal}
              onProposal={setProposal}
              onStart={() => moving && hands.back()}
              onTake={(taken) => {
                set(placedAs(blocks, taken.state));
                setSaid(words.taken);
              }}
            />
          </section>
          <section className="no-print" aria-labelledby="plan-adopt">
            <h2 id="plan-adopt">{words.adoptTitle}</h2>
            <Adopting
              words={words}
              dirty={dirty || kept.version === 0}
              broken={check.hard.filter((b) => b.kind !== "unplaced").length}
              today={today}
              busy={busy === "adopt"}
              note={notes.adopt ?? null}
              problem={problems.adopt ?? null}
              onAdopt={adopt}
            />
          </section>
          <section className="no-print">
            <FromMap
              beds={beds}
              view={view}
              busy={busy === "map"}
              onSet={setPlaces}
              note={notes.map ?? null}
            />
          </section>
          <section>
            <h2>{words.placements}</h2>
            <Placements blocks={shownBlocks} bedOrder={beds.map((b) => b.id)} view={view} />
          </section>
        </div>
      </div>
    </div>
  );
}
