import type { PlanBlock } from "@pith/contract";
import type { PlanBed, PlanDrawing } from "@pith/rules";
import { Hatches, hatchOf } from "./Hatches.tsx";
import type { View } from "./view.ts";
import { fill } from "./words.ts";

interface Props {
  drawing: PlanDrawing;
  blocks: readonly PlanBlock[];
  view: View;
  valveNames: Record<string, string>;
  beds: readonly PlanBed[];
  sides: Record<string, string>;
}

/** Letter, filling and name of each variety; number and name of each bed and valve. */
export function Legend({ drawing, blocks, view, valveNames, beds, sides }: Props) {
  const { words } = view;
  const nameOf = new Map(blocks.map((b) => [b.id, b.varietyName]));
  return (
    <div className="plan-legend">
      <ul className="plain">
        {drawing.varieties.map(({ variety, letter, hot, blockIds, plants }, i) => (
          <li key={variety}>
            <svg className="plan-swatch" viewBox="0 0 32 20" aria-hidden="true">
              <Hatches prefix={`key${i}`} size={8} />
              <path fill={hatchOf(`key${i}`, i)} d="M1 1H31V19H1Z" />
              <path className="plan-edge" d="M1 1H31V19H1Z" />
            </svg>{" "}
            <strong>{letter}</strong> {nameOf.get(blockIds[0] ?? "")}{" "}
            <span className="faint">
              {hot ? words.hot : words.sweet}, <span className="number">{plants}</span>
            </span>
          </li>
        ))}
      </ul>
      <ul className="plain plan-beds-key">
        {drawing.beds.map((bed, i) => {
          const side = beds[i]?.shadedFrom;
          return (
            <li key={bed.bedId}>
              {fill(words.bedKey, { n: bed.nth, name: view.bedName(bed.bedId) })}{" "}
              {side && <span className="faint">{fill(words.shaded, { side: sides[side] ?? side })}</span>}
            </li>
          );
        })}
        {drawing.valves.map(({ valveId }, i) => (
          <li key={valveId}>
            V{i + 1} <span className="faint">{valveNames[valveId]}</span>
          </li>
        ))}
      </ul>
    </div>
  );
}
