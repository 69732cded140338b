import {
  adviceRoutes,
  bedPlanRoutes,
  calendarRoutes,
  deliveryRoutes,
  evidenceRoutes,
  exportRoutes,
  farmRoutes,
  guideRoutes,
  importRoutes,
  jobRoutes,
  ledgerRoutes,
  openRoutes,
  peopleRoutes,
  recordRoutes,
  seasonRecordRoutes,
  sensorRoutes,
  signInRoutes,
  standingOrderRoutes,
  trialRoutes,
  weatherRoutes,
  webhookRoutes,
  whatIfRoutes,
} from "@pith/contract";

/** Every route of the contract, found in what it exports: one that is added later is found as well. */

export interface Route {
  method: string;
  path: string;
  summary?: string;
  request?: { body?: unknown };
}

const isRoute = (value: unknown): value is Route =>
  typeof value === "object" &&
  value !== null &&
  "method" in value &&
  typeof value.method === "string" &&
  "path" in value &&
  typeof value.path === "string" &&
  "responses" in value;

const routesIn = (value: unknown): Route[] => {
  if (isRoute(value)) return [value];
  return typeof value === "object" && value !== null ? Object.values(value).filter(isRoute) : [];
};

export const everyRoute: Route[] = [
  openRoutes,
  signInRoutes,
  peopleRoutes,
  farmRoutes,
  guideRoutes,
  recordRoutes,
  seasonRecordRoutes,
  importRoutes,
  jobRoutes,
  adviceRoutes,
  ledgerRoutes,
  exportRoutes,
  standingOrderRoutes,
  weatherRoutes,
  sensorRoutes,
  bedPlanRoutes,
  trialRoutes,
  evidenceRoutes,
  deliveryRoutes,
  calendarRoutes,
  webhookRoutes,
  whatIfRoutes,
]
  .flatMap((file) => Object.values(file))
  .flatMap(routesIn);

export const keyOf = ({ method, path }: Route): string => `${method.toUpperCase()} ${path}`;

/** The path with its places filled. */
export const fill = (path: string, params: Record<string, string>): string =>
  path.replace(/\{(\w+)\}/g, (_, name: string) => params[name] ?? `no-${name}`);
