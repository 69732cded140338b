import type { PlanBlock } from "@pith/contract";
import type { PlanBed, PlanDrawing } from "@pith/rules";
import { DrawnBlock, type Hands, LiftedBlock } from "./DrawnBlock.tsx";
import { Hatches, hatchOf } from "./Hatches.tsx";
import type { View } from "./view.ts";
import { fill } from "./words.ts";

interface Props {
  drawing: PlanDrawing;
  beds: readonly PlanBed[];
  blocks: readonly PlanBlock[];
  view: View;
  hands: Hands;
  sides: Record<string, string>;
}

const WIDE = 1000;
const TYPE = 40;
/** Height of a row, for a thumb: the fewer the rows, the higher. */
const rowHeight = (rows: number) => (rows === 1 ? 130 : rows === 2 ? 90 : 68);

const rowLines = (rows: number, high: number, wide: number) =>
  Array.from({ length: rows }, (_, r) => `M0 ${(r + 0.5) * high}H${wide}`).join("");

/** The beds one under the other, each drawn full width: lengths to scale, widths for a thumb. */
export function PlanStrips({ drawing, beds, blocks, view, hands, sides }: Props) {
  const { words } = view;
  const byId = new Map(blocks.map((b) => [b.id, b]));
  return (
    <div className="plan-strips">
      <svg className="plan-defs" aria-hidden="true">
        <Hatches prefix="strip" size={22} />
      </svg>
      <p className="small faint">{words.stripScale}</p>
      <ol className="plain">
        {drawing.beds.map((drawn, i) => {
          const bed = beds[i] as PlanBed;
          const high = rowHeight(bed.rows);
          const here = drawing.blocks.filter((b) => b.bedId === bed.id);
          // What reaches past the bed's end is drawn past it.
          const span = Math.max(bed.lengthM, ...here.map((b) => b.toM));
          const x = (m: number) => (WIDE * m) / span;
          const shape = (b: (typeof here)[number]) => {
            const [left, right] = [x(b.fromM), x(b.toM)];
            const [top, foot] = [(b.firstRow - 1) * high, b.lastRow * high];
            return {
              outline: `M${left} ${top}H${right}V${foot}H${left}Z`,
              middle: [(left + right) / 2, (top + foot) / 2] as const,
            };
          };
          const lifted = here.find((b) => b.blockId === hands.moving);
          const facts = [
            fill(words.bedFacts, {
              length: view.length(bed.lengthM),
              width: view.length(bed.widthM),
              rows: bed.rows,
            }),
            drawn.valve !== undefined && fill(words.valve, { n: drawn.valve + 1 }),
            bed.shadedFrom && fill(words.shaded, { side: sides[bed.shadedFrom] ?? bed.shadedFrom }),
          ].filter(Boolean);
          return (
            <li key={bed.id}>
              <p className={hands.broken.beds.has(bed.id) ? "strip-head is-broken" : "strip-head"}>
                <strong>
                  {fill(words.bedKey, { n: drawn.nth, name: view.bedName(bed.id) })}
                  {hands.broken.beds.has(bed.id) && " †"}
                </strong>{" "}
                <span className="small faint">{facts.join(" · ")}</span>
              </p>
              <svg
                className="plan-strip"
                viewBox={`-3 -3 ${WIDE + 6} ${bed.rows * high + 6}`}
                role={hands.onKey ? "group" : "img"}
                aria-label={view.bedName(bed.id)}
                data-strip={bed.id}
                data-span={span}
              >
                <path className="plan-ground" d={`M0 0H${x(bed.lengthM)}V${bed.rows * high}H0Z`} />
                <path className="plan-row" d={rowLines(bed.rows, high, x(bed.lengthM))} />
                {here.map((b) => {
                  const block = byId.get(b.blockId);
                  return (
                    block && (
                      <DrawnBlock
                        key={b.blockId}
                        block={block}
                        view={view}
                        hands={hands}
                        {...shape(b)}
                        fill={hatchOf("strip", b.variety)}
                        type={TYPE}
                        toM={b.toM}
                      />
                    )
                  );
                })}
                {lifted && <LiftedBlock {...shape(lifted)} type={TYPE} mark={view.mark(lifted.blockId)} />}
              </svg>
            </li>
          );
        })}
      </ol>
    </div>
  );
}
