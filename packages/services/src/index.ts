/** The use-cases: one verb a file, called by a route, a job and a script alike. */
export type { AuthDb } from "@pith/db";
export { ClaimLost } from "@pith/db";
export { LANGUAGES, type Language } from "@pith/rules";
export { getAdvisory, listAdvisories, markRead } from "./advice/advisories.ts";
export { answerAdvisory } from "./advice/answerAdvisory.ts";
export { getDraft, getRound, setDraftAside } from "./advice/drafts.ts";
export { expireAdvice } from "./advice/expireAdvice.ts";
export { issueDraft } from "./advice/issueDraft.ts";
export { changeIssuingSettings, getIssuingSettings } from "./advice/issuingSettings.ts";
export { askSecond, confirmSecond, sendBackSecond } from "./advice/secondReading.ts";
export { withdrawAdvisory } from "./advice/withdrawAdvisory.ts";
export { adoptBedPlan, getBedPlan, keepBedPlan } from "./bedPlans/bedPlans.ts";
export { readCalendar } from "./calendar/feed.ts";
export { getCalendarLink, makeCalendarLink, revokeCalendarLink } from "./calendar/link.ts";
export {
  type Actor,
  type Ctx,
  inOffice,
  isStaff,
  type Memberships,
  resolveMemberships,
  serverItself,
} from "./context.ts";
export { listCalls, markCalled } from "./delivery/calls.ts";
export type { DeliveryMeans } from "./delivery/means.ts";
export { addBrowser, changeDelivery, getDelivery, removeBrowser } from "./delivery/settings.ts";
export { stopMail } from "./delivery/stopMail.ts";
export { adviseAgain } from "./drafts/adviseAgain.ts";
export { type Erased, erasePerson, listErasable } from "./erasure/erasePerson.ts";
export { type SignIns, signInsIn } from "./erasure/signIns.ts";
export { type ErrorCode, notFound, ServiceError } from "./errors.ts";
export { addOwnEvidence, listOwnEvidence, retireOwnEvidence } from "./evidence/ownEvidence.ts";
export { getWorthMeasuring } from "./evidence/worthMeasuring.ts";
export { exportOfficeAsCsv } from "./exports/csvZip.ts";
export { exportFarm } from "./exports/exportFarm.ts";
export { exportOffice } from "./exports/exportOffice.ts";
export { importOffice } from "./exports/importOffice.ts";
export { takeInFarm } from "./exports/takeInFarm.ts";
export { type ExportVerdict, verifyExport } from "./exports/verifyExport.ts";
export { addBed, changeBed, getBed } from "./farms/beds.ts";
export { addFarm, changeFarm, getFarm, listFarms } from "./farms/farms.ts";
export { addMaterial, changeMaterial, getMaterial } from "./farms/materials.ts";
export { changeOfficeSettings, getOffice } from "./farms/office.ts";
export { addPlanting, changePlanting, getPlanting } from "./farms/plantings.ts";
export { addSite, changeSite, getSite } from "./farms/sites.ts";
export { addStructure, changeStructure, getStructure } from "./farms/structures.ts";
export { addValve, changeValve, getValve } from "./farms/valves.ts";
export { addGuide, getGuide, listGuides, retireGuide } from "./guides/guides.ts";
export {
  beginRequest,
  heldBy,
  keepAnswer,
  letGo,
} from "./idempotency/begin.ts";
export { keyHash, openAnswer, requestHash, sealAnswer } from "./idempotency/sealedAnswer.ts";
export {
  discardImport,
  forgetLabMapping,
  getImport,
  listImports,
  listLabMappings,
  previewImport,
  refusedCsv,
  Stopped,
  saveImport,
  type Watch,
} from "./imports/index.ts";
export { doJob, type Job, keepBroken, sayProblem, type WorkerDeps } from "./jobs/doJob.ts";
export { nightlyTasks, wantNightly } from "./jobs/nightly.ts";
export { getRun, listRuns, retryRun, wantRun } from "./jobs/runs.ts";
export { tasks } from "./jobs/tasks.ts";
export { type About, wantJob } from "./jobs/wantJob.ts";
export { checkCheckpoint, getCheckpoint, listCheckpoints, makeCheckpoint } from "./ledger/checkpoints.ts";
export { getHistory, listHistories, verifyKeptHistory } from "./ledger/histories.ts";
export { openLedger } from "./ledger/operator.ts";
export { openSigner, type Signer } from "./ledger/signing.ts";
export { type LedgerTools, openLedgerTools } from "./ledger/tools.ts";
export { listLedger, replayEntry, verifyLedger } from "./ledger/verbs.ts";
export { type Mail, MailSchema } from "./mail/mail.ts";
export { queueMail } from "./mail/queueMail.ts";
export { computeQuantity, listQuantities } from "./numbers/quantities.ts";
export { adviseOnState, listRules } from "./numbers/rules.ts";
export { acceptInvitation, readInvitation } from "./people/acceptInvitation.ts";
export {
  accountOf,
  endOtherSessionsOf,
  endSessionOf,
  renameAccount,
  sessionsOf,
} from "./people/accounts.ts";
export { countAttempt, forgetAttempts, type Limit, type Standing } from "./people/attempts.ts";
export { invite, listInvitations, resendInvitation, revokeInvitation } from "./people/invitations.ts";
export {
  CONFIRM_LASTS_HOURS,
  confirmLetter,
  LINK_LASTS_MINUTES,
  RESET_LASTS_MINUTES,
  resetLetter,
  signInLetter,
} from "./people/letters.ts";
export { listAudit } from "./people/listAudit.ts";
export { askForSecondStep, changePerson, leaveOffice, listPeople, removePerson } from "./people/people.ts";
export { type PersonEvent, recordPersonEvent, renameInOffices } from "./people/personAudit.ts";
export { linkTo, type Post, postOf } from "./people/post.ts";
export type { Visitor } from "./people/visitor.ts";
export { addApplication, removeApplication } from "./records/applications.ts";
export { addBedHistory, removeBedHistory } from "./records/bedHistory.ts";
export { addDelivery, removeDelivery } from "./records/deliveries.ts";
export { addDrainReading, removeDrainReading } from "./records/drainReadings.ts";
export { getRecords } from "./records/getRecords.ts";
export { getWeather } from "./records/getWeather.ts";
export { addHarvest, removeHarvest } from "./records/harvests.ts";
export { addNote, removeNote } from "./records/notes.ts";
export { addPhoto, getPhoto, removePhoto } from "./records/photos.ts";
export { addPlantTest, removePlantTest } from "./records/plantTests.ts";
export { addSign, removeSign } from "./records/signs.ts";
export { addSoilWater, removeSoilWater } from "./records/soilWater.ts";
export { addSpray, removeSpray } from "./records/sprays.ts";
export { addWatering, removeWatering } from "./records/waterings.ts";
export { addWaterTest, removeWaterTest } from "./records/waterTests.ts";
export { addWork, removeWork } from "./records/works.ts";
export { sayAnswer } from "./saying/sayAnswer.ts";
export { getSeasonRecord, getSeasonTable } from "./seasonRecord/verbs.ts";
export { appendReadings } from "./sensors/appendReadings.ts";
export { csvOf } from "./sensors/csvOf.ts";
export { keepReadings } from "./sensors/keep.ts";
export {
  addSensorKey,
  changeSensorKey,
  listSensorKeys,
  revokeSensorKey,
  rotateSensorKey,
} from "./sensors/keys.ts";
export { readPlain } from "./sensors/plain.ts";
export { getReadingDays, getReadingHours, getReadings } from "./sensors/readBack.ts";
export { resolveSenml } from "./sensors/senml.ts";
export { addSeries, changeSeries, listSeries } from "./sensors/series.ts";
export { settleFarm } from "./sensors/settle.ts";
export { type VerifiedKey, verifySensorKey } from "./sensors/verifyKey.ts";
export { wantSettling } from "./sensors/wantSettling.ts";
export { issueByOrders } from "./standingOrders/issueByOrders.ts";
export {
  confirmStandingOrder,
  listStandingOrders,
  pauseStandingOrder,
  revokeStandingOrder,
} from "./standingOrders/keep.ts";
export { signAnewStandingOrder, signStandingOrder } from "./standingOrders/sign.ts";
export { trialAsEvidence } from "./trials/trialAsEvidence.ts";
export { addTrial, changeTrial, getTrial, keepPlotValues, listTrials, removeTrial } from "./trials/trials.ts";
export { etagOfText, hasTag } from "./unchanged.ts";
export { forecastsAreDue } from "./weather/forecastsAreDue.ts";
export { metNorway } from "./weather/metNorway.ts";
export { pullForecasts } from "./weather/pullForecasts.ts";
export { forecastSettings, forecastSourcesOf } from "./weather/settings.ts";
export {
  addWebhook,
  changeWebhook,
  listWebhookAttempts,
  listWebhooks,
  removeWebhook,
  rotateWebhookSecret,
  testWebhook,
} from "./webhooks/endpoints.ts";
export { draftWhatIf, getWhatIf, letGoWhatIf } from "./whatIf/verbs.ts";
