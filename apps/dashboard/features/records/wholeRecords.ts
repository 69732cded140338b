import { type KindOfRecords, type Records, recordRoutes } from "@pith/contract";
import { call } from "../../server/api.ts";

/** What stood in beds before has no day: it comes whole with every page. */
type Paged = Exclude<KindOfRecords, "bedHistory">;

/**
 * All of these kinds that a farm ever wrote down, newest first, page after page until there is none older; no other kind
 * fills a page meanwhile. As the API answers, kinds not named are empty; which beds are closed now is always there.
 */
export async function wholeRecords(
  params: { officeId: string; farmId: string },
  kinds: readonly [Paged, ...Paged[]],
  read = (query: { kinds: readonly Paged[]; before?: string }): Promise<Records> =>
    call(recordRoutes.getRecords, { params, query }),
): Promise<Records> {
  const whole = await read({ kinds });
  let before = whole.older;
  while (before !== null) {
    const page = await read({ kinds, before });
    for (const kind of kinds) (whole[kind] as unknown[]).push(...page[kind]);
    before = page.older;
  }
  return { ...whole, older: null };
}
