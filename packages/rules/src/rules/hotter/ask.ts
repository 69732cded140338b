import { localDay } from "../../core/days.ts";
import { refuse } from "../../core/errors.ts";
import type { ValveState } from "../../states/states.ts";
import { WITHOUT_PUNGENCY } from "../../tables/pungencyStudies.ts";
import type { StandingZone } from "../../water/zone.ts";

/** Nobody chose a share: the mildest of those that are tabulated (KY-7; common practice). */
export const MILDEST_ET_SHARE = 0.9;
/** The office set no bound: no drier than this on purpose (common practice). */
const LEAST_ET_SHARE = 0.8;

/** A zone that somebody wants hotter. */
interface AskedZone {
  zone: StandingZone;
  index: number;
}

/** What is asked of the valve. */
export interface Asked {
  state: ValveState;
  today: string;
  zones: [AskedZone, ...AskedZone[]];
  etShare: number;
  chosen: boolean;
  from: string;
  to: string | undefined;
}

type NotAsked = "no-plants" | "nobody" | "over" | "no-pungency";

/**
 * What somebody asks of this valve, or why the question does not arise.
 *
 * @throws DomainError where the stress cannot be given as asked: to a zone that shares its valve with one that must not dry,
 * beyond the office's bound, in two strengths on one valve, or backwards in time
 */
export function askOf(state: ValveState): Asked | NotAsked {
  const today = localDay(state.asOf, state.site.timeZone);
  const standing = state.zones.flatMap((zone, index) => {
    const { setOutOn, endedOn } = zone.planting;
    if (setOutOn === undefined || setOutOn > today || (endedOn !== undefined && endedOn <= today)) return [];
    return [{ zone: { ...zone, setOutOn }, index }];
  });
  if (standing.length === 0) return "no-plants";
  const everAsked = standing.filter(({ zone }) => zone.planting.deficit !== undefined);
  if (everAsked.length === 0) return "nobody";
  const isOpen = ({ zone: { planting } }: AskedZone) =>
    planting.deficit !== undefined && (planting.deficit.to === undefined || planting.deficit.to >= today);
  const [first, ...rest] = standing.filter(isOpen);
  if (!first) return "over";
  const zones: Asked["zones"] = [first, ...rest];
  const pungent = zones.filter(({ zone }) => !WITHOUT_PUNGENCY.has(zone.planting.marketType));
  if (pungent.length === 0) return "no-pungency";
  refuseShared(standing, isOpen, zones);
  const deficit = first.zone.planting.deficit;
  if (!deficit) throw new Error("an asked zone has a deficit");
  const etShare = deficit.etShare ?? MILDEST_ET_SHARE;
  refuseUnfit(state, zones, etShare);
  return {
    state,
    today,
    zones,
    etShare,
    chosen: deficit.etShare !== undefined,
    from: deficit.from,
    to: deficit.to,
  };
}

const REPLUMB =
  "give the block to be stressed its own shut-off: a tee in the main before its first bed, a valve and filter behind it, and its lines on that valve alone";

/** One valve gives one water: all of it may dry, or none. */
function refuseShared(standing: AskedZone[], isOpen: (zone: AskedZone) => boolean, asked: AskedZone[]): void {
  const wet = standing.find((zone) => !isOpen(zone));
  if (wet) {
    refuse(
      `zones.${wet.index}.planting.deficit`,
      `this planting shares the valve with one that is to be stressed, and nobody wants it stressed: ${REPLUMB}`,
      "every planting on the valve wants it, or the block has a valve of its own",
    );
  }
  const sweet = asked.find(({ zone }) => WITHOUT_PUNGENCY.has(zone.planting.marketType));
  if (sweet) {
    refuse(
      `zones.${sweet.index}.planting.marketType`,
      `this type has no pungency to gain and shares the valve with one that has: ${REPLUMB}`,
      "only types with pungency on a stressed valve",
      sweet.zone.planting.marketType,
    );
  }
}

function refuseUnfit(state: ValveState, zones: Asked["zones"], etShare: number): void {
  const least = state.settings.hotterLeastEtShare ?? LEAST_ET_SHARE;
  const [{ zone: first }] = zones;
  for (const { zone, index } of zones) {
    const path = `zones.${index}.planting.deficit`;
    const { deficit } = zone.planting;
    const share = deficit?.etShare ?? MILDEST_ET_SHARE;
    if (share < least) {
      refuse(
        `${path}.etShare`,
        `leaves less water than the least a deficit on purpose may leave here (${least})`,
        `at least ${least}`,
        share,
      );
    }
    if (share !== etShare || deficit?.from !== first.planting.deficit?.from) {
      const accepted = `etShare ${etShare} from ${first.planting.deficit?.from}`;
      refuse(path, "one valve can hold one deficit: share and first day must be the same", accepted);
    }
    if (deficit?.to !== undefined && deficit.to < deficit.from) {
      refuse(`${path}.to`, "must not be before its first day", `at least ${deficit.from}`, deficit.to);
    }
  }
}
