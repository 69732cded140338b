import { croppedAreaM2, localDay } from "@pith/rules";
import { bedPart } from "../states/parts.ts";
import type { SeasonFacts } from "./gather.ts";

/** Names and places of what the rows speak of, looked up once. */
export type Places = ReturnType<typeof placesOf>;

export function placesOf(facts: SeasonFacts, people: ReadonlyMap<string, string>) {
  const by = <T extends { id: string }>(list: T[]) => new Map(list.map((one) => [one.id, one]));
  const [beds, sites, valves] = [by(facts.beds), by(facts.sites), by(facts.valves)];
  const [plantings, materials] = [by(facts.plantings), by(facts.materials)];
  /** The keys of the schema hold that it is there. */
  const there = <T>(one: T | undefined, what: string): T => {
    if (one === undefined) throw new Error(`a record names a ${what} that its farm does not have`);
    return one;
  };
  const bed = (id: string) => there(beds.get(id), "bed");
  const planting = (id: string) => there(plantings.get(id), "planting");
  const site = (id: string) => there(sites.get(id), "site");
  const zoneAtBed = (id: string) => site(bed(id).siteId).timeZone;
  return {
    bed,
    planting,
    site,
    valve: (id: string) => there(valves.get(id), "valve"),
    material: (id: string) => there(materials.get(id), "material"),
    bedName: (id: string) => bed(id).name,
    plantingName: (id: string | null) => (id === null ? null : planting(id).varietyName),
    person: (id: string | null) => (id === null ? null : (people.get(id) ?? null)),
    /** The site's own day of an instant. */
    dayAtBed: (id: string, at: string) => localDay(at, zoneAtBed(id)),
    zoneAtBed,
    croppedM2: (id: string) => croppedAreaM2(bedPart(bed(id))),
    bedsOf: (valveId: string) => facts.beds.filter((b) => b.valveId === valveId),
  };
}
