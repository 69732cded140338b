import type { StageLengths } from "../quantities/water/cropCoefficient.ts";
import { PEPPER_STAGE_LENGTHS } from "../tables/stageLengths.ts";

const [summerRow] = PEPPER_STAGE_LENGTHS;

/**
 * The stages counted from setting out [days]: the row of FAO-56 Table 11 for plantings of April to June, with the longer
 * first stage (30 of "25/30"), because cool short seasons start slowly. It is used as printed, not scaled.
 */
export const STAGES: StageLengths = {
  initial: summerRow.initial.high,
  development: summerRow.development,
  mid: summerRow.mid,
  late: summerRow.late,
};

/** Setting out to the end of the late stage [days]. */
export const SEASON_DAYS = STAGES.initial + STAGES.development + STAGES.mid + STAGES.late;
