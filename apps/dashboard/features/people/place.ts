/** Where somebody stands in an office, as a form asks it. */

export interface PlaceState {
  attempt: number;
  message: string | null;
  done: string | null;
  kept?: { email: string; name: string };
}

export const untriedPlace: PlaceState = { attempt: 0, message: null, done: null };

export interface Choice {
  value: string;
  label: string;
}
