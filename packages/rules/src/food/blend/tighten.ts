import { boundsOf, boundTerm, eases, type Model } from "./model.ts";
import type { Row } from "./programme.ts";

/**
 * Rows that cut off parts of a bag and no plan worth having. Where at most U kg of a material can be of use, s kg are in the shed
 * and n bags of b kg bring the rest, with r = U - s - (n - 1) b in the last of them, then
 *
 *   use <= U - r (n - bags)
 *
 * holds for every whole number of bags, and is far nearer to what whole bags allow than `use <= s + b x bags`.
 *
 * Source: mixed-integer rounding; Nemhauser, G.L., Wolsey, L.A. (1990), Mathematical Programming 46:379-390.
 */
export function tighteningRows(model: Model): Row[] {
  const rows: Row[] = [];
  model.columns.forEach((column, j) => {
    if (column.means.kind !== "bags") return;
    const { materialId } = column.means;
    const source = model.sources.get(materialId);
    const bagKg = source?.material.bagKg;
    if (!source || bagKg === undefined) return;
    const terms: [number, number][] = [];
    let useful = 0;
    model.columns.forEach(({ means }, k) => {
      if (means.kind !== "use" || means.materialId !== materialId) return;
      const hectares = model.groups[means.group]?.hectares ?? 0;
      const most = mostUseful(model, means.group, materialId) * ROOM;
      terms.push([k, hectares]);
      useful += most * hectares;
      if (!source.stockKg && Number.isFinite(most)) {
        rows.push({
          terms: [
            [k, 1],
            [j, -most],
          ],
          sense: "most",
          limit: 0,
        });
      }
    });
    if (!Number.isFinite(useful)) return;
    const bought = useful - (source.stockKg ?? 0);
    if (bought <= 0) {
      rows.push({ terms: [[j, 1]], sense: "most", limit: 0 });
      return;
    }
    const bags = Math.ceil(bought / bagKg);
    const last = bought - (bags - 1) * bagKg;
    rows.push({ terms: [...terms, [j, -last]], sense: "most", limit: useful - last * bags });
    rows.push({ terms: [[j, 1]], sense: "most", limit: bags });
  });
  return rows;
}

/** So that no rounding cuts off the plan that takes exactly the most. */
const ROOM = 1 + 1e-9;

/**
 * Most of a material that can be of use to a group [kg/ha]: what alone would fill every floor it brings something to, unless it
 * also eases a share or a ratio; and never more than ceilings, bounds and label allow.
 */
function mostUseful(model: Model, g: number, materialId: string): number {
  const group = model.groups[g];
  const source = model.sources.get(materialId);
  if (!group || !source) return 0;
  const { contents, material } = source;
  const most = [material.labelMostKgPerHa ?? Number.POSITIVE_INFINITY];
  for (const need of group.needs) {
    const brings = contents.brings[need.nutrient];
    if (brings > 0 && need.most !== undefined) most.push(need.most / brings);
  }
  let alone = 0;
  for (const need of group.needs) {
    const brings = contents.brings[need.nutrient];
    if (brings > 0) alone = Math.max(alone, need.least / brings);
  }
  let easing = false;
  for (const { bound, stated, sense, limit } of boundsOf(group)) {
    if (eases(bound, stated, sense, contents)) easing = true;
    const a = boundTerm(bound, stated, contents) ?? 0;
    if (limit > 0 && sense === "most" && a > 0) most.push(limit / a);
  }
  if (!easing) most.push(alone);
  return Math.min(...most);
}
