/** The water quantities, in the order of the list. */
export const waterQuantities = [];
