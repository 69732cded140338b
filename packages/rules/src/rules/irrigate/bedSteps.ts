import type { Step } from "../../core/rule.ts";
import { measure, say } from "../../text/message.ts";
import type { ValveReading } from "./decide.ts";
import { overfilled } from "./potFilling.ts";
import { bedOf, litresOfBed, type ValveSetting } from "./setting.ts";

/** Millilitres where a litre jug would not show it. */
const small = (litres: number) => (litres < 1 ? measure(litres * 1000, "mL") : measure(litres, "L"));

/** What each bed gets of a run, by its ground, and each plant or container in it; no container more than it holds. */
export function bedSteps(setting: ValveSetting, r: ValveReading): Step[] {
  const beds = new Map(setting.zones.map(({ zone }) => [zone.bed.id, zone.bed]));
  const over = new Map(overfilled(setting, r).map((filling) => [filling.bedId, filling]));
  return [...beds.values()].map((bed) => {
    const litres = litresOfBed(setting, bed, r.litres);
    const shared = { bed: bedOf(setting, bed), litres: measure(litres, "L") };
    if (!bed.containers) {
      const plants = setting.zones
        .filter(({ zone }) => zone.bed.id === bed.id)
        .reduce((sum, { zone }) => sum + zone.planting.plants, 0);
      return { text: say("irrigate.step.bed", { ...shared, each: small(litres / plants) }) };
    }
    const { count } = bed.containers;
    const each = small(litres / count);
    const filling = over.get(bed.id);
    if (!filling) return { text: say("irrigate.step.container", { ...shared, each }) };
    return {
      text: say("irrigate.step.container-overfilled", {
        ...shared,
        each,
        most: small(filling.mostL),
        all: measure(filling.mostL * count, "L"),
        holds: small(filling.holdsL),
      }),
    };
  });
}
