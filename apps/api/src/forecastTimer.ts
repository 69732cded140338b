import { type Ctx, pullForecasts, serverItself } from "@pith/services";

/** How often it looks for what is due; when a site is due says the verb, hourly at most (common practice). */
const LOOK_EVERY_MS = 15 * 60_000;

interface Options extends Pick<Ctx, "db" | "now" | "forecastSources"> {
  /** Whose sites are pulled. Row-level security shows this server no list of offices, so they are named. */
  officeIds: readonly string[];
  log: (line: Record<string, unknown>) => void;
}

/** Pulls what is due now, and again and again until it is stopped; one round at a time. */
export function startForecastTimer({ officeIds, log, ...deps }: Options): { stop: () => void } {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let stopped = false;
  const round = async () => {
    for (const officeId of officeIds) {
      const requestId = globalThis.crypto.randomUUID();
      try {
        const { sites } = await pullForecasts({ ...deps, officeId, requestId, actor: serverItself }, {});
        const how = (outcome: string) => sites.filter((s) => s.outcome === outcome).length;
        const failures = sites.filter((s) => s.outcome === "failed").map((s) => s.message);
        log({ level: "info", requestId, pulled: how("stored"), unchanged: how("unchanged"), failures });
      } catch (error) {
        const message = error instanceof Error ? error.message : String(error);
        if (!stopped) log({ level: "error", requestId, message: `Forecasts were not pulled: ${message}` });
      }
      if (stopped) return;
    }
    timer = setTimeout(round, LOOK_EVERY_MS);
    timer.unref();
  };
  void round();
  return {
    stop: () => {
      stopped = true;
      clearTimeout(timer);
    },
  };
}
