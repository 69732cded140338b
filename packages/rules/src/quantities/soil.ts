/** The soil quantities, in the order of the list. */
export const soilQuantities = [];
