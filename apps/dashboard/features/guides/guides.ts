import { farmRoutes, guideRoutes, type OwnGuide } from "@pith/contract";
import type { Guide } from "@pith/rules";
import { cache } from "react";
import { call } from "../../server/api.ts";
import { agentSeat } from "../../server/seat.ts";
import { register } from "../evidence/register.ts";

/** The guides held here and the office's own, and which of them the office chose. */
export const guidesOfOffice = cache(async () => {
  const { officeId } = await agentSeat();
  const params = { officeId };
  const [{ held, own }, office] = await Promise.all([
    call(guideRoutes.listGuides, { params }),
    call(farmRoutes.getOffice, { params }),
  ]);
  return { held, own, chosen: office.settings.soilGuide };
});

/** One guide, whole; `own` where it is one of the office's own. No own guide has the id of one held here. */
export const guideOf = cache(async (guideId: string): Promise<{ guide: Guide; own: OwnGuide | null }> => {
  const { own } = await guidesOfOffice();
  const mine = own.find((one) => one.guide.id === guideId);
  if (mine) return { guide: mine.guide, own: mine };
  return { guide: await call(guideRoutes.getGuide, { params: { guideId } }), own: null };
});

/** Where a guide comes from, as it is cited. */
export async function citationOf({ source }: Guide): Promise<string> {
  const { sources } = await register();
  const cite = sources.find(({ id }) => id === source.key)?.cite;
  if (cite === undefined || source.key === "office-guide") return source.locator ?? source.key;
  return source.locator === undefined ? cite : `${cite} (${source.locator})`;
}

/** The schema's bound of an office's source. */
const MOST_LETTERS = 300;

/**
 * A guide as an office gives its own: one held here becomes an example to change and to add. It says then that the office
 * answers for it, and where it came from.
 */
export async function inOwnForm(guide: Guide): Promise<Guide> {
  if (guide.status === "office") return guide;
  const locator = (await citationOf(guide)).slice(0, MOST_LETTERS);
  return {
    ...guide,
    id: `${guide.id.slice(0, 59)}-own`,
    source: { key: "office-guide", locator },
    status: "office",
  };
}
