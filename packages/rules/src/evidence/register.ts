import { coldRecordClaims } from "./claims/cold-record.ts";
import { coldTonightClaims } from "./claims/cold-tonight.ts";
import { companyClaims } from "./claims/company.ts";
import { containerClaims } from "./claims/containers.ts";
import { feedingClaims } from "./claims/feeding.ts";
import { hardeningClaims } from "./claims/hardening.ts";
import { hotterClaims } from "./claims/hotter.ts";
import { irrigateClaims } from "./claims/irrigate.ts";
import { limeClaims } from "./claims/lime.ts";
import { lookCloserClaims } from "./claims/look-closer.ts";
import { manureTimingClaims } from "./claims/manure-timing.ts";
import { missingClaims } from "./claims/missing.ts";
import { nightHeatClaims } from "./claims/night-heat.ts";
import { ripeClaims } from "./claims/ripe.ts";
import { rotationClaims } from "./claims/rotation.ts";
import { saltClaims } from "./claims/salt.ts";
import { setOutClaims } from "./claims/set-out.ts";
import { settingDepthClaims } from "./claims/setting-depth.ts";
import { shedClaims } from "./claims/shed.ts";
import { soilReadingClaims } from "./claims/soil-reading.ts";
import { sowByClaims } from "./claims/sow-by.ts";
import { stageClaims } from "./claims/stage.ts";
import { tooHotClaims } from "./claims/too-hot.ts";
import { toppingClaims } from "./claims/topping.ts";
import { trialClaims } from "./claims/trial.ts";
import { woodAshClaims } from "./claims/wood-ash.ts";
import { aciditySources } from "./sources/acidity.ts";
import { coldSources } from "./sources/cold.ts";
import { containerSources } from "./sources/containers.ts";
import { diagnosisSources } from "./sources/diagnosis.ts";
import { growthSources } from "./sources/growth.ts";
import { heatSources } from "./sources/heat.ts";
import { layoutSources } from "./sources/layout.ts";
import { manureSources } from "./sources/manure.ts";
import { plantSources } from "./sources/plant.ts";
import { soilSources } from "./sources/soil.ts";
import { statisticsSources } from "./sources/statistics.ts";
import { stressSources } from "./sources/stress.ts";
import { trainingSources } from "./sources/training.ts";
import { uncertaintySources } from "./sources/uncertainty.ts";
import { warmthSources } from "./sources/warmth.ts";
import { waterSources } from "./sources/water.ts";
import type { Claim, Source } from "./types.ts";

/** Every source that a rule, a quantity or a table names, by id. */
export const sources: ReadonlyMap<string, Source> = new Map(
  [
    ...plantSources,
    ...heatSources,
    ...warmthSources,
    ...coldSources,
    ...waterSources,
    ...soilSources,
    ...aciditySources,
    ...manureSources,
    ...containerSources,
    ...layoutSources,
    ...stressSources,
    ...growthSources,
    ...trainingSources,
    ...diagnosisSources,
    ...uncertaintySources,
    ...statisticsSources,
  ].map((s) => [s.id, s]),
);

/** Every claim that a rule leans on, by id. */
export const claims: ReadonlyMap<string, Claim> = new Map(
  [
    ...setOutClaims,
    ...coldRecordClaims,
    ...coldTonightClaims,
    ...nightHeatClaims,
    ...hardeningClaims,
    ...sowByClaims,
    ...stageClaims,
    ...ripeClaims,
    ...settingDepthClaims,
    ...toppingClaims,
    ...lookCloserClaims,
    ...irrigateClaims,
    ...hotterClaims,
    ...saltClaims,
    ...tooHotClaims,
    ...soilReadingClaims,
    ...limeClaims,
    ...woodAshClaims,
    ...feedingClaims,
    ...shedClaims,
    ...manureTimingClaims,
    ...missingClaims,
    ...containerClaims,
    ...companyClaims,
    ...rotationClaims,
    ...trialClaims,
  ].map((c) => [c.id, c]),
);

/** The claims of one rule, in the register's order. */
export const claimsOf = (ruleId: string): Claim[] => [...claims.values()].filter((c) => c.rule === ruleId);
