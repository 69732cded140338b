/** Whose things. */
export interface OfFarm {
  officeId: string;
  farmId: string;
}
