import type { SourceRef } from "../core/working.ts";
import type { ANIMALS } from "../states/food.ts";

type Animal = (typeof ANIMALS)[number];

/** Share of a manure's organic nitrogen that comes free [%]: in its year, the year after, two years after. */
export interface ReleaseRow {
  /** Below 18 % dry matter. */
  wet: readonly [number, number, number];
  /** At 18 % or more. */
  dry: readonly [number, number, number];
}

/** Dry matter that parts the two columns [%]. */
export const DRY_FROM_PCT = 18;

/** Source: Cornell CSS 412 module 2, page 6 (SN-902, exact cells; horses "30 or 25"). */
export const MANURE_RELEASE: Readonly<Record<Animal, ReleaseRow>> = {
  cattle: { wet: [35, 12, 5], dry: [25, 12, 5] },
  swine: { wet: [35, 12, 5], dry: [25, 12, 5] },
  sheep: { wet: [35, 12, 5], dry: [25, 12, 5] },
  horse: { wet: [30, 12, 5], dry: [25, 12, 5] },
  poultry: { wet: [55, 12, 5], dry: [55, 12, 5] },
};
export const MANURE_RELEASE_SOURCE: SourceRef = {
  key: "cornell-organic-n-release",
  locator: "SN-902, release by animal and dry matter",
};

/** Of the ammonium of a manure that stays on the surface, what is kept: a third is lost, printed as 0.66 (SN-901). */
export const AMMONIUM_KEPT_ON_SURFACE = 0.66;
export const AMMONIUM_LOSS_SOURCE: SourceRef = {
  key: "montana-manure-plan",
  locator: "SN-901, step 5: left on the surface, one third of the ammonium lost",
};
