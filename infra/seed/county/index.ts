import { brackenYard } from "./brackenYard.ts";
import { heronBottom } from "./heronBottom.ts";
import { lowFell } from "./lowFell.ts";
import { oldCreamery } from "./oldCreamery.ts";
import { quarryLane } from "./quarryLane.ts";
import { saltmarshEnd } from "./saltmarshEnd.ts";
import { threeLarches } from "./threeLarches.ts";
import type { DemoFarm } from "./types.ts";
import { windleTop } from "./windleTop.ts";

/** The farms of the invented county. The first is the demo farmer's. */
export const FARMS: DemoFarm[] = [
  lowFell,
  heronBottom,
  threeLarches,
  quarryLane,
  windleTop,
  saltmarshEnd,
  oldCreamery,
  brackenYard,
];
