import type { Working } from "../../core/working.ts";
import { fao56 } from "../../quantities/cite.ts";
import { type ContainerWateringInput, containerWatering } from "../../quantities/water/containerWatering.ts";
import { demandAhead } from "../containers/demand.ts";
import { drainOf } from "../containers/drain.ts";
import { mediumOf, oneContainer } from "../containers/filling.ts";
import type { ValveReading } from "./decide.ts";
import type { ZoneReading } from "./reading.ts";
import { litresOfBed, type ValveSetting } from "./setting.ts";

/** Containers that the valve would give more than they hold. */
export interface Overfilled {
  bedId: string;
  input: ContainerWateringInput;
  /** What one filling of a container gives its plants, as the rule **containers** has it [L]. */
  holdsL: number;
  /** That and the share that is to drain: no more is given to one at a time [L]. */
  mostL: number;
}

/**
 * The beds of containers to which a run that another bed asks for brings more at a time than a container holds. Containers that
 * are short first themselves have the run reckoned for them.
 */
export function overfilled(setting: ValveSetting, r: ValveReading): Overfilled[] {
  const asking = r.governing.zone.bed.id;
  const fillings = new Map<string, Overfilled>();
  for (const z of r.zones) {
    const filling = z.zone.bed.id === asking ? undefined : fillingOf(setting, z);
    // Several plantings in one set of containers: what the thirstiest leaves ready is the least.
    if (filling && filling.holdsL < (fillings.get(filling.bedId)?.holdsL ?? Number.POSITIVE_INFINITY))
      fillings.set(filling.bedId, filling);
  }
  return r.zones.flatMap(({ zone: { bed } }, i) => {
    const filling = fillings.get(bed.id);
    const isFirst = r.zones.findIndex((z) => z.zone.bed.id === bed.id) === i;
    const eachL = litresOfBed(setting, bed, r.litres) / (bed.containers?.count ?? 1) / r.rounds;
    return filling && isFirst && eachL > filling.mostL ? [filling] : [];
  });
}

function fillingOf(setting: ValveSetting, z: ZoneReading): Overfilled | undefined {
  const { bed, setOutOn } = z.zone;
  if (bed.kind !== "containers" || !bed.containers) return undefined;
  const { site, weather, forecast } = setting.state;
  const state = { ...z.zone, site, weather, forecast };
  const etcMm = demandAhead({ state, today: setting.today, setOutOn })?.meanMm ?? z.today.etcMm;
  const available = mediumOf(bed, bed.containers, `zones.${z.index}.bed`) ?? z.available;
  const { toDrain } = drainOf([], setting.today);
  const input = oneContainer(bed, bed.containers, available, etcMm, toDrain);
  const { readyL } = containerWatering(input);
  return { bedId: bed.id, input, holdsL: readyL, mostL: readyL / (1 - toDrain) };
}

/** The least that must be known to check it with a pencil. */
export function writeOverfilled(w: Working, over: Overfilled[]): void {
  for (const { input, holdsL } of over) {
    w.line(
      "V_ready",
      "water it gives without holding plants back",
      `p x available x volume = ${input.depletionFraction} x ${input.availableM3PerM3} x ${input.volumeL}`,
      holdsL,
      "L",
      fao56("eq. 82, 83"),
    );
  }
}
