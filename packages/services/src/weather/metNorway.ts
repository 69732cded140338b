import { getBounded } from "./bounded.ts";
import { MET_NORWAY } from "./known.ts";
import { readForecast } from "./readForecast.ts";
import { type Fetched, type ForecastPlace, type ForecastSource, SourceFailure } from "./source.ts";

export interface MetNorwayOptions {
  /** Where this office can be reached, in the User-Agent: the service asks for it and refuses who gives none. */
  contact: string;
  /** Address of the product, up to and without its last part. */
  baseUrl?: string;
  timeoutMs?: number;
}

const PRODUCT = "https://api.met.no/weatherapi/locationforecast/2.0";
const TIMEOUT_MS = 15_000;
/** Ten times what a whole series of the product takes. */
const MOST_BYTES = 3_000_000;
/** More are refused by the service; the fourth is 11 m. */
const DECIMALS = 4;

/**
 * Locationforecast 2.0 of the Norwegian Meteorological Institute: worldwide, without a key. Its terms of service ask
 * for an identifying User-Agent, at most four decimals, no question before `Expires`, `If-Modified-Since`, and to heed
 * 429 (slow down) and 203 (this version will end).
 */
export function metNorway({
  contact,
  baseUrl = PRODUCT,
  timeoutMs = TIMEOUT_MS,
}: MetNorwayOptions): ForecastSource {
  const { id, name, attribution } = MET_NORWAY;
  return {
    id,
    attribution,
    async fetch(place: ForecastPlace, since?: string): Promise<Fetched> {
      const headers = {
        accept: "application/json",
        "user-agent": `Pith/1 ${contact}`,
        ...(since && { "if-modified-since": since }),
      };
      const bounds = { timeoutMs, maxBytes: MOST_BYTES };
      const { response, text } = await getBounded(addressOf(baseUrl, place), headers, name, bounds);
      const askAgainAt = instantIn(response.headers.get("expires"));
      const deprecated = response.status === 203;
      if (response.status === 304) {
        if (since === undefined)
          throw new SourceFailure(`${name} answered "not changed" to a first question.`);
        return { kind: "unchanged", askAgainAt, deprecated };
      }
      if (response.status !== 200 && response.status !== 203) throw refusalOf(response, name);
      const forecast = readForecast(text, name, place.timeZone);
      const lastModified = response.headers.get("last-modified");
      return { kind: "fresh", forecast, since: lastModified, askAgainAt, deprecated };
    },
  };
}

function addressOf(baseUrl: string, { latitudeDeg, longitudeDeg, elevationM }: ForecastPlace): string {
  const query = new URLSearchParams({
    lat: String(Number(latitudeDeg.toFixed(DECIMALS))),
    lon: String(Number(longitudeDeg.toFixed(DECIMALS))),
    altitude: String(Math.round(elevationM)),
  });
  return `${baseUrl}/complete?${query}`;
}

function refusalOf({ status, headers }: Response, name: string): SourceFailure {
  if (status === 429) {
    const seconds = Number(headers.get("retry-after"));
    const pauseMs = Number.isFinite(seconds) && seconds > 0 ? seconds * 1000 : null;
    return new SourceFailure(`${name} was asked too often (429) and wants a pause.`, pauseMs);
  }
  if (status === 401 || status === 403) {
    return new SourceFailure(
      `${name} refused the question (${status}): check PITH_FORECAST_CONTACT, by which it knows who asks.`,
    );
  }
  if (status === 422) return new SourceFailure(`${name} has no forecast for this place (422).`);
  return new SourceFailure(`${name} answered with an error (${status}).`);
}

/** An HTTP date as an instant; null where there is none or it cannot be read. */
function instantIn(header: string | null): string | null {
  const ms = header === null ? Number.NaN : Date.parse(header);
  return Number.isNaN(ms) ? null : new Date(ms).toISOString();
}
