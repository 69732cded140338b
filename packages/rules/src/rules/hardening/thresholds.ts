/** Days before setting out from which the question arises (cp). */
export const AHEAD_DAYS = 14;
/** Days of hardening (TR-14, from memory: 7 to 10). The longer end is planned, so that days kept in do not delay. */
export const PLAN_DAYS = 10;
export const FEWEST_DAYS = 7;
/** Hours outside on each day; from the seventh on all day (cp). */
export const HOURS_OUT = [2, 3, 4, 6, 8, 10, 12, 12, 12, 12] as const;
/** Days in shade and out of the wind before they meet sun and some wind (cp). */
export const SHELTERED_DAYS = 3;
/** Last nights that they stay out, where the night keeps above the floor (cp). */
export const NIGHTS_OUT = 2;
/** Air to carry them out at first (cp); after the sheltered days the office's floor is enough. */
export const FIRST_DAYS_C = 15;
/** A day's mean wind at which soft leaves tear and dry: a fresh breeze by Beaufort begins at 8 m/s (cp: in at 6). */
export const WINDY_M_PER_S = 6;
