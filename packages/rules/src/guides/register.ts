import { georgiaCoastalPlain, georgiaPiedmont } from "./georgia.ts";
import { massachusettsModifiedMorgan } from "./massachusetts.ts";
import { newJerseyMehlich3, newJerseyMehlich3Micronutrients } from "./newJersey.ts";
import { arizonaVegetables, californiaOlsen, midwestVegetables } from "./responseGuides.ts";
import type { Guide } from "./types.ts";
import { floridaMehlich1, floridaMehlich3, wisconsinLoamy, wisconsinSandy } from "./unverified.ts";

/** Every guide, by id, those read in their publication first. */
export const guides: ReadonlyMap<string, Guide> = new Map(
  [
    newJerseyMehlich3,
    newJerseyMehlich3Micronutrients,
    massachusettsModifiedMorgan,
    georgiaCoastalPlain,
    georgiaPiedmont,
    californiaOlsen,
    arizonaVegetables,
    midwestVegetables,
    floridaMehlich3,
    floridaMehlich1,
    wisconsinLoamy,
    wisconsinSandy,
  ].map((guide) => [guide.id, guide]),
);

/** The guides that may be used without anybody choosing them. */
export const verifiedGuides = (): Guide[] => [...guides.values()].filter((guide) => guide.status === "seen");
