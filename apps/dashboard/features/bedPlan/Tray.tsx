import type { PlanBlock } from "@pith/contract";
import type { View } from "./view.ts";
import { fill } from "./words.ts";

interface Props {
  blocks: readonly PlanBlock[];
  view: View;
  selected: string | null;
  onSelect: (id: string) => void;
  onPlace: (id: string) => void;
}

/** Blocks that have no bed yet, with the way to one. */
export function Tray({ blocks, view, selected, onSelect, onPlace }: Props) {
  const { words } = view;
  const waiting = blocks.filter((b) => b.at === null);
  if (waiting.length === 0) return null;
  return (
    <section className="plan-tray">
      <h2>{words.tray}</h2>
      <ul className="plain">
        {waiting.map((b) => (
          <li key={b.id} className="plan-waiting">
            <button
              type="button"
              className="quiet"
              aria-pressed={selected === b.id}
              onClick={() => onSelect(b.id)}
            >
              {fill(words.block, { name: view.blockName(b.id), plants: b.plants })}
            </button>
            <button
              type="button"
              className="quiet no-print"
              aria-label={`${words.place}: ${view.blockName(b.id)}`}
              onClick={() => onPlace(b.id)}
            >
              {words.place}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
