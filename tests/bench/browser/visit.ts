import type { Page } from "playwright-core";
import { openPage, type Role } from "../../browser/browser.ts";

/**
 * A phone of the middle sort on a poor mobile link: the numbers that Lighthouse calls "slow 4G" and takes as its mobile
 * default, 1.6 Mbit/s down, 750 kbit/s up and 150 ms there and back. Chromium adds the delay to each request.
 */
const LINK = { offline: false, latency: 150, downloadThroughput: 1.6e6 / 8, uploadThroughput: 750e3 / 8 };
const CPU_SLOWED = 4;

/** The browser tells of no interaction that was quicker than this. */
const QUICKEST_TOLD_MS = 16;

/** Long enough for whatever an interaction sets off to be painted and told of. */
const SETTLE_MS = 600;

export interface Visited {
  /** As transferred: compressed, with each answer's head. Everything until the network falls silent, prefetches too. */
  scriptKb: number;
  largestPaintMs: number;
  /** The slowest of the clicks and keys, from the press until what it changed is painted. */
  interactionMs: number;
}

interface Told {
  largestPaintMs: number;
  interactionMs: number;
}
const told = (page: Page): Promise<Told> =>
  page.evaluate(() => (globalThis as unknown as { told: Told }).told);

/** One visit with nothing in the browser's cache, then each of the acts once. */
export async function visit(
  address: string,
  { role, acts }: { role?: Role; acts: ((page: Page) => Promise<void>)[] },
): Promise<Visited> {
  const { context, page, errors } = await openPage({ role, width: 390 });
  try {
    // Signing in for the first time leaves scripts in the cache.
    if (page.url() !== "about:blank") throw new Error("sign in before the first visit");
    const cdp = await context.newCDPSession(page);
    const scripts = new Set<string>();
    let bytes = 0;
    cdp.on("Network.responseReceived", ({ requestId, response }) => {
      if (response.mimeType.includes("javascript")) scripts.add(requestId);
    });
    cdp.on("Network.loadingFinished", ({ requestId, encodedDataLength }) => {
      if (scripts.has(requestId)) bytes += encodedDataLength;
    });
    await cdp.send("Network.enable");
    await cdp.send("Network.emulateNetworkConditions", LINK);
    await cdp.send("Emulation.setCPUThrottlingRate", { rate: CPU_SLOWED });
    await page.addInitScript((quickest) => {
      const told = { largestPaintMs: 0, interactionMs: quickest };
      Object.assign(globalThis, { told });
      new PerformanceObserver((list) => {
        for (const { startTime } of list.getEntries()) told.largestPaintMs = startTime;
      }).observe({ type: "largest-contentful-paint", buffered: true });
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries() as (PerformanceEntry & { interactionId?: number })[])
          if (entry.interactionId) told.interactionMs = Math.max(told.interactionMs, entry.duration);
      }).observe({ type: "event", durationThreshold: quickest, buffered: true } as PerformanceObserverInit);
    }, QUICKEST_TOLD_MS);
    await page.goto(address, { waitUntil: "load" });
    await page.waitForLoadState("networkidle");
    const { largestPaintMs } = await told(page);
    const scriptKb = bytes / 1000;
    for (const act of acts) {
      await act(page);
      await page.waitForTimeout(SETTLE_MS);
    }
    const { interactionMs } = await told(page);
    if (errors.length > 0) throw new Error(`${address} had errors: ${errors.join("; ")}`);
    return { scriptKb, largestPaintMs, interactionMs };
  } finally {
    await context.close();
  }
}
