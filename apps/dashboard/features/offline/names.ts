/** Fields that a form carries for its way to the office, beside what it asks. */

/** Which sending this is, the same through every try. */
export const SEND_KEY = "sendKey";
/** Photographs, made small already. */
export const PHOTOS = "photos";
/** Said in the page once the phone keeps what a form held. */
export const TAKEN = "pith-taken";
