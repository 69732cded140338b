/** Sources that a site can be switched to, with what a reader must be told of each. */
export const MET_NORWAY = {
  id: "met-norway",
  name: "The Norwegian Meteorological Institute",
  attribution: "Forecast: Norwegian Meteorological Institute, CC BY 4.0, put together into days here.",
} as const;

const KNOWN: Readonly<Record<string, { name: string; attribution: string }>> = {
  [MET_NORWAY.id]: MET_NORWAY,
};

/** The credit to show beside a forecast; null where it came from a file. */
export const attributionOf = (source: string | null): string | null =>
  source === null ? null : (KNOWN[source]?.attribution ?? null);
