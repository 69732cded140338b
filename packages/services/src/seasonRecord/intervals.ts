import type { SeasonRow } from "@pith/contract";
import { addDays, RAW_MANURE_SOURCE, rawManureInterval, SettingsSchema, sources } from "@pith/rules";
import type { SeasonFacts } from "./gather.ts";
import { materialWord } from "./given.ts";
import type { Places } from "./place.ts";
import { isIn } from "./season.ts";

type Row = SeasonRow<"intervals">;
type Application = SeasonFacts["applications"][number];

const MANURES: ReadonlySet<string | null> = new Set(["manure", "poultry-manure"]);

/** Manure counts as raw until somebody says that it was composted to the rule; what the day's record does not say the shed may. */
export function isRawManure({ materials }: SeasonFacts, a: Application): boolean {
  const material = materials.find((m) => m.id === a.materialId);
  return MANURES.has(a.kind ?? material?.kind ?? null) && compostedOf(material, a) !== true;
}

const compostedOf = (material: SeasonFacts["materials"][number] | undefined, a: Application) =>
  a.composted ?? material?.analysis.composted ?? null;

/**
 * Raw manure and sprays whose interval touches the season, each with whether what was picked after kept it. Fruit picked
 * on the first day that the interval allows keeps it.
 */
export const intervalRows = (facts: SeasonFacts, at: Places): Row[] =>
  [...manureRows(facts, at), ...sprayRows(facts, at)]
    .filter((row) => isIn(facts.season, row.on) || row.pickFrom > facts.season.from)
    .sort((a, b) => a.on.localeCompare(b.on) || a.bed.localeCompare(b.bed));

/** By planting, because staked and upright fruit has a shorter interval. */
function manureRows(facts: SeasonFacts, at: Places): Row[] {
  const settings = SettingsSchema.parse(facts.settings ?? {});
  const { key, locator } = RAW_MANURE_SOURCE;
  // Up to what it is about: the rest of the citation stands in the register.
  const [law] = (sources.get(key)?.cite ?? key).split(" (");
  const source = `${law} ${locator ?? ""}`.trim();
  return facts.applications
    .filter((a) => isRawManure(facts, a))
    .flatMap((a) => {
      const bed = at.bed(a.bedId);
      const touched = facts.plantings.filter(
        (p) =>
          p.bedId === a.bedId && (p.endedOn === null || p.endedOn >= a.onDay) && p.sownOn <= facts.season.to,
      );
      return touched.map((planting) => {
        const { days } = rawManureInterval({ settings, bed, planting: planting });
        const what = at.material(a.materialId).name || (materialWord(a.kind, facts.language) ?? "");
        const common = { bed: bed.name, planting: planting.varietyName, kind: "raw-manure" as const, what };
        const picks = facts.harvests.filter((h) => h.plantingId === planting.id);
        return { ...common, ...judge(a.onDay, days, picks), source, id: a.id };
      });
    });
}

const sprayRows = (facts: SeasonFacts, at: Places): Row[] =>
  facts.sprays.map((s) => ({
    bed: at.bedName(s.bedId),
    planting: null,
    kind: "spray" as const,
    what: s.product,
    ...judge(
      at.dayAtBed(s.bedId, s.at),
      s.preHarvestDays,
      facts.harvests.filter((h) => at.planting(h.plantingId).bedId === s.bedId),
    ),
    source: "label-as-typed",
    id: s.id,
  }));

/** A pick on the day itself counts as after: nobody wrote down which came first. */
function judge(on: string, days: number, picks: { onDay: string }[]) {
  const pickFrom = addDays(on, days);
  const after = picks.map((h) => h.onDay).filter((day) => (days === 0 ? day > on : day >= on));
  const first = after.toSorted()[0] ?? null;
  const kept =
    first === null
      ? ("nothing-picked-yet" as const)
      : first >= pickFrom
        ? ("kept" as const)
        : ("not-kept" as const);
  return { on, days, pickFrom, firstPickAfter: first, kept };
}
