import type { PlanBlock } from "@pith/contract";
import { blockLengthM } from "@pith/rules";
import { inText } from "../../format/units.ts";
import type { View } from "./view.ts";

/** The plan in a table: for print, for reading aloud, and for whoever digs. */
export function Placements({
  blocks,
  bedOrder,
  view,
}: {
  blocks: readonly PlanBlock[];
  bedOrder: readonly string[];
  view: View;
}) {
  const { words } = view;
  const place = (b: PlanBlock) => (b.at ? bedOrder.indexOf(b.at.bedId) : bedOrder.length);
  const rows = [...blocks].sort(
    (a, b) =>
      place(a) - place(b) || (a.at?.row ?? 0) - (b.at?.row ?? 0) || (a.at?.fromM ?? 0) - (b.at?.fromM ?? 0),
  );
  const heads = [words.bed, words.rows, words.from, words.to, words.plants, words.spacing, words.water];
  return (
    <table className="ruled plan-table">
      <caption className="unseen">{words.placements}</caption>
      <thead>
        <tr>
          <th scope="col">{words.planting}</th>
          {heads.map((head, i) => (
            <th key={head} scope="col" className={i > 0 && i < 6 ? "value" : undefined}>
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((b) => (
          <tr key={b.id}>
            <th scope="row">{view.blockName(b.id)}</th>
            <td data-head={words.bed}>{b.at ? view.bedName(b.at.bedId) : words.nowhere}</td>
            <td className="value" data-head={words.rows}>
              {b.at ? (b.rows === 1 ? b.at.row : `${b.at.row}–${b.at.row + b.rows - 1}`) : ""}
            </td>
            <td className="value" data-head={words.from}>
              {b.at ? view.length(b.at.fromM) : ""}
            </td>
            <td className="value" data-head={words.to}>
              {b.at ? view.length(b.at.fromM + blockLengthM(b)) : ""}
            </td>
            <td className="value" data-head={words.plants}>
              {b.plants}
            </td>
            <td className="value" data-head={words.spacing}>
              {inText(b.plantSpacingM * 100, "cm", view.units, view.reader.language)}
            </td>
            <td data-head={words.water}>{words.waters[b.water]}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
