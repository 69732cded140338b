import type { SeasonRow } from "@pith/contract";
import type { Said } from "./cells.ts";
import { sumsText } from "./sums.ts";

/** The sums of a bed, or of the farm; what nobody wrote down says so. */
export function Totals({ row, said }: { row: SeasonRow<"totals">; said: Said }) {
  const { known, unwritten } = sumsText(row, said);
  return (
    <>
      <dl className="facts season-facts">
        {known.map(({ name, text }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      {unwritten && <p className="faint">{unwritten}</p>}
    </>
  );
}
