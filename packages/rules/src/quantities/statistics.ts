/** The statistics quantities, in the order of the list. */
export const statisticsQuantities = [];
