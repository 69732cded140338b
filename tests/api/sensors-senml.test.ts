import { SENSOR_UNITS } from "@pith/contract";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Given } from "../../packages/services/src/sensors/given.ts";
import { readPlain } from "../../packages/services/src/sensors/plain.ts";
import { resolveSenml } from "../../packages/services/src/sensors/senml.ts";
import { converterOf } from "../../packages/services/src/sensors/units.ts";

/** SenML as RFC 8428 gives it: the examples of section 5.1 by value, the rules of section 4, and units with their scales. */

const NOW = new Date("2026-05-10T12:00:00.000Z");
const nowS = NOW.getTime() / 1000;
/** As SenML would say it again, resolved. */
const said = (given: Given[]) =>
  given.map((g) =>
    g === "no-reading" || "refused" in g ? g : { n: g.name, u: g.unit, v: g.value, t: g.atMs / 1000 },
  );
const resolve = (pack: unknown) => said(resolveSenml(pack, NOW));

describe("the examples of RFC 8428 section 5.1", () => {
  test("5.1.1, a single data point, now", () => {
    expect(resolve([{ n: "urn:dev:ow:10e2073a01080063", u: "Cel", v: 23.1 }])).toEqual([
      { n: "urn:dev:ow:10e2073a01080063", u: "Cel", v: 23.1, t: nowS },
    ]);
  });

  test("5.1.2, several data points, now", () => {
    expect(
      resolve([
        { bn: "urn:dev:ow:10e2073a01080063:", n: "voltage", u: "V", v: 120.1 },
        { n: "current", u: "A", v: 1.2 },
      ]),
    ).toEqual([
      { n: "urn:dev:ow:10e2073a01080063:voltage", u: "V", v: 120.1, t: nowS },
      { n: "urn:dev:ow:10e2073a01080063:current", u: "A", v: 1.2, t: nowS },
    ]);
  });

  test("5.1.2, the current at 2010-06-08T18:01:16.001Z and at each of the five seconds before", () => {
    const at = Date.parse("2010-06-08T18:01:16.001Z") / 1000;
    expect(at).toBe(1.276020076001e9);
    const current = [1.2, 1.3, 1.4, 1.5, 1.6];
    const n = "urn:dev:ow:10e2073a0108006:current";
    const resolved = resolve([
      {
        bn: "urn:dev:ow:10e2073a0108006:",
        bt: 1.276020076001e9,
        bu: "A",
        bver: 5,
        n: "voltage",
        u: "V",
        v: 120.1,
      },
      { n: "current", t: -5, v: 1.2 },
      { n: "current", t: -4, v: 1.3 },
      { n: "current", t: -3, v: 1.4 },
      { n: "current", t: -2, v: 1.5 },
      { n: "current", t: -1, v: 1.6 },
      { n: "current", v: 1.7 },
    ]);
    expect(resolved).toEqual([
      { n: "urn:dev:ow:10e2073a0108006:voltage", u: "V", v: 120.1, t: at },
      ...current.map((v, i) => ({ n, u: "A", v, t: expect.closeTo(at - 5 + i, 6) })),
      { n, u: "A", v: 1.7, t: at },
    ]);
  });

  test("5.1.3 resolves to what 5.1.4 prints", () => {
    const n = "urn:dev:ow:10e2073a01080063";
    expect(
      resolve([
        { bn: n, bt: 1.320067464e9, bu: "%RH", v: 20 },
        { u: "lon", v: 24.30621 },
        { u: "lat", v: 60.07965 },
        { t: 60, v: 20.3 },
        { u: "lon", t: 60, v: 24.30622 },
        { u: "lat", t: 60, v: 60.07965 },
        { t: 120, v: 20.7 },
        { u: "lon", t: 120, v: 24.30623 },
        { u: "lat", t: 120, v: 60.07966 },
        { u: "%EL", t: 150, v: 98 },
        { t: 180, v: 21.2 },
        { u: "lon", t: 180, v: 24.30628 },
        { u: "lat", t: 180, v: 60.07967 },
      ]),
    ).toEqual([
      { n, u: "%RH", t: 1.320067464e9, v: 20 },
      { n, u: "lon", t: 1.320067464e9, v: 24.30621 },
      { n, u: "lat", t: 1.320067464e9, v: 60.07965 },
      { n, u: "%RH", t: 1.320067524e9, v: 20.3 },
      { n, u: "lon", t: 1.320067524e9, v: 24.30622 },
      { n, u: "lat", t: 1.320067524e9, v: 60.07965 },
      { n, u: "%RH", t: 1.320067584e9, v: 20.7 },
      { n, u: "lon", t: 1.320067584e9, v: 24.30623 },
      { n, u: "lat", t: 1.320067584e9, v: 60.07966 },
      { n, u: "%EL", t: 1.320067614e9, v: 98 },
      { n, u: "%RH", t: 1.320067644e9, v: 21.2 },
      { n, u: "lon", t: 1.320067644e9, v: 24.30628 },
      { n, u: "lat", t: 1.320067644e9, v: 60.07967 },
    ]);
  });

  test("5.1.5, other types: a temperature is taken, a text, a switch and octets are no measurement of a series", () => {
    const [temp, ...others] = resolve([
      { bn: "urn:dev:ow:10e2073a01080063:", n: "temp", u: "Cel", v: 23.1 },
      { n: "label", vs: "Machine Room" },
      { n: "open", vb: false },
      { n: "nfc-reader", vd: "aGkgCg" },
    ]);
    expect(temp).toEqual({ n: "urn:dev:ow:10e2073a01080063:temp", u: "Cel", v: 23.1, t: nowS });
    expect(others).toEqual(
      ["vs", "vb", "vd"].map((label) => ({
        refused: `${label} is no measurement: a series takes numbers, in v`,
      })),
    );
  });

  test("5.1.6, a collection: the last record has the name of the third and the time of the first", () => {
    const t = Date.parse("2011-10-31T16:27:09Z") / 1000;
    expect(
      resolve([
        { bn: "2001:db8::2/", bt: 1.320078429e9, n: "temperature", u: "Cel", v: 25.2 },
        { n: "humidity", u: "%RH", v: 30 },
        { bn: "2001:db8::1/", n: "temperature", u: "Cel", v: 12.3 },
        { n: "humidity", u: "%RH", v: 67 },
      ]),
    ).toEqual([
      { n: "2001:db8::2/temperature", u: "Cel", v: 25.2, t },
      { n: "2001:db8::2/humidity", u: "%RH", v: 30, t },
      { n: "2001:db8::1/temperature", u: "Cel", v: 12.3, t },
      { n: "2001:db8::1/humidity", u: "%RH", v: 67, t },
    ]);
  });

  test("5.1.7, setting a thermostat: a record of a base name alone is no reading", () => {
    const n = (name: string) => `urn:dev:ow:10e2073a01080063:${name}`;
    expect(
      resolve([
        { bn: "urn:dev:ow:10e2073a01080063:" },
        { n: "temp", u: "Cel", v: 23.1 },
        { n: "heat", u: "/", v: 1 },
        { n: "fan", u: "/", v: 0 },
      ]),
    ).toEqual([
      "no-reading",
      { n: n("temp"), u: "Cel", v: 23.1, t: nowS },
      { n: n("heat"), u: "/", v: 1, t: nowS },
      { n: n("fan"), u: "/", v: 0, t: nowS },
    ]);
  });

  test("5.1.7, two lights off in 0.1 s", () => {
    const lights = ["2001:db8::3", "2001:db8::4"];
    expect(
      resolve([
        { bt: 1.320078429e9, bu: "/", n: lights[0], v: 0.5 },
        { n: lights[1], v: 0.5 },
        { n: lights[0], t: 0.1, v: 0 },
        { n: lights[1], t: 0.1, v: 0 },
      ]),
    ).toEqual([
      ...lights.map((n) => ({ n, u: "/", v: 0.5, t: 1.320078429e9 })),
      ...lights.map((n) => ({ n, u: "/", v: 0, t: 1.3200784291e9 })),
    ]);
  });
});

describe("the rules of section 4", () => {
  test("2^28 - 1 is seconds from now, 2^28 is 1978-07-04T21:24:16Z", () => {
    const [relative, absolute, past] = resolve([
      { n: "a", v: 1, t: 2 ** 28 - 1 },
      { n: "a", v: 1, t: 2 ** 28 },
      { n: "a", v: 1, t: -90 },
    ]);
    expect(relative).toMatchObject({ t: nowS + 2 ** 28 - 1 });
    expect(absolute).toMatchObject({ t: Date.parse("1978-07-04T21:24:16Z") / 1000 });
    expect(past).toMatchObject({ t: nowS - 90 });
  });

  test("base time and time are added before they are read, base value and value too; a record's unit wins", () => {
    const [one, two] = resolve([
      { bn: "a", bt: 2 ** 28, bu: "Cel", bv: 20, t: -1, v: 1.5 },
      { u: "K", v: -4 },
    ]);
    expect(one).toEqual({ n: "a", u: "Cel", v: 21.5, t: nowS + 2 ** 28 - 1 });
    expect(two).toEqual({ n: "a", u: "K", v: 16, t: 2 ** 28 });
  });

  test("an unknown field is left aside, unless it must be understood", () => {
    expect(resolve([{ n: "a", v: 1, site: "x", ut: 60 }])).toEqual([{ n: "a", u: null, v: 1, t: nowS }]);
    expect(() =>
      resolve([
        { n: "b", v: 1 },
        { n: "a", v: 1, units_: "x" },
      ]),
    ).toThrow("1.units_: must be understood, and is not");
  });

  test.each([
    [[{ bver: 11, n: "a", v: 1 }], "0.bver"],
    [[{ bver: 42, n: "a", v: 1 }], "0.bver"],
    [[{ bver: 0, n: "a", v: 1 }], "0.bver"],
    [[{ bver: 9.5, n: "a", v: 1 }], "0.bver"],
    [
      [
        { n: "a", v: 1 },
        { bver: 10, n: "a", v: 1 },
        { bver: 9, n: "a", v: 1 },
      ],
      "2.bver",
    ],
    [[{ bn: 7, n: "a", v: 1 }], "0.bn"],
    [[{ bt: "1", n: "a", v: 1 }], "0.bt"],
    [["a"], "0"],
    [[], ""],
    [{ e: [] }, ""],
    [Array.from({ length: 5001 }, () => ({ n: "a", v: 1 })), ""],
  ])("%j is refused whole", (pack, field) => {
    expect(() => resolve(pack)).toThrow(
      expect.objectContaining({ problems: [expect.objectContaining({ field })] }),
    );
  });

  test.each([10, 5, 26])("version %i is understood", (bver) => {
    expect(resolve([{ bver, n: "a", v: 1 }])).toHaveLength(1);
  });

  test.each([
    [{ n: "a" }, "has no value"],
    [{ n: "a", s: 4 }, "has a sum and no value: send v"],
    [{ n: "a", v: 1, vb: true }, "has two values, v and vb"],
    [{ n: "a", v: "1" }, "v must be a number"],
    [{ n: "_a", v: 1 }, expect.stringContaining("is no SenML name")],
    [{ n: "a b", v: 1 }, expect.stringContaining("is no SenML name")],
    [{ v: 1 }, expect.stringContaining("is no SenML name")],
  ])("%j is refused alone", (record, reason) => {
    expect(resolve([record, { n: "good", v: 2 }])).toEqual([
      { refused: reason },
      { n: "good", u: null, v: 2, t: nowS },
    ]);
  });

  test("a pack says the same as its resolved form, whatever is in the base and what in the record", () => {
    const record = fc.record({
      n: fc.stringMatching(/^[A-Za-z0-9:./_-]{0,8}$/),
      t: fc.integer({ min: -3600, max: 3600 }),
      v: fc.integer({ min: -50, max: 50 }),
    });
    fc.assert(
      fc.property(fc.array(record, { minLength: 1, maxLength: 20 }), (records) => {
        const base = { bn: "dev:1:", bt: 1.7e9, bu: "Cel", bv: 2 };
        const pack = records.map((r, i) => (i === 0 ? { ...base, ...r } : r));
        const resolved = resolve(pack);
        expect(resolve(resolved)).toEqual(resolved);
      }),
    );
  });
});

describe("units", () => {
  test.each([
    // RFC 8798 Table 2: scale and offset to the unit of the registry.
    ["rain", "mm", 12, 12],
    ["rain", "m", 0.012, 12],
    ["rain", "cm", 1.2, 12],
    ["wind-speed", "km/h", 36, 10],
    ["wind-speed", "m/h", 3600, 1],
    ["soil-tension", "hPa", 250, 25],
    ["soil-water", "/100", 31, 0.31],
    ["soil-water", "/1000", 310, 0.31],
    // RFC 8428 note 1: "%" is a ratio and not a percentage.
    ["soil-water", "%", 0.31, 0.31],
    // 0 C is 273.15 K and 32 F; 212 F is 100 C.
    ["air-temperature", "K", 273.15, 0],
    ["air-temperature", "degF", 32, 0],
    ["air-temperature", "degF", 212, 100],
    ["soil-tension", "cbar", 25, 25],
    ["water-ec", "uS/cm", 1200, 1.2],
    ["rain", "in", 1, 25.4],
  ] as const)("%s in %s: %d is kept as %d", (quantity, unit, sent, kept) => {
    expect(converterOf(quantity, unit)?.(sent)).toBeCloseTo(kept, 9);
  });

  test("every unit that the contract names for a quantity is converted, and no other", () => {
    for (const [quantity, units] of Object.entries(SENSOR_UNITS)) {
      for (const unit of Object.values(SENSOR_UNITS).flat()) {
        const converts = converterOf(quantity as keyof typeof SENSOR_UNITS, unit) !== undefined;
        expect([quantity, unit, converts]).toEqual([
          quantity,
          unit,
          (units as readonly string[]).includes(unit),
        ]);
      }
    }
  });
});

describe("the plain form", () => {
  test("says series, instant, value and unit; without an instant it is now", () => {
    expect(
      said(
        readPlain(
          {
            readings: [
              { series: "mast", at: "2026-05-10T06:00:00-05:00", value: 8.5, unit: "Cel" },
              { series: "mast", value: 9 },
            ],
          },
          NOW,
        ),
      ),
    ).toEqual([
      { n: "mast", u: "Cel", v: 8.5, t: Date.parse("2026-05-10T11:00:00Z") / 1000 },
      { n: "mast", u: null, v: 9, t: nowS },
    ]);
  });

  test.each([
    [{ series: "a", value: "8" }, "value must be a number"],
    [{ series: 1, value: 8 }, "series must be the name of a series"],
    [{ series: "a", value: 8, at: "yesterday" }, "at must be an instant like 2026-05-10T06:00:00Z"],
    [
      { series: "a", value: 8, at: "2026-02-30T10:00:00Z" },
      "at must be an instant like 2026-05-10T06:00:00Z",
    ],
    [null, "is no object"],
  ])("%j is refused alone", (one, refused) => {
    expect(readPlain({ readings: [one] }, NOW)).toEqual([{ refused }]);
  });
});
