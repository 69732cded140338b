export * from "./advise.ts";
export { answerOf } from "./answerOf.ts";
export { cautions, cautionsFor } from "./cautions/register.ts";
export type { Caution, Severity } from "./cautions/types.ts";
export * from "./core/days.ts";
export * from "./core/errors.ts";
export { parseAtTheDoor, problemsOf } from "./core/fields.ts";
export { type InputListing, listInputs, type Quantity, type QuantityAnswer } from "./core/quantity.ts";
export type * from "./core/rule.ts";
export type { Estimated, SourceRef, WorkingLine } from "./core/working.ts";
export { type Conflict, claimsOfSource, type SourcePage, sourcePage } from "./evidence/bySource.ts";
export {
  CHOICE_IDS,
  type Choice,
  type ChoiceId,
  choices,
  type InForce,
  inForce,
  optionOf,
} from "./evidence/choices.ts";
export { choiceIn, claimIn, ruleIn, sourceIn } from "./evidence/inLanguage.ts";
export { type OfficeSource, OfficeSourceSchema } from "./evidence/office.ts";
export { claims, claimsOf, sources } from "./evidence/register.ts";
export { type Claim, GRADES, type Grade, SOURCE_KINDS, type Source } from "./evidence/types.ts";
export { type GivenNutrients, givenTo } from "./food/given.ts";
export { checkGuide } from "./guides/check.ts";
export { type GuideListing, guideListings, guides, listGuide } from "./guides/register.ts";
export { type Guide, GuideSchema } from "./guides/schema.ts";
export {
  GUIDE_MEDIA,
  GUIDE_RESPONSES,
  GUIDE_UNITS,
  RATE_FORMS,
  RATE_UNITS,
  SOIL_TEST_CLASSES,
} from "./guides/shape.ts";
export * from "./layout/index.ts";
export { type WorthOptions, worthMeasuring } from "./missing/index.ts";
export {
  type Candidate,
  COST_CLASSES,
  type CostClass,
  type KeyAmount,
  type Spread,
  type WorthMeasuring,
} from "./missing/types.ts";
export { type SprayIntervals, sprayIntervals } from "./plant/sprayIntervals.ts";
export { quantities } from "./quantities/index.ts";
export { convertNutrient } from "./quantities/soil/nutrientForm.ts";
export { rules } from "./rules/index.ts";
export {
  INTERVAL_SOURCE as RAW_MANURE_SOURCE,
  intervalOf as rawManureInterval,
} from "./rules/manure-timing/interval.ts";
export * from "./states/bedPlan.ts";
export * from "./states/food.ts";
export * from "./states/parts.ts";
export * from "./states/plant.ts";
export * from "./states/states.ts";
export * from "./states/structure.ts";
export * from "./states/trial.ts";
export { type WhatIf, WhatIfSchema } from "./states/whatIf.ts";
export { uptakePerTonne } from "./tables/uptake.ts";
export { decisionsOf, decisionWords } from "./text/decisions.ts";
export { LANGUAGES, type Language, LOCALES } from "./text/language.ts";
export {
  type Measure,
  type MeasureUnit,
  type Message,
  measure,
  onDay,
  type Param,
  say,
  wordOf,
} from "./text/message.ts";
export { problemText } from "./text/problem.ts";
export { type Reader, render, renderWord } from "./text/render.ts";
export { formatMeasure, shownUnit, type UnitSystem } from "./text/units.ts";
export { workingText } from "./text/working.ts";
export { blocksNeeded } from "./trials/blocksNeeded.ts";
export { evidenceFromTrial } from "./trials/evidence.ts";
export { type PlotLabel, plotLabels } from "./trials/labels.ts";
export { type LayTrial, layTrial } from "./trials/layTrial.ts";
export { unitOf as responseUnitOf } from "./trials/sentence.ts";
export * from "./warmth/hindcast.ts";
export { readDailySeries } from "./warmth/hindcastSeries.ts";
export { croppedAreaM2 } from "./water/ground.ts";
