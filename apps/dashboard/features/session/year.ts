/** How long a browser keeps what its reader chose. */
export const YEAR_S = 365 * 24 * 3600;
