import type { ContainerWatering } from "../../quantities/water/containerWatering.ts";
import { measure } from "../../text/message.ts";

/** From here on a can, below it a cup [L]. */
const CAN_L = 4;

/** Water as a can or a cup measures it. */
export const volume = (litres: number) =>
  litres < CAN_L ? measure(1000 * litres, "mL") : measure(litres, "L");

/** Pots that are filled once or more a day, and pots that last for days: the end of a key, and its number. */
export const howOften = ({
  everyDays,
  timesADay,
}: ContainerWatering): { often: "days" | "daily"; count: Record<string, number> } =>
  everyDays > 1
    ? { often: "days", count: { days: everyDays } }
    : { often: "daily", count: { times: timesADay } };
