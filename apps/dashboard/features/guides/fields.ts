import type { Choice, FieldView } from "../forms/plan.ts";

/** What the form of a guide needs: its words, its choices, and how a field is made of its name. */

export interface GuideFormWords {
  label: Record<string, string>;
  hint: Record<string, string>;
  title: Record<"about" | "recommendations" | "nutrient" | "class", string>;
  addNutrient: string;
  addClass: string;
  removeNutrient: string;
  removeClass: string;
  notANumber: string;
  needed: string;
  twice: string;
  seeFields: string;
  unreachable: string;
  optional: string;
  save: string;
  busy: string;
  cancel: string;
}

export type GuideChoices = Record<
  "unit" | "medium" | "nutrient" | "extractant" | "decimals" | "class" | "response" | "rates" | "rateUnit",
  Choice[]
>;

/** Makes the view of one field from its name in the catalogue. */
export type FieldMaker = (
  name: string,
  key: string,
  kind: FieldView["kind"],
  more?: Partial<FieldView>,
) => FieldView;
