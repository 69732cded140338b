import type { FarmDetail } from "@pith/contract";

/** Seasons that a site may be planned for or looked back on: those of its plantings, this year and the next. Newest first. */
export function seasonsOf({ beds, plantings }: FarmDetail, siteId: string, year: number): number[] {
  const here = new Set(beds.filter((b) => b.siteId === siteId).map((b) => b.id));
  const planted = plantings
    .filter((p) => here.has(p.bedId))
    .map((p) => Number((p.setOutOn ?? p.plannedSetOutOn ?? p.sownOn).slice(0, 4)));
  return [...new Set([year + 1, year, ...planted])].sort((a, b) => b - a);
}
