import type { Records } from "@pith/contract";

export type Lot = Records["deliveries"][number];

/** What lies there of a material, lot by lot, the oldest first as it is used. A lot that was used up is left out. */
export const lotsOf = (records: Records, materialId: string): Lot[] =>
  records.deliveries
    .filter((one) => one.materialId === materialId && one.leftKg !== 0)
    .toSorted((a, b) => a.receivedOn.localeCompare(b.receivedOn));
