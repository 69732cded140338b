import type { PlanBlock } from "@pith/contract";
import type { KeyboardEvent, PointerEvent } from "react";
import type { View } from "./view.ts";
import { rowsText } from "./view.ts";
import { fill } from "./words.ts";

/** How a drawing hands on what is done to a block in it. */
export interface Hands {
  selected: string | null;
  moving: string | null;
  broken: { blocks: Set<string>; beds: Set<string> };
  onKey?: (event: KeyboardEvent, block: PlanBlock) => void;
  onGrab?: (event: PointerEvent, block: PlanBlock) => void;
}

interface Props {
  block: PlanBlock;
  view: View;
  hands: Hands;
  /** Outline, and where its letter stands. */
  outline: string;
  middle: readonly [number, number];
  fill: string;
  type: number;
  toM: number;
}

/** A block: its filling, its letter on paper, and a dagger where it breaks a rule. */
export function DrawnBlock({ block, view, hands, outline, middle, fill: filling, type, toM }: Props) {
  const { id, at } = block;
  const breaks = hands.broken.blocks.has(id);
  const { words } = view;
  const said = [
    at
      ? fill(words.blockAt, {
          name: view.blockName(id),
          plants: block.plants,
          bed: view.bedName(at.bedId),
          rows: rowsText(words, at.row, block.rows),
          from: view.length(at.fromM),
          to: view.length(toM),
        })
      : view.blockName(id),
    block.pinned && words.pinnedMark,
    breaks && words.breaksMark,
  ].filter(Boolean);
  const state = [
    "plan-block",
    breaks && "is-broken",
    hands.selected === id && "is-selected",
    hands.moving === id && "is-moving",
  ].filter(Boolean);
  const label = `${view.mark(id)}${block.pinned ? "•" : ""}${breaks ? "†" : ""}`;
  const inner = (
    <>
      <path className="plan-paper" d={outline} />
      <path fill={filling} d={outline} />
      <path className="plan-edge" d={outline} />
      <text className="plan-letter" x={middle[0]} y={middle[1]} fontSize={type} dy={type * 0.35}>
        {label}
      </text>
    </>
  );
  if (!hands.onKey) return <g className={state.join(" ")}>{inner}</g>;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a button cannot stand inside a drawing
    <g
      className={state.join(" ")}
      role="button"
      tabIndex={0}
      aria-label={said.join(", ")}
      aria-pressed={hands.selected === id}
      data-block={id}
      onKeyDown={(event) => hands.onKey?.(event, block)}
      onPointerDown={(event) => hands.onGrab?.(event, block)}
    >
      {inner}
    </g>
  );
}

/** The block that is taken up, once more above all others: where it overlaps, it is the one to see. */
export function LiftedBlock({
  outline,
  middle,
  type,
  mark,
}: Pick<Props, "outline" | "middle" | "type"> & { mark: string }) {
  return (
    <g className="plan-lifted">
      <path d={outline} />
      <text className="plan-letter" x={middle[0]} y={middle[1]} fontSize={type} dy={type * 0.35}>
        {mark}
      </text>
    </g>
  );
}

export const outlineOf = (corners: readonly (readonly [number, number])[]) =>
  `M${corners.map(([x, y]) => `${x} ${y}`).join("L")}Z`;
