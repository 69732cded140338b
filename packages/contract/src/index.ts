export * from "./answer.ts";
export { ApiProblem, type Client, type ClientOptions, createClient } from "./client.ts";
export {
  DomainError,
  type FieldProblem,
  type Problem,
  type ProblemName,
  ProblemSchema,
  problemNames,
  problemsOf,
  problemText,
  problemTypes,
  typeOf,
  usualProblem,
} from "./problem.ts";
export type { Actual, Advisory, AdvisoryDetail, Draft, DraftDetail, LedgerEntry } from "./routes/advice.ts";
export * as adviceRoutes from "./routes/advice.ts";
export type { BedPlan, PlanBlock } from "./routes/bedPlans.ts";
export * as bedPlanRoutes from "./routes/bedPlans.ts";
export * as calendarRoutes from "./routes/calendar.ts";
export type { Call, Channel, DeliverySettings, Wishes } from "./routes/delivery.ts";
export * as deliveryRoutes from "./routes/delivery.ts";
export type { OwnSource, WorthMeasuring } from "./routes/evidence.ts";
export * as evidenceRoutes from "./routes/evidence.ts";
export * as exportRoutes from "./routes/exports.ts";
export type {
  Bed,
  Farm,
  FarmDetail,
  Material,
  Office,
  Planting,
  Site,
  Structure,
  Valve,
} from "./routes/farms.ts";
export * as farmRoutes from "./routes/farms.ts";
export type { Guides, OwnGuide } from "./routes/guides.ts";
export * as guideRoutes from "./routes/guides.ts";
export type { Column, Import, ImportLine, LabMapping } from "./routes/imports.ts";
export * as importRoutes from "./routes/imports.ts";
export type { Run } from "./routes/jobs.ts";
export * as jobRoutes from "./routes/jobs.ts";
export type { Checkpoint, CheckpointVerdict } from "./routes/ledger.ts";
export * as ledgerRoutes from "./routes/ledger.ts";
export { CheckpointSchema } from "./routes/ledger.ts";
export type { Claim, Me, Role, Source } from "./routes/open.ts";
export * as openRoutes from "./routes/open.ts";
export type { AuditLine, Invitation, PersonOfOffice, Session } from "./routes/people.ts";
export * as peopleRoutes from "./routes/people.ts";
export type {
  Application,
  BedHistory,
  Delivery,
  DrainReading,
  Harvest,
  KindOfRecords,
  Note,
  Photo,
  PlantTest,
  Records,
  Sign,
  SoilTest,
  SoilWaterReading,
  Spray,
  Watering,
  WaterTest,
  WeatherDay,
  Work,
} from "./routes/records.ts";
export * as recordRoutes from "./routes/records.ts";
export * as seasonRecordRoutes from "./routes/seasonRecord.ts";
export {
  SEASON_TABLES,
  type SeasonRecord,
  type SeasonRow,
  type SeasonTable,
} from "./routes/seasonRecord.ts";
export type { Receipt, SensorKey, Series } from "./routes/sensors.ts";
export * as sensorRoutes from "./routes/sensors.ts";
export * as signInRoutes from "./routes/signIn.ts";
export type { IssuingSettings, StandingOrder, StandingOrderTerms } from "./routes/standingOrders.ts";
export * as standingOrderRoutes from "./routes/standingOrders.ts";
export type { PlotValue, Trial, TrialDetail } from "./routes/trials.ts";
export * as trialRoutes from "./routes/trials.ts";
export type { Alarm } from "./routes/weather.ts";
export * as weatherRoutes from "./routes/weather.ts";
export type { Webhook, WebhookAttempt, WebhookEvent } from "./routes/webhooks.ts";
export * as webhookRoutes from "./routes/webhooks.ts";
export type { WhatIfOf } from "./routes/whatIf.ts";
export * as whatIfRoutes from "./routes/whatIf.ts";
export {
  QUANTITIES,
  type Quantity,
  READING_FLAGS,
  type ReadingFlag,
  SENSOR_UNITS,
  SOIL_QUANTITIES,
} from "./sensorWords.ts";
export { proxiesIn, whoCalls } from "./whoCalls.ts";
