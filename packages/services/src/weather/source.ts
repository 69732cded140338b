import type { Forecast } from "@pith/rules";

/** Where a forecast is for, as a source is told. */
export interface ForecastPlace {
  latitudeDeg: number;
  longitudeDeg: number;
  elevationM: number;
  timeZone: string;
}

/** What a source answered that could be used. */
export type Fetched = {
  /** When it may be asked again, by the source's own clock; null where it does not say. */
  askAgainAt: string | null;
  /** The source says that this way of asking it will end. */
  deprecated: boolean;
} & (
  | {
      kind: "fresh";
      forecast: Forecast;
      /** Handed back with the next question, so that what has not changed is not sent again. */
      since: string | null;
    }
  | { kind: "unchanged" }
);

/** One service that forecasts are pulled from. */
export interface ForecastSource {
  id: string;
  /** The credit that its licence asks for, shown wherever its numbers are. */
  attribution: string;
  /**
   * @param since what the last fresh answer for this place came with
   * @throws SourceFailure saying in one sentence what went wrong
   */
  fetch(place: ForecastPlace, since?: string): Promise<Fetched>;
}

/** A source could not be asked, or what it answered cannot be used. The message is a sentence for people. */
export class SourceFailure extends Error {
  /** How long the source itself wants to be left alone; null where it does not say. */
  readonly pauseMs: number | null;
  constructor(message: string, pauseMs: number | null = null) {
    super(message);
    this.name = "SourceFailure";
    this.pauseMs = pauseMs;
  }
}
