/** Run once by the server of the pages before it takes a request. */
export async function register(): Promise<void> {
  if (process.env.NEXT_RUNTIME === "nodejs") {
    const { proxiesIn } = await import("@pith/contract");
    const { markCallers } = await import("./server/markCallers.ts");
    markCallers(proxiesIn(process.env.PITH_PROXIES ?? ""));
  }
}
