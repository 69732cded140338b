import arizonaVegetables from "./data/az-vegetables.json" with { type: "json" };
import californiaOlsen from "./data/ca-olsen-pepper.json" with { type: "json" };
import floridaMehlich1 from "./data/fl-mehlich-1.json" with { type: "json" };
import floridaMehlich3 from "./data/fl-mehlich-3.json" with { type: "json" };
import georgiaCoastalPlain from "./data/ga-coastal-plain.json" with { type: "json" };
import georgiaPiedmont from "./data/ga-piedmont.json" with { type: "json" };
import massachusettsModifiedMorgan from "./data/ma-modified-morgan.json" with { type: "json" };
import midAtlanticPeppers from "./data/mid-atlantic-peppers.json" with { type: "json" };
import midwestVegetables from "./data/midwest-vegetables.json" with { type: "json" };
import newJerseyMehlich3 from "./data/nj-mehlich-3.json" with { type: "json" };
import newJerseyMicronutrients from "./data/nj-mehlich-3-micronutrients.json" with { type: "json" };
import wisconsinLoamy from "./data/wi-loamy.json" with { type: "json" };
import wisconsinSandy from "./data/wi-sandy.json" with { type: "json" };
import { type Guide, GuideSchema } from "./schema.ts";
import type { Extractant, SoilNutrient } from "./types.ts";

/** Every shipped guide, by id: those read in their publication first, in the order of the reference's rows. */
export const guides: ReadonlyMap<string, Guide> = new Map(
  [
    newJerseyMehlich3,
    newJerseyMicronutrients,
    massachusettsModifiedMorgan,
    georgiaCoastalPlain,
    georgiaPiedmont,
    californiaOlsen,
    arizonaVegetables,
    midwestVegetables,
    floridaMehlich3,
    floridaMehlich1,
    midAtlanticPeppers,
    wisconsinLoamy,
    wisconsinSandy,
  ].map((raw) => {
    const guide = GuideSchema.parse(raw);
    return [guide.id, guide];
  }),
);

/** The guides that may be used without anybody choosing them. */
const verified: readonly Guide[] = [...guides.values()].filter((guide) => guide.status === "seen");
const fitting = new Map<string, readonly Guide[]>();

/** Those of them that read a nutrient by an extractant, the default first. */
export function verifiedFor(nutrient: SoilNutrient, extractant: Extractant): readonly Guide[] {
  const key = `${nutrient} ${extractant}`;
  const known = fitting.get(key);
  if (known) return known;
  const found = guidesFor(verified, nutrient, extractant);
  fitting.set(key, found);
  return found;
}

/** Those of some guides that read a nutrient by an extractant. */
export const guidesFor = (of: readonly Guide[], nutrient: SoilNutrient, extractant: Extractant): Guide[] =>
  of.filter((guide) => guide.nutrients[nutrient]?.extractant === extractant);

/** A guide as a list of guides names it. */
export interface GuideListing {
  id: string;
  title: string;
  region: string;
  extractants: Extractant[];
  status: Guide["status"];
  source: Guide["source"];
}

export const listGuide = ({ id, title, region, nutrients, status, source }: Guide): GuideListing => ({
  id,
  title,
  region,
  extractants: [...new Set(Object.values(nutrients).map((reading) => reading.extractant))],
  status,
  source,
});

/** The shipped guides, as a list of guides names them. */
export const guideListings: readonly GuideListing[] = [...guides.values()].map(listGuide);
