import { z } from "zod";
import { refuse } from "../core/errors.ts";
import { parseAtTheDoor } from "../core/fields.ts";
import type { BedPlace } from "../states/bedPlan.ts";
import { area, frameOf, hull, type Point, type Polygon, pointIn, withinFrame } from "./geometry.ts";
import { localProjection } from "./projection.ts";

/** A bed as a map file has it, turned into a rectangle on the plan. */
export interface PlacedBed {
  /** Number of the feature in the file, from 0. */
  feature: number;
  /** What the file calls it: the feature's name, else its id. */
  label?: string;
  place: BedPlace;
  lengthM: number;
  widthM: number;
  /** Share of the rectangle that the outline fills: well below 1, the bed is no rectangle. */
  filled: number;
}

export interface PlacedBeds {
  /** Where the plan's origin lies; hand it in again so that further beds fall beside these. */
  origin: { longitudeDeg: number; latitudeDeg: number };
  beds: PlacedBed[];
}

/** RFC 7946 section 3.1.1: longitude, latitude, and perhaps a height, which no plan needs. */
const position = z
  .array(z.number())
  .min(2)
  .max(3)
  .refine((p) => Math.abs(p[0] ?? 999) <= 180 && Math.abs(p[1] ?? 999) <= 90, {
    error: "must be longitude -180 to 180, then latitude -90 to 90, in degrees",
  });
/** Section 3.1.6: a closed ring of four or more positions. */
const ring = z
  .array(position)
  .min(4)
  .max(2000)
  .refine((r) => r[0]?.[0] === r[r.length - 1]?.[0] && r[0]?.[1] === r[r.length - 1]?.[1], {
    error: "must end where it begins",
  });
const collection = z.looseObject({
  type: z.literal("FeatureCollection"),
  features: z
    .array(
      z.looseObject({
        type: z.literal("Feature"),
        id: z.union([z.string(), z.number()]).optional(),
        properties: z.looseObject({ name: z.unknown().optional() }).nullish(),
        geometry: z.looseObject({
          type: z.literal("Polygon"),
          // A hole in a bed is no bed: one ring.
          coordinates: z.array(ring).length(1),
        }),
      }),
    )
    .min(1)
    .max(500),
});

const SHORTEST_M = 0.2;
const LONGEST_M = 2000;

/**
 * Beds from a map file: a GeoJSON FeatureCollection of Polygons (RFC 7946), each the smallest rectangle round its outline, in metres
 * east and north of the plan's origin. Without one the origin is the south-west corner of all.
 *
 * @throws DomainError naming the feature and the field
 */
export function bedPlacesFromGeoJson(text: string, origin?: PlacedBeds["origin"]): PlacedBeds {
  const { features } = parseAtTheDoor(collection, parsed(text));
  const rings = features.map((f) => (f.geometry.coordinates[0] as number[][]).slice(0, -1));
  const all = rings.flat();
  const from = origin ?? {
    longitudeDeg: Math.min(...all.map((p) => p[0] as number)),
    latitudeDeg: Math.min(...all.map((p) => p[1] as number)),
  };
  const project = localProjection(from);
  const beds = features.map((f, feature): PlacedBed => {
    const outline = (rings[feature] as number[][]).map((p) => project(p[0] as number, p[1] as number));
    const label = f.properties?.name ?? f.id;
    const named = typeof label === "string" || typeof label === "number" ? { label: String(label) } : {};
    return { feature, ...named, ...placeOf(outline, `features.${feature}.geometry.coordinates.0`) };
  });
  return { origin: from, beds };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    refuse("", "not JSON", "a GeoJSON FeatureCollection of Polygons", text.slice(0, 40));
  }
}

function placeOf(outline: Polygon, field: string): Omit<PlacedBed, "feature" | "label"> {
  const around = hull(outline);
  if (around.length < 3 || area(around) < SHORTEST_M * 0.1) {
    refuse(field, "encloses no ground", "an outline of a bed, longitude before latitude", outline.length);
  }
  const { place, lengthM, widthM } = smallestRectangle(around);
  if (lengthM > LONGEST_M || lengthM < SHORTEST_M)
    refuse(field, "no length of a bed", `${SHORTEST_M} to ${LONGEST_M} m`, Math.round(lengthM * 10) / 10);
  return { place, lengthM, widthM, filled: Math.min(1, area(outline) / (lengthM * widthM)) };
}

const cm = (m: number) => Math.round(m * 100) / 100;

/**
 * The rectangle of least area round a convex outline: one of its sides lies on a side of the outline (Freeman and Shapira 1975).
 * The bearing is that of the longer side, 0 up to 180, with the width to its right.
 */
export function smallestRectangle(around: Polygon): { place: BedPlace; lengthM: number; widthM: number } {
  let best: { place: BedPlace; lengthM: number; widthM: number; area: number } | undefined;
  around.forEach((a, i) => {
    const b = around[(i + 1) % around.length] as Point;
    const edge = (Math.atan2(b[0] - a[0], b[1] - a[1]) * 180) / Math.PI;
    for (const turn of [edge, edge + 90]) {
      const bearingDeg = ((turn % 180) + 180) % 180;
      const box = boxAlong(around, bearingDeg);
      if (box.lengthM < box.widthM) continue;
      const area = box.lengthM * box.widthM;
      if (!best || area < best.area * (1 - 1e-9)) best = { ...box, area };
    }
  });
  if (!best) throw new Error("an outline has sides");
  const { place, lengthM, widthM } = best;
  return { place, lengthM: cm(lengthM), widthM: cm(widthM) };
}

function boxAlong(around: Polygon, bearingDeg: number) {
  const frame = frameOf({ eastM: 0, northM: 0, bearingDeg });
  const spots = around.map((p) => withinFrame(frame, p));
  const along = spots.map((s) => s.alongM);
  const across = spots.map((s) => s.acrossM);
  const [from, left] = [Math.min(...along), Math.min(...across)];
  const [eastM, northM] = pointIn(frame, from, left);
  return {
    place: { eastM: cm(eastM), northM: cm(northM), bearingDeg: cm(bearingDeg) },
    lengthM: Math.max(...along) - from,
    widthM: Math.max(...across) - left,
  };
}
