import axe from "axe-core";
import type { Page } from "playwright-core";

/** What axe-core finds against WCAG 2.2 AA on the page as it stands; on every page that a test shows, the same. */

const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

/** Each rule that is broken and where. axe is put into a page once, which takes longer than one look of it. */
export async function violations(page: Page): Promise<string[]> {
  // Nought is what comes back: all of axe would be written down for us else.
  if (!(await page.evaluate(() => "axe" in window))) await page.evaluate(`${axe.source};0`);
  return page.evaluate(async (values) => {
    const here = window as unknown as { axe: typeof axe };
    // What passed is not wanted in words: writing it down takes longer than finding it.
    const { violations } = await here.axe.run(document, {
      runOnly: { type: "tag", values },
      resultTypes: ["violations"],
    });
    return violations.map(({ id, nodes }) => `${id} at ${nodes.map((n) => n.target.join(" ")).join(", ")}`);
  }, WCAG);
}
