import { GuideShape } from "./shape.ts";
import { soundness } from "./soundness.ts";

export type { Guide, GuideClass, GuideRate, GuideReading, Response, SoilTestClass } from "./shape.ts";

/**
 * A published or an office's own table that puts a soil test's numbers into classes, and where it has them its rates.
 * A guide that parses has no gap and no overlap at its printed precision.
 */
export const GuideSchema = GuideShape.superRefine(soundness);
