import { type ScaleLinear, scaleLinear } from "d3-scale";
import { area, line } from "d3-shape";

/** Where things stand in the field of a drawing, and how a line runs through it: scales and curves are D3's. */

export const WIDE = 1000;
export const TALL = 400;
/** Wanted of the figures beside a field; about as many are round. */
export const TICKS = 5;

export interface At {
  place: number;
  /** Where nothing was measured the line has a gap. */
  value: number | null;
}

export interface Scales {
  x: ScaleLinear<number, number>;
  y: ScaleLinear<number, number>;
}

/** Scales that hold all places, with room at both ends, and all values between round figures. */
export function scalesOf(
  places: readonly number[],
  values: readonly number[],
  { room = 0, fromNought = false } = {},
): Scales {
  const least = fromNought ? Math.min(0, ...values) : Math.min(...values);
  const most = Math.max(...values);
  // One value alone still stands between two figures.
  const high = most > least ? most : least + Math.max(Math.abs(least) * 0.01, 0.1);
  const [first, last] = [Math.min(...places) - room, Math.max(...places) + room];
  return {
    x: scaleLinear([first, last > first ? last : first + 1], [0, WIDE]),
    y: scaleLinear([least, high], [TALL, 0]).nice(TICKS),
  };
}

export const lineOf = (points: readonly At[], { x, y }: Scales): string =>
  line<At>()
    .defined(({ value }) => value !== null)
    .x(({ place }) => x(place))
    .y(({ value }) => y(value ?? 0))
    .digits(1)(points) ?? "";

export const areaOf = (points: readonly At[], { x, y }: Scales): string =>
  area<At>()
    .defined(({ value }) => value !== null)
    .x(({ place }) => x(place))
    .y0(TALL)
    .y1(({ value }) => y(value ?? 0))
    .digits(1)(points) ?? "";

/** The first place, the last, and the one nearest to the middle between them. */
export function threeOf(places: readonly number[]): number[] {
  const sorted = [...new Set(places)].sort((a, b) => a - b);
  const [first, last] = [sorted[0], sorted.at(-1)];
  if (first === undefined || last === undefined) return [];
  const middle = (first + last) / 2;
  const nearest = sorted.reduce((a, b) => (Math.abs(b - middle) < Math.abs(a - middle) ? b : a));
  return [...new Set([first, nearest, last])];
}
