import { z } from "zod";
import { metNorway } from "./metNorway.ts";
import type { ForecastSource } from "./source.ts";

/** What a deployment says about forecasts: the API on Node and on the edge and the command read it alike. */
export const forecastSettings = {
  /** How whoever runs this can be reached, e.g. a mail address: the service asks for it with each question. */
  contact: z
    .string()
    .regex(/^[\x21-\x7e][\x20-\x7e]{2,199}$/, "must be a mail address or web address in plain letters")
    .optional(),
  /** Another address of the same service, for tests and mirrors. */
  url: z.url().optional(),
};

/** The services that can be asked here. Without a contact none: they refuse who does not say who asks. */
export function forecastSourcesOf(said: {
  PITH_FORECAST_CONTACT?: string;
  PITH_FORECAST_URL?: string;
}): ForecastSource[] {
  const { PITH_FORECAST_CONTACT: contact, PITH_FORECAST_URL: baseUrl } = said;
  return contact ? [metNorway({ contact, baseUrl })] : [];
}
