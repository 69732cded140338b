import type { PlanBlock } from "@pith/contract";
import type { PlanBed, PlanDrawing } from "@pith/rules";
import type { Hands } from "./DrawnBlock.tsx";
import { PlanMap } from "./PlanMap.tsx";
import { PlanStrips } from "./PlanStrips.tsx";
import type { View } from "./view.ts";

interface Props {
  drawing: PlanDrawing;
  beds: readonly PlanBed[];
  blocks: readonly PlanBlock[];
  view: View;
  hands: Hands;
  sides: Record<string, string>;
  /** Left out: the map where there is room for it, else bed by bed. */
  show?: "map" | "strips" | undefined;
}

/** The plan drawn both ways; the window's width, or the reader, decides which is seen. */
export function Drawings({ show, sides, ...rest }: Props) {
  const { words } = rest.view;
  // A map of beds that lie nowhere says nothing: then bed by bed, unless somebody asks.
  const seen = show ?? (rest.drawing.northKnown ? undefined : "strips");
  return (
    <div className="plan-drawings" data-show={seen}>
      <PlanMap {...rest} label={words.drawing} />
      <PlanStrips {...rest} sides={sides} />
      {!rest.drawing.northKnown && <p className="small unknown plan-map-note">{words.northUnknown}</p>}
      {rest.drawing.northKnown && rest.drawing.beds.some((b) => !b.placed) && (
        <p className="small unknown plan-map-note">{words.someUnplaced}</p>
      )}
    </div>
  );
}
