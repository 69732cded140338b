import type { FarmDetail } from "@pith/contract";
import type { UnitSystem } from "@pith/rules";
import { inText } from "../../format/units.ts";

type Material = FarmDetail["materials"][number];

/** What a table of the shed's materials is made of, wherever it stands. */

/** Heads of its columns; those of numbers stand at their end. */
export function Heads({ heads }: { heads: { name: string; numbers?: boolean }[] }) {
  return (
    <thead>
      <tr>
        {heads.map(({ name, numbers }) => (
          <th key={name} scope="col" className={numbers ? "value" : undefined}>
            {name}
          </th>
        ))}
      </tr>
    </thead>
  );
}

/** Nitrogen, phosphate and potash, as a label prints them. */
export const gradeText = ({ nPct, p2o5Pct, k2oPct }: Material) => `${nPct}-${p2o5Pct}-${k2oPct}`;

interface InStockProps {
  material: Material;
  units: UnitSystem;
  head: string;
  /** What stands there where nobody counted it. */
  unknown: string;
}

/** How much of it is there. */
export function InStock({ material: { stockKg }, units, head, unknown }: InStockProps) {
  return (
    <td className="value" data-head={head}>
      {stockKg === null ? <span className="unknown">{unknown}</span> : inText(stockKg, "kg", units)}
    </td>
  );
}
