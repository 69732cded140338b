import type { Bed } from "../states/parts.ts";

/** The bed itself, without its alley: what the roots stand in and what a watering depth refers to. */
export const bedAreaM2 = (bed: Bed): number => bed.lengthM * bed.widthM;

/** The bed with its alley: what a rate per hectare refers to. */
export const croppedAreaM2 = (bed: Bed): number => bed.lengthM * bed.spacingM;
