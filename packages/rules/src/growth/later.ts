/** The later of two calendar days. */
export const later = (a: string, b: string): string => (daysInOrder(a, b) ? b : a);

const daysInOrder = (a: string, b: string): boolean => a <= b;
