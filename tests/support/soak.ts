/** How often a test goes round: a little in each run, in full in `npm run soak`. */
export const soak = (short: number, full: number): number => (process.env.PITH_SOAK ? full : short);
