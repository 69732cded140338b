import type { PlanBlock } from "@pith/contract";
import type { BedPlanState, Block, PlanBed } from "@pith/rules";
import { historyOf } from "./assemble.ts";
import type { FarmFacts } from "./facts.ts";
import { present } from "./parts.ts";

/** The state of a season's plan for the beds of one site: pure, like the other states. */

interface Plan {
  id: string;
  siteId: string;
  season: number;
  blocks: PlanBlock[];
}

/** What the rules read about a plan. Varieties go by numbers: their names are people's words. */
export function bedPlanState(facts: FarmFacts, { id, siteId, season, blocks }: Plan): BedPlanState {
  const site = facts.sites.get(siteId);
  if (!site) throw new Error(`plan ${id} is of no site of its farm`);
  const names = [...new Set(blocks.map((b) => nameOf(b)))].sort();
  return {
    kind: "bed-plan",
    version: 1,
    asOf: facts.asOf,
    settings: facts.settings,
    id,
    season,
    timeZone: site.row.timeZone,
    latitudeDeg: site.row.latitudeDeg,
    beds: facts.beds
      .filter((bed) => bed.siteId === siteId)
      .map(
        (bed): PlanBed =>
          present({
            id: bed.id,
            kind: bed.kind,
            lengthM: bed.lengthM,
            widthM: bed.widthM,
            rows: rowsOf(facts, bed, blocks),
            place: bed.place,
            valveId: bed.valveId,
            shadedFrom: bed.shadedFrom,
            history: historyOf(facts, bed.id).filter((h) => h.season < season),
          }) as PlanBed,
      ),
    blocks: blocks.map(
      ({ varietyName, saveSeed, pinned, ...block }): Block =>
        present({
          ...block,
          variety: `v${names.indexOf(nameOf({ varietyName })) + 1}`,
          saveSeed: saveSeed || undefined,
          pinned: pinned || undefined,
        }) as Block,
    ),
  };
}

const nameOf = ({ varietyName }: { varietyName: string }) => varietyName.trim().toLowerCase();

/** As the agent says; else as many as stand in it or are planned for it, and one where nothing says more. */
function rowsOf(facts: FarmFacts, bed: FarmFacts["beds"][number], blocks: PlanBlock[]): number {
  if (bed.planRows) return bed.planRows;
  const standing = facts.plantings.filter((p) => p.bedId === bed.id).map((p) => p.rowsPerBed);
  const placed = blocks.flatMap((b) => (b.at?.bedId === bed.id ? b.at.row - 1 + b.rows : []));
  return Math.min(40, Math.max(1, ...standing, ...placed));
}

/** Plantings as they stand, one block each, one after the other along their bed. */
export function blocksAsTheyStand(facts: FarmFacts, siteId: string, season: number): PlanBlock[] {
  const here = new Set(facts.beds.filter((b) => b.siteId === siteId).map((b) => b.id));
  const taken = new Map<string, number>();
  return facts.plantings
    .filter((p) => here.has(p.bedId) && seasonOf(p) === season)
    .map((p) => {
      const fromM = taken.get(p.bedId) ?? 0;
      taken.set(p.bedId, fromM + Math.ceil(p.plants / p.rowsPerBed) * p.plantSpacingM);
      return {
        id: p.id,
        plantingId: p.id,
        varietyName: p.varietyName,
        species: p.species,
        marketType: p.marketType,
        pungent: p.pungent,
        plants: p.plants,
        rows: p.rowsPerBed,
        plantSpacingM: p.plantSpacingM,
        heightCm: p.heightCm,
        water: p.deficit ? "deficit" : "full",
        saveSeed: p.saveSeed ?? false,
        pinned: p.setOutOn !== null && p.setOutOn <= facts.asOf.slice(0, 10),
        firstPickOn: null,
        at: { bedId: p.bedId, row: 1, fromM },
      };
    });
}

const seasonOf = (p: FarmFacts["plantings"][number]) =>
  Number((p.setOutOn ?? p.plannedSetOutOn ?? p.sownOn).slice(0, 4));
