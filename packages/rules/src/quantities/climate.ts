/** The climate quantities, in the order of the list. */
export const climateQuantities = [];
