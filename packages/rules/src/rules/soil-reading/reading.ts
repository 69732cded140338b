import type { SoilTest } from "../../states/parts.ts";
import type { cationsOf } from "./cations.ts";
import type { SaltReading } from "./salts.ts";
import type { ReadValue, RefusedValue } from "./values.ts";

/** Everything read out of one test. */
export interface SoilReading {
  test: SoilTest;
  read: ReadValue[];
  refused: RefusedValue[];
  cations: ReturnType<typeof cationsOf>;
  salts: SaltReading | undefined;
}
