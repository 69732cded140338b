import {
  bedPlacesFromGeoJson,
  DomainError,
  firstFit,
  placementUnder,
  planDrawing,
  planModel,
} from "@pith/rules";
import { describe, expect, test } from "vitest";
import { smallestRectangle } from "../../packages/rules/src/layout/geojson.ts";
import { area, gapBetween, intersection, type Point } from "../../packages/rules/src/layout/geometry.ts";
import { metresPerDegree } from "../../packages/rules/src/layout/projection.ts";
import { at, block, plan, planBed } from "./layoutStates.ts";

/** Corners of a 20 m by 1.2 m bed at 46 N that runs at a bearing, as degrees. By hand: 111,147 m and 77,465 m to the degree. */
const NORTH_M = 111_147;
const EAST_M = 77_465;
function bedRing(bearingDeg: number, lengthM = 20, widthM = 1.2): number[][] {
  const b = (bearingDeg * Math.PI) / 180;
  const corner = (along: number, across: number) => [
    -91 + (along * Math.sin(b) + across * Math.cos(b)) / EAST_M,
    46 + (along * Math.cos(b) - across * Math.sin(b)) / NORTH_M,
  ];
  const ring = [corner(0, 0), corner(lengthM, 0), corner(lengthM, widthM), corner(0, widthM)];
  return [...ring, ring[0] as number[]];
}
const file = (...rings: number[][][]) =>
  JSON.stringify({
    type: "FeatureCollection",
    features: rings.map((ring, i) => ({
      type: "Feature",
      properties: { name: `Bed ${i + 1}` },
      geometry: { type: "Polygon", coordinates: [ring] },
    })),
  });

// Length of a degree on WGS 84 as geodesy tables print it, in kilometres to three decimals.
test.each([
  [0, 110.574, 111.32],
  [15, 110.649, 107.55],
  [30, 110.852, 96.486],
  [45, 111.132, 78.847],
  [60, 111.412, 55.8],
  [75, 111.618, 28.902],
])("at %i degrees a degree is %f km north and %f km east", (latitude, north, east) => {
  const m = metresPerDegree(latitude);
  expect(m.northM / 1000).toBeCloseTo(north, 2);
  expect(m.eastM / 1000).toBeCloseTo(east, 2);
});

describe("beds from a map file", () => {
  test.each([0, 30, 90, 135])(
    "20 m by 1.2 m at %i degrees comes back to the centimetre and tenth of a degree",
    (bearing) => {
      const [bed] = bedPlacesFromGeoJson(file(bedRing(bearing))).beds;
      expect(bed).toMatchObject({ feature: 0, label: "Bed 1" });
      expect(bed?.lengthM).toBeCloseTo(20, 1);
      expect(bed?.widthM).toBeCloseTo(1.2, 1);
      // 0 and 180 are one line.
      const off = Math.abs((bed?.place.bearingDeg ?? 999) - bearing);
      expect(Math.min(off, 180 - off)).toBeLessThan(0.1);
      expect(bed?.filled).toBeGreaterThan(0.98);
    },
  );
  test("two beds 1.8 m apart keep their way, and a third file falls beside them from the same origin", () => {
    const shifted = bedRing(0).map(([lon, lat]) => [(lon as number) + 1.8 / EAST_M, lat as number]);
    const first = bedPlacesFromGeoJson(file(bedRing(0), shifted));
    const [a, b] = first.beds;
    expect((b?.place.eastM ?? 0) - (a?.place.eastM ?? 0)).toBeCloseTo(1.8, 1);
    const later = bedPlacesFromGeoJson(file(shifted), first.origin);
    expect(later.beds[0]?.place).toEqual(b?.place);
  });
  test("a triangle fills half of its rectangle, and it is said", () => {
    const [a, b, , d] = bedRing(0, 10, 4) as [number[], number[], number[], number[]];
    expect(bedPlacesFromGeoJson(file([a, b, d, a])).beds[0]?.filled).toBeCloseTo(0.5, 2);
  });
  const refusal = (text: string) => {
    try {
      bedPlacesFromGeoJson(text);
    } catch (error) {
      if (error instanceof DomainError) return error.problems[0]?.field;
      throw error;
    }
    return "taken";
  };
  const feature = (geometry: unknown) =>
    JSON.stringify({
      type: "FeatureCollection",
      features: [{ type: "Feature", properties: null, geometry }],
    });
  const open = bedRing(0).slice(0, 4);
  test.each([
    ["no JSON", "beds.kml", ""],
    ["a lone geometry", JSON.stringify({ type: "Polygon", coordinates: [] }), "type"],
    ["no beds", JSON.stringify({ type: "FeatureCollection", features: [] }), "features"],
    ["a point", feature({ type: "Point", coordinates: [-91, 46] }), "features.0.geometry.type"],
    ["an open ring", file(open.concat([[-91.5, 46.2]])), "features.0.geometry.coordinates.0"],
    [
      "latitude first",
      file([
        [46, -91],
        [46, -91.1],
        [46.1, -91.1],
        [46, -91],
      ]),
      "features.0.geometry.coordinates.0.0",
    ],
    [
      "a line",
      file([
        [-91, 46],
        [-91, 46.0001],
        [-91, 46.0002],
        [-91, 46],
      ]),
      "features.0.geometry.coordinates.0",
    ],
    [
      "a county",
      file([
        [-91, 46],
        [-91, 47],
        [-90, 47],
        [-91, 46],
      ]),
      "features.0.geometry.coordinates.0",
    ],
  ])("%s is refused by its field", (_, text, field) => {
    expect(refusal(text)).toBe(field);
  });
  test("the smallest rectangle round a diamond of side √2 is its own square, not the 2 by 2 one", () => {
    const diamond: Point[] = [
      [1, 0],
      [0, 1],
      [-1, 0],
      [0, -1],
    ];
    const { lengthM, widthM } = smallestRectangle(diamond);
    expect([lengthM, widthM]).toEqual([1.41, 1.41]);
  });
});

describe("plane geometry", () => {
  const square = (x: number, y: number, side = 1): Point[] => [
    [x, y],
    [x + side, y],
    [x + side, y + side],
    [x, y + side],
  ];
  test("two unit squares shifted by half each way share a quarter", () => {
    expect(area(intersection(square(0, 0), square(0.5, 0.5)))).toBeCloseTo(0.25, 12);
    expect(area(intersection(square(0, 0), [...square(0.5, 0.5)].reverse()))).toBeCloseTo(0.25, 12);
    expect(intersection(square(0, 0), square(2, 2))).toEqual([]);
  });
  test("a square 3 east and 4 north of another's corner is 5 away (3, 4, 5); one that overlaps is 0 away", () => {
    expect(gapBetween(square(0, 0), square(4, 5))).toBeCloseTo(5, 12);
    expect(gapBetween(square(0, 0), square(0.5, 0.5))).toBe(0);
    expect(gapBetween(square(0, 0, 3), square(1, 1))).toBe(0);
  });
});

describe("a block put down under a finger", () => {
  // A bed 1 m wide of 2 rows, so half a metre to a row; a block of one row, 4 m long, on a bed of 10 m; steps of half a metre.
  const m = planModel(plan([planBed("b")], [block("a", { rows: 1, plants: 10 })]));
  const under = (eastM: number, northM: number) => placementUnder(m, "a", { eastM, northM }, 0.5);
  test("0.6 m across is row 2, and 3.3 m along goes to 3.5 m", () => {
    expect(under(0.6, 3.3)).toEqual(at("b", 2, 3.5));
  });
  test("9 m along would end at 13 m: it goes to 6 m", () => {
    expect(under(0.1, 9)).toEqual(at("b", 1, 6));
  });
  test("beside the bed there is no place", () => {
    expect(under(1.1, 3)).toBeUndefined();
    expect(under(0.5, -0.1)).toBeUndefined();
  });
});

describe("the drawing", () => {
  test("a bed of 10 m that runs east from (5, 3): metres right and down, a metre of margin, rows a quarter and three quarters across", () => {
    const bed = planBed("b", { valveId: "v", place: { eastM: 5, northM: 3, bearingDeg: 90 } });
    const drawn = planDrawing(
      plan([bed], [block("a", { at: at("b", 1, 2) }), block("c", { marketType: "thai-type" })]),
    );
    // Its width lies south of the corner: the bed spans 5 to 15 east and 2 to 3 north.
    expect(drawn).toMatchObject({ widthM: 12, heightM: 3, northKnown: true, scaleBarM: 2, unplaced: ["c"] });
    expect(drawn.beds[0]?.corners).toEqual([
      [1, 1],
      [11, 1],
      [11, 2],
      [1, 2],
    ]);
    expect(drawn.beds[0]?.rows).toEqual([
      [
        [1, 1.25],
        [11, 1.25],
      ],
      [
        [1, 1.75],
        [11, 1.75],
      ],
    ]);
    expect(drawn.blocks).toMatchObject([
      {
        blockId: "a",
        corners: [
          [3, 1],
          [7, 1],
          [7, 2],
          [3, 2],
        ],
        middle: [5, 1.5],
      },
    ]);
    expect(drawn.varieties.map((v) => [v.letter, v.hot, v.plants])).toEqual([
      ["A", false, 20],
      ["B", true, 20],
    ]);
    expect(drawn.valves).toEqual([{ valveId: "v", bedIds: ["b"], water: "full" }]);
  });
  test("beds that nobody placed lie side by side, a path between, and up is not north", () => {
    const beds = ["b1", "b2"].map((id) => {
      const { place: _, ...bed } = planBed(id);
      return bed;
    });
    const drawn = planDrawing(firstFit(plan(beds, [block("a")])));
    expect(drawn.northKnown).toBe(false);
    // 1 m of margin, 1 m of bed, 0.6 m of path, and the same again.
    expect(drawn.beds.map((b) => [b.corners[0]?.[0], b.placed])).toEqual([
      [1, false],
      [2.6, false],
    ]);
  });
  test("an empty plan draws nothing and does not fail", () => {
    expect(planDrawing(plan([], []))).toMatchObject({ widthM: 0, heightM: 0, beds: [], blocks: [] });
  });
});
