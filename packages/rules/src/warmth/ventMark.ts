/**
 * Air under a cover at which it must be open: the top of the published range for growth, 24-30 C by day (UC ANR 7217).
 * That a cover is opened there, and not somewhat later, is common practice.
 */
export const INSIDE_LIMIT_C = 30;
/** Published mark for cool crops, for comparison: vent when the day goes above 60 F (Penn State Extension 2020). */
export const COOL_CROP_VENT_C = 15.6;
