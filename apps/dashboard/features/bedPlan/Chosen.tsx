import type { PlanBlock } from "@pith/contract";
import { blockLengthM, type Placement, type PlanBed } from "@pith/rules";
import { type FormEvent, useState } from "react";
import { inField, toSi, unitLabel } from "../../format/units.ts";
import { Line, numberIn } from "./Fields.tsx";
import type { View } from "./view.ts";
import { fill } from "./words.ts";

interface Props {
  block: PlanBlock;
  beds: readonly PlanBed[];
  view: View;
  onPlace: (to: Placement | null) => void;
  onPin: () => void;
  onSplit: (plantsOff: number) => void;
  onRemove: () => void;
  onChange: () => void;
}

/** The chosen block: where it stands, as a plain form, and what else can be done with it. */
export function Chosen({ block, beds, view, onPlace, onPin, onSplit, onRemove, onChange }: Props) {
  const { words } = view;
  const [problems, setProblems] = useState<Record<string, string>>({});
  const place = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const data = new FormData(event.currentTarget);
    const bed = beds.find((b) => b.id === data.get("bed"));
    if (!bed) return;
    const lastRow = Math.max(1, bed.rows - block.rows + 1);
    const lastM = Math.max(0, bed.lengthM - blockLengthM(block));
    const [row, from] = [
      numberIn(data.get("row"), 1, lastRow),
      numberIn(data.get("from"), 0, Number(inField(lastM, "m", view.units)) + 1e-6),
    ];
    const range = (low: number, high: number | string) => fill(words.outOfRange, { low, high });
    const wrong = {
      ...(row === undefined || !Number.isInteger(row) ? { row: range(1, lastRow) } : {}),
      ...(from === undefined ? { from: range(0, inField(lastM, "m", view.units)) } : {}),
    };
    setProblems(wrong);
    if (Object.keys(wrong).length > 0) return;
    const fromM = Math.min(lastM, Math.round(toSi(from as number, "m", view.units) * 1000) / 1000);
    onPlace({ bedId: bed.id, row: row as number, fromM });
    // The form starts again from the new place; the cursor stays on its button.
    requestAnimationFrame(() => document.getElementById("place-there")?.focus());
  };
  const split = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const off = numberIn(new FormData(event.currentTarget).get("off"), 1, block.plants - 1);
    if (off === undefined || !Number.isInteger(off))
      return setProblems({ off: fill(words.splitBad, { most: block.plants - 1 }) });
    setProblems({});
    onSplit(off);
  };
  return (
    <>
      <p>
        <strong>{view.blockName(block.id)}</strong>, {view.placeLine(block)}
      </p>
      <form onSubmit={place} className="plan-place" noValidate key={JSON.stringify(block.at)}>
        <Line id="place-bed" label={words.bed}>
          {(common) => (
            <select {...common} name="bed" defaultValue={block.at?.bedId}>
              {beds.map((b) => (
                <option key={b.id} value={b.id}>
                  {view.bedName(b.id)}
                </option>
              ))}
            </select>
          )}
        </Line>
        <Line id="place-row" label={words.firstRow} problem={problems.row}>
          {(common) => <input {...common} name="row" inputMode="numeric" defaultValue={block.at?.row ?? 1} />}
        </Line>
        <Line
          id="place-from"
          label={words.fromField}
          unit={unitLabel("m", view.units, view.reader.language)}
          problem={problems.from}
        >
          {(common) => (
            <input
              {...common}
              name="from"
              inputMode="decimal"
              defaultValue={inField(block.at?.fromM ?? 0, "m", view.units)}
            />
          )}
        </Line>
        <button type="submit" id="place-there" className="press">
          {words.putThere}
        </button>
      </form>
      <p className="plan-acts">
        <button type="button" className="quiet" aria-pressed={block.pinned} onClick={onPin}>
          {block.pinned ? words.unpin : words.pin}
        </button>
        <button type="button" className="quiet" onClick={onChange}>
          {words.change}
        </button>
        {block.at && (
          <button type="button" className="quiet" onClick={() => onPlace(null)}>
            {words.takeOff}
          </button>
        )}
        <button type="button" className="quiet" onClick={onRemove}>
          {words.remove}
        </button>
      </p>
      {block.plants > 1 && (
        <details>
          <summary>{words.split}</summary>
          <form onSubmit={split} className="plan-place" noValidate>
            <Line id="split-off" label={words.splitOff} problem={problems.off}>
              {(common) => (
                <input
                  {...common}
                  name="off"
                  inputMode="numeric"
                  defaultValue={Math.floor(block.plants / 2)}
                />
              )}
            </Line>
            <button type="submit" className="press">
              {words.splitDo}
            </button>
          </form>
        </details>
      )}
    </>
  );
}
