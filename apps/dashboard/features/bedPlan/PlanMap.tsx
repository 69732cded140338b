import type { PlanBlock } from "@pith/contract";
import type { DrawnBed, PlanBed, PlanDrawing } from "@pith/rules";
import { DrawnBlock, type Hands, LiftedBlock, outlineOf } from "./DrawnBlock.tsx";
import { Hatches, hatchOf } from "./Hatches.tsx";
import type { View } from "./view.ts";

interface Props {
  drawing: PlanDrawing;
  beds: readonly PlanBed[];
  blocks: readonly PlanBlock[];
  view: View;
  hands: Hands;
  label: string;
}

/** Pixels that the drawing is about to have, so that letters come out at a size that can be read. */
const ROOM = { width: 760, height: 700 };
const LETTER_PX = 15;
const SCALE_FT = 0.3048;

/** The plan to scale, north up: beds, rows, blocks, the side that is shaded, a scale and an arrow. */
export function PlanMap({ drawing, beds, blocks, view, hands, label }: Props) {
  const perM = Math.min(ROOM.width / drawing.widthM, ROOM.height / drawing.heightM);
  const type = LETTER_PX / perM;
  const height = drawing.heightM + type * 4.5;
  const byId = new Map(blocks.map((b) => [b.id, b]));
  const lifted = drawing.blocks.find((b) => b.blockId === hands.moving);
  const bar = scaleBar(drawing.scaleBarM, view.units);
  const foot = drawing.heightM + type * 3.2;
  // Where there is nothing to move it is a picture; else a group of what can be moved.
  const role = hands.onKey ? "group" : "img";
  return (
    <svg
      className="plan-map"
      viewBox={`${-type} ${-type} ${drawing.widthM + 2 * type} ${height + type}`}
      preserveAspectRatio="xMinYMin"
      role={role}
      aria-label={label}
      data-map
    >
      <Hatches prefix="map" size={type * 0.55} />
      {drawing.beds.map((bed, i) => (
        <g
          key={bed.bedId}
          className={`plan-bed ${bed.placed ? "" : "is-unplaced"} ${hands.broken.beds.has(bed.bedId) ? "is-broken" : ""}`}
        >
          <path className="plan-ground" d={outlineOf(bed.corners)} />
          {bed.rows.map(([a, b]) => (
            <path key={`${a}`} className="plan-row" d={`M${a.join(" ")}L${b.join(" ")}`} />
          ))}
          <ShadeSide bed={bed} side={beds[i]?.shadedFrom} type={type} />
        </g>
      ))}
      {drawing.blocks.map((b) => {
        const block = byId.get(b.blockId);
        return (
          block && (
            <DrawnBlock
              key={b.blockId}
              block={block}
              view={view}
              hands={hands}
              outline={outlineOf(b.corners)}
              middle={b.middle}
              fill={hatchOf("map", b.variety)}
              type={type}
              toM={b.toM}
            />
          )
        );
      })}
      {lifted && (
        <LiftedBlock
          outline={outlineOf(lifted.corners)}
          middle={lifted.middle}
          type={type}
          mark={view.mark(lifted.blockId)}
        />
      )}
      {drawing.beds.map((bed) => (
        <BedNumber key={bed.bedId} bed={bed} type={type} broken={hands.broken.beds.has(bed.bedId)} />
      ))}
      <g className="plan-scale">
        <path d={`M0 ${foot - type * 0.3}v${type * 0.6}M0 ${foot}h${bar.m}m0 ${-type * 0.3}v${type * 0.6}`} />
        <text x={bar.m + type * 0.5} y={foot + type * 0.35} fontSize={type}>
          {view.length(bar.m)}
        </text>
      </g>
      {drawing.northKnown && (
        <g className="plan-north" transform={`translate(${drawing.widthM - type} ${foot}) scale(${type})`}>
          <path d="M0 1.1V-1M-.4 -.35 0 -1.1 .4 -.35" />
          <text x="-1.1" y=".4" fontSize="1">
            {view.words.north}
          </text>
        </g>
      )}
    </svg>
  );
}

type Point = [number, number];

/** A number before the bed's first end, its valve's past the other. The key beside the drawing says which they are. */
function BedNumber({ bed, type, broken }: { bed: DrawnBed; type: number; broken: boolean }) {
  const [c0, c1, , c3] = bed.corners as [Point, Point, Point, Point];
  const beyond = (type * 0.85) / bed.lengthM;
  const along = (share: number): Point => [
    (c0[0] + c3[0]) / 2 + (c1[0] - c0[0]) * share,
    (c0[1] + c3[1]) / 2 + (c1[1] - c0[1]) * share,
  ];
  const [[x, y], [vx, vy]] = [along(-beyond), along(1 + beyond)];
  return (
    <>
      <text className="plan-number" x={x} y={y} dy={type * 0.35} fontSize={type * 0.9}>
        {bed.nth}
        {broken ? "†" : ""}
      </text>
      {bed.valve !== undefined && (
        <text className="plan-number plan-valve" x={vx} y={vy} dy={type * 0.35} fontSize={type * 0.8}>
          V{bed.valve + 1}
        </text>
      )}
    </>
  );
}

const SIDES = { north: [0, -1], east: [1, 0], south: [0, 1], west: [-1, 0] } as const;

/** A comb of short strokes along the side that trees or a house shade. */
function ShadeSide({ bed, side, type }: { bed: DrawnBed; side: PlanBed["shadedFrom"]; type: number }) {
  if (!side) return null;
  const [sx, sy] = SIDES[side];
  const edges = bed.corners.map((a, i) => {
    const b = bed.corners[(i + 1) % 4] as [number, number];
    const [mx, my] = [(a[0] + b[0]) / 2 - bed.middle[0], (a[1] + b[1]) / 2 - bed.middle[1]];
    return { a, b, facing: (mx * sx + my * sy) / (Math.hypot(mx, my) || 1) };
  });
  const { a, b } = edges.reduce((best, edge) => (edge.facing > best.facing ? edge : best));
  const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const teeth = Math.max(2, Math.round(long / (type * 0.5)));
  const out = type * 0.5;
  const d = Array.from({ length: teeth }, (_, i) => {
    const k = (i + 0.5) / teeth;
    return `M${a[0] + (b[0] - a[0]) * k} ${a[1] + (b[1] - a[1]) * k}l${sx * out} ${sy * out}`;
  });
  return <path className="plan-shade" d={d.join("")} />;
}

/** A round length in the reader's unit, no longer than the drawing proposes. */
function scaleBar(m: number, units: View["units"]): { m: number } {
  if (units === "metric") return { m };
  const feet = m / SCALE_FT;
  const power = 10 ** Math.floor(Math.log10(feet));
  const round = [5, 2, 1].map((n) => n * power).find((n) => n <= feet) ?? power;
  return { m: round * SCALE_FT };
}
