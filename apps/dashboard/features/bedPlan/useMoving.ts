import type { PlanBlock } from "@pith/contract";
import type { Placement, PlanBed, PlanDrawing } from "@pith/rules";
import { type KeyboardEvent, type PointerEvent, type RefObject, useEffect, useRef, useState } from "react";
import { ARROWS, type Direction, type Spot, settled, spotOnMap, walked } from "./spots.ts";

/** A block that is taken up and not put down yet. */
export interface Moving {
  id: string;
  to: Placement;
  by: "pointer" | "keyboard";
}

interface Options {
  blocks: readonly PlanBlock[];
  beds: readonly PlanBed[];
  drawing: PlanDrawing;
  stepM: number;
  /** What holds the drawings. */
  area: RefObject<HTMLElement | null>;
  selected: string | null;
  onSelect: (id: string) => void;
  onDrop: (id: string, to: Placement) => void;
  onBack: (id: string) => void;
}

/** Further than this a press is a drag [px]. */
const SLACK_PX = 5;
const STRIDE = 4;

/** Takes blocks up and puts them down, by mouse, finger or keys: one state for all three. */
export function useMoving(options: Options) {
  const [moving, setMoving] = useState<Moving | null>(null);
  // The listeners of a drag outlive a rendering: they read what is newest.
  const latest = useRef(options);
  latest.current = options;
  const current = useRef(moving);
  current.current = moving;
  const endDrag = useRef<(() => void) | null>(null);
  useEffect(() => () => endDrag.current?.(), []);

  // In the strips a block goes into another drawing, and the cursor would be lost with the old one.
  const { area } = options;
  useEffect(() => {
    if (moving?.by !== "keyboard") return;
    const at = document.activeElement;
    if (at instanceof HTMLElement && at.closest("[data-move-buttons]")) return;
    blockIn(area.current, moving.id)?.focus();
  }, [moving, area]);

  // A finger that carries a block does not scroll. Browsers do not agree on touch-action inside a drawing, so it is said here:
  // the sheet must listen before a touch begins for its answer to count.
  useEffect(() => {
    const sheet = area.current;
    const hold = (event: TouchEvent) => endDrag.current && holdStill(event);
    sheet?.addEventListener("touchmove", hold, { passive: false });
    return () => sheet?.removeEventListener("touchmove", hold);
  }, [area]);

  const drop = () => {
    const now = current.current;
    if (!now) return;
    setMoving(null);
    latest.current.onDrop(now.id, now.to);
    if (now.by === "keyboard") refocus(now.id);
  };
  const back = () => {
    const now = current.current;
    if (!now) return;
    endDrag.current?.();
    setMoving(null);
    latest.current.onBack(now.id);
    if (now.by === "keyboard") refocus(now.id);
  };
  const refocus = (id: string) => requestAnimationFrame(() => blockIn(area.current, id)?.focus());

  const onKey = (event: KeyboardEvent, block: PlanBlock) => {
    if (event.metaKey || event.ctrlKey || event.altKey) return;
    const { beds, drawing, stepM, onSelect } = latest.current;
    const now = current.current?.id === block.id ? current.current : null;
    if (event.key === "Enter" || event.key === " ") {
      event.preventDefault();
      if (now) drop();
      else onSelect(block.id);
      return;
    }
    if (event.key === "Escape") {
      if (now) {
        event.preventDefault();
        back();
      }
      return;
    }
    const direction = ARROWS[event.key];
    const at = now?.to ?? block.at;
    if (!direction || !at) return;
    event.preventDefault();
    if (!now) onSelect(block.id);
    const onMap = (event.currentTarget as Element).closest("[data-map]") !== null;
    const to = walked({
      block,
      at,
      direction,
      steps: event.shiftKey ? STRIDE : 1,
      stepM,
      beds,
      ...(onMap ? { drawn: drawing.beds } : {}),
    });
    setMoving({ id: block.id, to, by: "keyboard" });
  };

  const onGrab = (event: PointerEvent, block: PlanBlock) => {
    if (event.button !== 0 || !block.at) return;
    const fresh = latest.current.selected !== block.id;
    latest.current.onSelect(block.id);
    // A finger that lands on a block may mean to scroll: the first touch chooses it, the next one takes it up.
    if (event.pointerType === "touch" && fresh) return;
    const [startX, startY, pointer] = [event.clientX, event.clientY, event.pointerId];
    const start = spotUnder(latest.current, startX, startY);
    const sameBed = start?.bedId === block.at.bedId;
    const grab = {
      alongM: sameBed ? start.alongM - block.at.fromM : 0,
      rows: sameBed ? start.acrossRows - (block.at.row - 1) : 0,
    };
    let dragging = false;
    const move = (e: globalThis.PointerEvent) => {
      if (e.pointerId !== pointer) return;
      if (!dragging && Math.hypot(e.clientX - startX, e.clientY - startY) < SLACK_PX) return;
      dragging = true;
      e.preventDefault();
      const { beds, stepM } = latest.current;
      const spot = spotUnder(latest.current, e.clientX, e.clientY);
      const bed = beds.find((b) => b.id === spot?.bedId);
      if (!spot || !bed) return;
      const wanted = { row: spot.acrossRows - grab.rows + 1, fromM: spot.alongM - grab.alongM };
      setMoving({ id: block.id, to: settled(block, bed, wanted, stepM), by: "pointer" });
    };
    const up = (e: globalThis.PointerEvent) => {
      if (e.pointerId !== pointer) return;
      endDrag.current?.();
      if (dragging) drop();
    };
    const gone = (e: globalThis.PointerEvent) => {
      if (e.pointerId === pointer) back();
    };
    const letGo = (e: globalThis.KeyboardEvent) => {
      if (e.key === "Escape") back();
    };
    endDrag.current?.();
    // A touch stays with what it began on, even where the block has gone into another strip by then.
    const { target } = event;
    target.addEventListener("touchmove", holdStill, { passive: false });
    endDrag.current = () => {
      target.removeEventListener("touchmove", holdStill);
      window.removeEventListener("pointermove", move);
      window.removeEventListener("pointerup", up);
      window.removeEventListener("pointercancel", gone);
      window.removeEventListener("keydown", letGo);
      endDrag.current = null;
    };
    window.addEventListener("pointermove", move);
    window.addEventListener("pointerup", up);
    window.addEventListener("pointercancel", gone);
    window.addEventListener("keydown", letGo);
  };

  return { moving, setMoving, drop, back, onKey, onGrab };
}

const holdStill = (event: Event) => {
  if (event.cancelable) event.preventDefault();
};

/** The block in whichever of the two drawings is shown. */
const blockIn = (area: HTMLElement | null, id: string) =>
  [...(area?.querySelectorAll<SVGElement>(`[data-block="${CSS.escape(id)}"]`) ?? [])].find(
    (element) => element.getClientRects().length > 0,
  );

/** Where a point of the window lies on the plan. */
function spotUnder({ area, drawing, beds }: Options, x: number, y: number): Spot | undefined {
  const map = area.current?.querySelector<SVGSVGElement>("[data-map]");
  if (map && map.getClientRects().length > 0) {
    const inverse = map.getScreenCTM()?.inverse();
    if (!inverse) return undefined;
    const point = new DOMPoint(x, y).matrixTransform(inverse);
    return spotOnMap([point.x, point.y] as Direction, drawing.beds, beds);
  }
  for (const strip of area.current?.querySelectorAll<SVGSVGElement>("[data-strip]") ?? []) {
    const box = strip.getBoundingClientRect();
    const bed = beds.find((b) => b.id === strip.dataset.strip);
    if (!bed || y < box.top || y > box.bottom) continue;
    return {
      bedId: bed.id,
      alongM: ((x - box.left) / box.width) * Number(strip.dataset.span),
      acrossRows: ((y - box.top) / box.height) * bed.rows,
    };
  }
  return undefined;
}
