import { type Advice, type PlantingState, quantities } from "@pith/rules";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { trendFrom } from "../../packages/rules/src/rules/cold-tonight/course.ts";
import { HOUR_MS, nightAt, wallTimes } from "../../packages/rules/src/warmth/nightOf.ts";
import { advice, answer, dayAfter, line, planting, stepKeys } from "./warmthStates.ts";

type Hour = NonNullable<NonNullable<PlantingState["forecast"]>["hours"]>[number];
const young = { ...planting().planting, setOutOn: "2026-05-20" };

/** Hourly forecast from noon of 26 May in Chicago time, warm at first and down to `lowest` from midnight to six. */
function hours(lowest: number, sky: Partial<Hour> = {}): Hour[] {
  return Array.from({ length: 27 }, (_, i) => {
    const fall = i < 3 ? 0 : i < 12 ? (i - 3) / 9 : i <= 18 ? 1 : Math.max(0, 1 - (i - 18) / 6);
    return {
      at: new Date(Date.parse("2026-05-26T17:00:00Z") + i * HOUR_MS).toISOString(),
      temperatureC: 18 + (lowest - 18) * fall,
      ...sky,
    };
  });
}

/** Plants six days in the bed, asked at half past one in the afternoon, with a night of that minimum before them. */
function facing(lowest: number, change: Partial<PlantingState> = {}, sky: Partial<Hour> = {}): PlantingState {
  return planting({
    asOf: "2026-05-26T18:30:00Z",
    site: { ...planting().site, stationOffset: { minC: 0, sdC: 0, nights: 30 } },
    planting: young,
    forecast: { issuedAt: "2026-05-26T17:00:00Z", days: [], hours: hours(lowest, sky) },
    ...change,
  });
}
const windy = { windMPerS: 6, cloudPct: 90, dewPointC: 0 };
const kind = (state: PlantingState) => {
  const a = answer("cold-tonight", state);
  return a.kind === "advice" ? a.decision.code : a.kind;
};
const ways = (a: Advice) =>
  a.working.filter((l) => l.symbol.startsWith("Tmin ")).map((l) => l.symbol.slice(5));
const covered = (state: PlantingState, cover: "fleece" | "high-tunnel" | "heated-house") => ({
  ...state,
  bed: { ...state.bed, covers: [{ cover, from: "2026-05-01" }] },
});
/** Readings every half hour from one instant to another. */
const readings = (from: string, to: string, at: (ms: number) => number) => {
  const list: PlantingState["plantTemperatures"] = [];
  for (let ms = Date.parse(from); ms <= Date.parse(to); ms += HOUR_MS / 2) {
    list.push({ at: new Date(ms).toISOString(), temperatureC: at(ms) });
  }
  return list;
};

describe("the night", () => {
  test("sunset and sunrise within ten minutes of an almanac's for latitude 0 and longitude 0 at the equinox: 18:11 and 6:04 (6:07 and 18:14 less refraction)", () => {
    const site = { latitudeDeg: 0, longitudeDeg: 0, elevationM: 0, timeZone: "UTC" };
    const night = nightAt("2026-03-20T12:00:00Z", site);
    expect(Math.abs(night.sunset - Date.parse("2026-03-20T18:11:00Z"))).toBeLessThan(10 * 60_000);
    expect(Math.abs(night.sunrise - Date.parse("2026-03-21T06:04:00Z"))).toBeLessThan(10 * 60_000);
    expect(night.lengthH).toBeCloseTo(12, 1);
  });
  test("before dawn it is the night that runs; after sunrise the next; both have their local days", () => {
    const { site } = planting();
    const days = (at: string) => {
      const { eveningDay, morningDay } = nightAt(at, site);
      return [eveningDay, morningDay];
    };
    expect(days("2026-05-27T08:00:00Z")).toEqual(["2026-05-26", "2026-05-27"]);
    expect(days("2026-05-27T13:00:00Z")).toEqual(["2026-05-27", "2026-05-28"]);
    expect(days("2026-05-27T03:59:00Z")).toEqual(["2026-05-26", "2026-05-27"]);
  });
  test("hours of the night in which the clock is put forward: 7:30Z is half past one and 8:30Z half past three in Chicago", () => {
    const [from, to] = ["2026-03-08T05:00:00Z", "2026-03-08T12:00:00Z"].map(Date.parse) as [number, number];
    const at = wallTimes("America/Chicago", from, to);
    expect(["07:30", "08:30"].map((t) => at(Date.parse(`2026-03-08T${t}:00Z`)))).toEqual([
      "2026-03-08T01:30",
      "2026-03-08T03:30",
    ]);
  });
  test("the trend begun two hours after sunset is FR-12's: F 33.7 to 22.2 over 15 h, as the FAO's chapter prints it", () => {
    const night = { sunset: 0, sunrise: 15 * HOUR_MS, lengthH: 15, eveningDay: "", morningDay: "" };
    const trend = trendFrom(night, 2 * HOUR_MS, 33.7, 22.2);
    const printed = [30.51047, 29.18933, 28.17558, 27.32095, 26.568, 25.88729, 25.26131, 24.67866];
    printed.forEach((f, i) => {
      expect(trend((i + 3) * HOUR_MS)).toBeCloseTo(f, 4);
    });
    expect(trend(15 * HOUR_MS)).toBe(22.2);
  });
  test("the trend taken up from a later reading on the same line goes on along it", () => {
    const night = { sunset: 0, sunrise: 15 * HOUR_MS, lengthH: 15, eveningDay: "", morningDay: "" };
    const trend = trendFrom(night, 6 * HOUR_MS, 27.32095, 22.2);
    expect(trend(9 * HOUR_MS)).toBeCloseTo(25.26131, 4);
    expect(trend(14 * HOUR_MS)).toBeCloseTo(22.65116, 4);
  });
});

describe("calm-night-cooling", () => {
  const compute = (input: object) =>
    quantities["calm-night-cooling"]?.compute(input).value as {
      fallC: number;
      lossWPerM2: number;
      minimumC: number;
    };
  test("Brunt's fall against heat conduction solved in steps of depth and time, within 1 %", () => {
    const { fallC, lossWPerM2 } = compute({
      airC: 10,
      dewPointC: -20,
      cloudPct: 0,
      nightH: 10,
      admittance: 1400,
    });
    // A column with c = 2 MJ/(m3 K) and k = 0.98 W/(m K): √(c k) = 1400. 5 mm cells to 1.5 m, explicit steps of 20 s.
    const [c, k, dz, dt] = [2e6, 0.98, 0.005, 20];
    const t = new Float64Array(300);
    let atTwoHours = 0;
    for (let s = 1; s <= (10 * 3600) / dt; s++) {
      const next = t.slice();
      for (let z = 0; z < 300; z++) {
        const up = z === 0 ? -lossWPerM2 : (k * ((t[z - 1] as number) - (t[z] as number))) / dz;
        const down = z === 299 ? 0 : (k * ((t[z + 1] as number) - (t[z] as number))) / dz;
        next[z] = (t[z] as number) + (dt * (up + down)) / (c * dz);
      }
      t.set(next);
      // The surface lies half a cell above the first middle.
      if (s === (2 * 3600) / dt) atTwoHours = (t[0] as number) - (lossWPerM2 * dz) / (2 * k);
    }
    const atDawn = (t[0] as number) - (lossWPerM2 * dz) / (2 * k);
    expect(Math.abs(fallC / (atTwoHours - atDawn) - 1)).toBeLessThan(0.01);
  });
  test("net longwave loss: FAO-56 eq. 39 by hand for 10 C and 0.6108 kPa, σT⁴ = 365 W, × (0.34 - 0.14 × 0.7815) = 84.2 W/m2, ± 0.3", () => {
    expect(
      Math.abs(compute({ airC: 10, dewPointC: 0, cloudPct: 0, nightH: 10 }).lossWPerM2 - 84.2),
    ).toBeLessThan(0.3);
  });
  test("it stops at the dew point, cloud holds it up, and a longer night falls further", () => {
    expect(compute({ airC: 15, dewPointC: 13, cloudPct: 0, nightH: 12 }).minimumC).toBe(13);
    const at = (cloudPct: number, nightH: number) =>
      compute({ airC: 10, dewPointC: -5, cloudPct, nightH }).minimumC;
    expect(at(100, 10)).toBeGreaterThan(at(50, 10));
    expect(at(50, 10)).toBeGreaterThan(at(0, 10));
    expect(at(0, 14)).toBeLessThan(at(0, 9));
  });
});

describe("what it takes to speak", () => {
  test("12 C: nothing for plants just set out; 9 C: cover; 0 C: frost; -3 C: frost", () => {
    expect([12, 9, 0, -3].map((t) => kind(facing(t, {}, windy)))).toEqual([
      "does-not-apply",
      "cover-tonight",
      "frost-tonight",
      "frost-tonight",
    ]);
  });
  test("says the numbers where it does not hurt", () => {
    const a = answer("cold-tonight", facing(12, {}, windy));
    expect(a.kind === "does-not-apply" && a.reason.params).toEqual({
      minimum: { value: 12, unit: "C" },
      floor: { value: 10, unit: "C" },
      phase: { word: "cold-tonight.phase.young" },
    });
  });
  test("each stage has its floor: indoors 16, hardening 12, young 10, established 5, in flower 10, with ripe fruit 7, overwintered 5", () => {
    const note = (kind: PlantingState["notes"][number]["kind"]) => [{ on: "2026-05-25", kind }];
    const out = planting().planting;
    const states: PlantingState[] = [
      facing(-9, {
        planting: out,
        plantTemperatures: readings("2026-05-25T18:00:00Z", "2026-05-26T18:00:00Z", () => 14),
      }),
      facing(-9, { planting: { ...out, plannedSetOutOn: "2026-06-02" } }),
      facing(-9),
      facing(-9, { planting: { ...young, setOutOn: "2026-04-10" } }),
      facing(-9, { notes: note("first-flower") }),
      facing(-9, { notes: note("first-pick") }),
      facing(-9, { planting: { ...young, overwintered: true } }),
    ];
    expect(states.map((s) => line(advice("cold-tonight", s), "floor"))).toEqual([16, 12, 10, 5, 10, 7, 5]);
    expect(states.map(kind)).toEqual(["heat-tonight", "bring-in", ...Array(5).fill("frost-tonight")]);
  });
  test("the office's own floors: 13 indoors and 8 outside", () => {
    const settings = { coldFloorC: 8, indoorNightFloorC: 13 };
    expect(line(advice("cold-tonight", facing(0, { settings })), "floor")).toBe(8);
    const inside = facing(5, {
      settings,
      planting: planting().planting,
      plantTemperatures: readings("2026-05-25T18:00:00Z", "2026-05-26T18:00:00Z", () => 14),
    });
    expect(kind(inside)).toBe("does-not-apply");
  });
  test("established plants at 5.5 C where no night was paired with the station's: 5.5 - 2 is no frost; at 1.9 C it may freeze", () => {
    const grown = { planting: { ...young, setOutOn: "2026-04-10" }, site: planting().site };
    expect(kind(facing(5.5, grown, windy))).toBe("does-not-apply");
    const a = advice("cold-tonight", facing(1.9, grown, windy));
    expect([a.decision.code, a.decision.text.key]).toEqual([
      "cover-tonight",
      "cold-tonight.decision.cover-tonight-may-freeze",
    ]);
    expect(line(a, "Tlow")).toBeCloseTo(-0.1, 12);
  });
});

describe("the night's minimum at the plants", () => {
  test("a site 1.5 C colder than its station and a fleece of 1.1 C: 4 - 1.5 + 1.1 = 3.6 C, marked", () => {
    const site = { ...planting().site, stationOffset: { minC: -1.5, sdC: 0, nights: 30 } };
    const a = advice("cold-tonight", covered(facing(4, { site }, windy), "fleece"));
    expect(line(a, "Tmin")).toBeCloseTo(3.6, 12);
    expect(a.estimated.find((e) => e.input === "temperature under the cover")?.source?.key).toBe(
      "psu-row-covers-2020",
    );
  });
  test("four nights read under the tunnel 3 C above the station outrank no figure, and the colder of both is used and both said", () => {
    const state = covered(facing(4, {}, windy), "high-tunnel");
    const mornings = [1, 2, 3, 4].map((n) => dayAfter("2026-05-26", 1 - n));
    const weather = mornings.map((date) => ({ date, tMinC: 6, tMaxC: 18 }));
    const at = (lift: number) => ({
      ...state,
      weather,
      plantTemperatures: readings("2026-05-22T18:00:00Z", "2026-05-26T13:00:00Z", () => 6 + lift),
    });
    // Published for a tunnel: 1.3.
    const warmer = advice("cold-tonight", at(3));
    expect([line(warmer, "Tmin measured-lift"), line(warmer, "Tmin forecast"), line(warmer, "Tmin")]).toEqual(
      [7, 5.3, 5.3],
    );
    const colder = advice("cold-tonight", at(0.5));
    expect([line(colder, "Tmin measured-lift"), line(colder, "Tmin")]).toEqual([4.5, 4.5]);
    expect(warmer.limits.map((m) => m.key)).toContain("cold-tonight.limit.ways");
  });
  test("clear and calm without own nights: the fall by sky and dew point is used where it is colder than the forecast", () => {
    const sky = { windMPerS: 1, cloudPct: 0, dewPointC: -6 };
    const a = advice("cold-tonight", facing(6, {}, sky));
    expect(ways(a)).toEqual(["calm-cooling", "forecast"]);
    expect(line(a, "Tmin") as number).toBeLessThan(6);
    expect(ways(advice("cold-tonight", facing(6, {}, { ...sky, windMPerS: 4 })))).toEqual(["forecast"]);
    // A moist night stops at its dew point of 5.5.
    expect(line(advice("cold-tonight", facing(6, {}, { ...sky, dewPointC: 5.5 })), "Tmin")).toBe(5.5);
  });
  test("ten clear, calm nights at the plants: the FAO's own (FR-10) give -0.7409219 C for an evening of 10 C and a dew point of 2 C", () => {
    const t0 = [3.2, 0.8, 0.2, 2.6, 4.4, 5.2, 2.7, 1.2, 4.5, 5.6];
    const td = [-4.2, -8.8, -6.5, -6.2, -6.1, 2.6, -0.7, -1.7, -1.2, 0.1];
    const tn = [-3.1, -5, -6.3, -5.4, -4, -2.5, -4.8, -5, -4.4, -3.3];
    const state = facing(
      6,
      { planting: { ...young, setOutOn: "2026-05-01" } },
      { windMPerS: 1, cloudPct: 0, dewPointC: 2 },
    );
    const mornings = t0.map((_, i) => dayAfter("2026-05-26", -i));
    const past = mornings.flatMap((date, i) => {
      const night = nightAt(`${date}T09:00:00Z`, state.site);
      const evening = night.sunset + 2 * HOUR_MS;
      const iso = (ms: number) => new Date(ms).toISOString();
      return [
        { at: iso(evening), temperatureC: t0[i] as number },
        ...[-3, -2, -1, 0, 1].map((h) => ({
          at: iso(night.sunrise + h * HOUR_MS),
          temperatureC: tn[i] as number,
        })),
      ];
    });
    // Tonight at ten past eleven: the evening's reading of 10 C has been taken, two hours after sunset.
    const tonight = nightAt("2026-05-27T04:10:00Z", state.site);
    const reading = { at: new Date(tonight.sunset + 2 * HOUR_MS).toISOString(), temperatureC: 10 };
    const a = advice("cold-tonight", {
      ...state,
      asOf: "2026-05-27T04:10:00Z",
      forecast: { issuedAt: "2026-05-27T00:00:00Z", days: [], hours: state.forecast?.hours ?? [] },
      weather: mornings.map((date, i) => ({ date, dewPointC: td[i] as number, cloudPct: 5, windMPerS: 1.2 })),
      plantTemperatures: [...past, reading],
    });
    expect(line(a, "Tmin own-clear-nights")).toBeCloseTo(-0.7409219, 6);
    expect(a.decision.code).toBe("frost-tonight");
    // From that reading the course is the square-root trend, down to the minimum at sunrise.
    expect(line(a, "course")).toBe("trend-from-reading");
    const last = a.charts[0]?.series[0]?.points.at(-1)?.[1];
    expect(last).toBeCloseTo(-0.7409219, 6);
  });
  test("a reading after sunset 2 C below the forecast's hour takes the rest of the night 2 C down", () => {
    const at = "2026-05-27T04:00:00Z";
    const state = facing(6, {}, windy);
    // Eleven in the evening: 18 - 12 × 8/9 = 7.33 by the forecast.
    const a = advice("cold-tonight", {
      ...state,
      asOf: at,
      forecast: { issuedAt: "2026-05-26T23:00:00Z", days: [], hours: hours(6, windy) },
      plantTemperatures: [{ at, temperatureC: 18 - 12 * (8 / 9) - 2 }],
    });
    expect(line(a, "Tmin corrected")).toBeCloseTo(4, 9);
    expect(line(a, "Tmin")).toBeCloseTo(4, 9);
  });
  test("without hours, the day's minimum of tomorrow morning and the course from the extremes, marked", () => {
    const state = facing(0, {
      forecast: {
        issuedAt: "2026-05-26T17:00:00Z",
        days: [
          { date: "2026-05-26", tMinC: 7, tMaxC: 16 },
          { date: "2026-05-27", tMinC: 2.5, tMaxC: 17 },
        ],
      },
    });
    const a = advice("cold-tonight", state);
    expect([line(a, "Tmin"), line(a, "Tout"), line(a, "course")]).toEqual([2.5, 2.5, "forecast"]);
    expect(a.estimated.map((e) => e.input)).toContain("hours of the night");
    expect(a.limits.map((m) => m.key)).toContain("cold-tonight.limit.sky-unknown");
  });
  test("inside: 14 C held when it was 8 C outside; tonight 3 C outside, so 14 - 5 = 9 C", () => {
    const mornings = [0, 1, 2].map((n) => dayAfter("2026-05-26", -n));
    const state = facing(3, {
      planting: planting().planting,
      weather: mornings.map((date) => ({ date, tMinC: 8, tMaxC: 18 })),
      plantTemperatures: readings("2026-05-23T18:00:00Z", "2026-05-26T18:00:00Z", () => 14),
    });
    const a = advice("cold-tonight", state);
    expect([a.decision.code, line(a, "Tmin")]).toEqual(["heat-tonight", 9]);
    expect(a.cautions.map((c) => c.id)).toContain("night-heat-fire");
  });

  test("inside, the hours run straight from the reading to what the heat is taken to hold at sunrise", () => {
    const mornings = [0, 1, 2].map((n) => dayAfter("2026-05-26", -n));
    const a = advice("cold-tonight", {
      ...facing(3, {
        planting: planting().planting,
        weather: mornings.map((date) => ({ date, tMinC: 8, tMaxC: 18 })),
        plantTemperatures: readings("2026-05-23T18:00:00Z", "2026-05-26T18:00:00Z", () => 18),
      }),
    });
    expect([line(a, "Tmin"), line(a, "course")]).toEqual([13, "straight"]);
    const drawn = (a.charts[0]?.series[0]?.points ?? []).map((p) => p[1] as number);
    expect([drawn[0], drawn.at(-1)]).toEqual([18, 13]);
  });
  test("a cover noted until today is not counted on for tonight; one that stands on is", () => {
    const state = facing(4, {}, windy);
    const until = (to?: string) => ({
      ...state,
      bed: { ...state.bed, covers: [{ cover: "fleece" as const, from: "2026-05-01", ...(to && { to }) }] },
    });
    expect(line(advice("cold-tonight", until("2026-05-26")), "Tmin")).toBe(4);
    expect(line(advice("cold-tonight", until()), "Tmin")).toBe(5.1);
  });
  test("a midsummer night of under four hours at 64 degrees is told by the forecast alone", () => {
    const site = { ...facing(4).site, latitudeDeg: 64 };
    const move = (h: Hour) => ({ ...h, at: new Date(Date.parse(h.at) + 26 * 24 * HOUR_MS).toISOString() });
    const sky = { windMPerS: 1, cloudPct: 0, dewPointC: -6 };
    const state = facing(4, { site, asOf: "2026-06-21T18:30:00Z" });
    const a = advice("cold-tonight", {
      ...state,
      forecast: { issuedAt: "2026-06-21T17:00:00Z", days: [], hours: hours(4, sky).map(move) },
    });
    expect(ways(a)).toEqual(["forecast"]);
  });
});

describe("what to do", () => {
  test("by sunset, some hours ahead; which cover is enough and which is not; when to open", () => {
    const a = advice("cold-tonight", facing(-2, {}, windy));
    const sunset = nightAt("2026-05-26T18:30:00Z", planting().site).sunset;
    expect(Date.parse(a.stakes.actBy ?? "")).toBeLessThanOrEqual(sunset);
    expect(Date.parse(a.stakes.actBy ?? "")).toBeGreaterThan(Date.parse("2026-05-26T18:30:00Z"));
    // -2 + 1.1 freezes, -2 + 2.8 does not, and -2 + 5 = 3 is below the floor of 10.
    expect(stepKeys(a)).toEqual([
      "cold-tonight.step.cover",
      "cold-tonight.step.holds-nothing",
      "cold-tonight.step.holds-frost",
      "cold-tonight.step.holds-frost",
      "cold-tonight.step.uncover",
      "cold-tonight.step.look-frost",
    ]);
    expect(a.steps[2]?.text.params.inside).toEqual({ value: -2 + 2.8, unit: "C" });
    expect(a.cautions.map((c) => c.id)).toEqual(
      expect.arrayContaining(["frost-fire-and-ice", "frost-water", "cover-overheats"]),
    );
  });
  test("eight in the evening, the first hour below 10 C, comes before sunset; asked when it is below already, the moment is now", () => {
    // From three in the afternoon 18 C falls by 2 C an hour: 10 C at seven, 8 C at eight.
    const a = advice("cold-tonight", facing(0, {}, windy));
    expect(a.stakes.actBy).toBe("2026-05-27T01:00:00.000Z");
    expect(line(a, "crosses")).toBe("20:00");
    const late = advice("cold-tonight", {
      ...facing(0, {}, windy),
      asOf: "2026-05-27T10:20:00Z",
      forecast: { issuedAt: "2026-05-27T05:00:00Z", days: [], hours: hours(0, windy) },
    });
    expect(stepKeys(late)[0]).toBe("cold-tonight.step.cover-now");
    expect(late.stakes.actBy).toBe("2026-05-27T10:20:00.000Z");
  });
  test("a frost no cover holds says so; -8 + 5 is still frost", () => {
    expect(stepKeys(advice("cold-tonight", facing(-8, {}, windy)))).toContain(
      "cold-tonight.step.none-enough",
    );
  });
  test("under a fleece only heavier covers are named, and not as sums", () => {
    const a = advice("cold-tonight", covered(facing(-1, {}, windy), "fleece"));
    expect(line(a, "T light-fleece")).toBeUndefined();
    // -1 + 1.1 = 0.1 under it; instead of it 2.8 and 5 above the open -1.
    expect(line(a, "T heavy-fleece")).toBeCloseTo(1.8, 12);
    expect(line(a, "T fleece-and-plastic")).toBeCloseTo(4, 12);
    expect(stepKeys(a)[0]).toBe("cold-tonight.step.close");
  });
  test("pots are brought in and ripe fruit is picked", () => {
    const state = facing(-1, { notes: [{ on: "2026-05-25", kind: "first-pick" }] }, windy);
    const keys = stepKeys(advice("cold-tonight", { ...state, bed: { ...state.bed, kind: "containers" } }));
    expect(keys).toEqual(expect.arrayContaining(["cold-tonight.step.pots", "cold-tonight.step.pick"]));
  });
  test("the harm: 0.5 at 0 C, 0.9 at -1 C and below (killed at 0 to -1 C), 0.1 for a chill", () => {
    const harm = (t: number) => advice("cold-tonight", facing(t, {}, windy)).stakes.harm;
    expect([harm(0), harm(-0.5), harm(-1), harm(-5), harm(8)].map((h) => Math.round(h * 100))).toEqual([
      50, 70, 90, 90, 10,
    ]);
  });
  test("no chance is claimed, and each night is its own draft", () => {
    const a = advice("cold-tonight", facing(-2, {}, windy));
    expect(a.limits[0]?.key).toBe("cold-tonight.limit.no-chance");
    const shifted = (h: Hour) => ({ ...h, at: new Date(Date.parse(h.at) + 24 * HOUR_MS).toISOString() });
    const next = advice("cold-tonight", {
      ...facing(-2, {}, windy),
      asOf: "2026-05-27T18:30:00Z",
      forecast: { issuedAt: "2026-05-27T17:00:00Z", days: [], hours: hours(-2, windy).map(shifted) },
    });
    expect(next.amounts.night).not.toBe(a.amounts.night);
    expect(next.amounts.degreesBelow).toBe(a.amounts.degreesBelow);
  });

  test("a warning for this night that nobody answered leaves both cases open; one of last night does not", () => {
    const open = (issuedOn: string) => ({
      unanswered: [{ rule: "cold-tonight", issuedOn, due: "2026-05-26" }],
    });
    const cases = (issuedOn: string) => advice("cold-tonight", facing(-1, open(issuedOn), windy)).cases;
    expect(cases("2026-05-26").map((c) => c.when.key)).toEqual([
      "cold-tonight.case.covered",
      "cold-tonight.case.open",
    ]);
    expect(cases("2026-05-25")).toEqual([]);
  });
});

describe("what is missing or cannot be", () => {
  const missing = (state: PlantingState) => {
    const a = answer("cold-tonight", state);
    return a.kind === "needs-more" ? [a.missing[0]?.field, a.missing[0]?.measure.key] : a.kind;
  };
  const issued = (issuedAt: string) => facing(0, { forecast: { issuedAt, days: [], hours: hours(0) } });
  test("no forecast; one seven hours old; one that does not reach tonight", () => {
    expect(missing(facing(0, { forecast: undefined }))).toEqual([
      "forecast",
      "cold-tonight.missing.forecast",
    ]);
    expect(missing(issued("2026-05-26T11:00:00Z"))).toEqual([
      "forecast.issuedAt",
      "cold-tonight.missing.stale",
    ]);
    expect(kind(issued("2026-05-26T12:30:00Z"))).toBe("frost-tonight");
    const short = { issuedAt: "2026-05-26T17:00:00Z", days: [], hours: hours(0).slice(0, 9) };
    expect(missing(facing(0, { forecast: short }))).toEqual(["forecast.days", "cold-tonight.missing.night"]);
  });
  test("indoors, and in a heated house, without a thermometer inside", () => {
    const wanted = ["plantTemperatures", "cold-tonight.missing.inside"];
    expect(missing(facing(0, { planting: planting().planting }))).toEqual(wanted);
    expect(missing(covered(facing(0), "heated-house"))).toEqual(wanted);
  });
  test("refused, with field and bound: a day old, from the future, Fahrenheit, latitude 70", () => {
    const refused = (state: PlantingState) => {
      const a = answer("cold-tonight", state);
      return a.kind === "refused" ? a.problems[0]?.field : a.kind;
    };
    expect(refused(issued("2026-05-25T18:00:00Z"))).toBe("forecast.issuedAt");
    expect(refused(issued("2026-05-26T20:00:00Z"))).toBe("forecast.issuedAt");
    const hot = hours(0).map((h) => ({ ...h, temperatureC: 60 - Math.abs(h.temperatureC) / 2 }));
    const forecast = { issuedAt: "2026-05-26T17:00:00Z", days: [], hours: hot };
    expect(refused(facing(0, { forecast }))).toBe("forecast.hours.0.temperatureC");
    expect(refused(facing(0, { site: { ...planting().site, latitudeDeg: 70 } }))).toBe("site.latitudeDeg");
  });
  test("ended, unsown", () => {
    expect(kind(facing(0, { planting: { ...young, endedOn: "2026-05-25" } }))).toBe("does-not-apply");
    expect(kind(facing(0, { planting: { ...planting().planting, sownOn: "2026-06-01" } }))).toBe(
      "does-not-apply",
    );
  });
});

describe("whatever the weather", () => {
  const rank = ["does-not-apply", "cover-tonight", "frost-tonight"];
  const sky = fc.record({
    windMPerS: fc.double({ min: 0, max: 10, noNaN: true }),
    cloudPct: fc.double({ min: 0, max: 100, noNaN: true }),
    dewPointC: fc.double({ min: -20, max: 15, noNaN: true }),
  });
  const degrees = fc.double({ min: -15, max: 20, noNaN: true });
  test("a colder night never gives a milder verdict or less harm", () => {
    fc.assert(
      fc.property(degrees, fc.double({ min: 0, max: 10, noNaN: true }), sky, (lowest, colder, night) => {
        const [a, b] = [lowest, lowest - colder].map((t) => answer("cold-tonight", facing(t, {}, night)));
        const [codeA, codeB] = [a, b].map((x) => (x?.kind === "advice" ? x.decision.code : (x?.kind ?? "")));
        expect(rank.indexOf(codeB as string)).toBeGreaterThanOrEqual(rank.indexOf(codeA as string));
        const harm = (x: typeof a) => (x?.kind === "advice" ? x.stakes.harm : 0);
        expect(harm(b)).toBeGreaterThanOrEqual(harm(a));
      }),
      { numRuns: 60 },
    );
  });
  test("the minimum is the coldest of the ways, the course never goes below it, and a heavier cover leaves more", () => {
    fc.assert(
      fc.property(degrees, sky, (lowest, night) => {
        const a = answer("cold-tonight", facing(Math.min(lowest, 9), {}, night));
        if (a.kind !== "advice") return;
        const minimum = line(a, "Tmin") as number;
        expect(minimum).toBe(Math.min(...ways(a).map((id) => line(a, `Tmin ${id}`) as number)));
        const drawn = (a.charts[0]?.series[0]?.points ?? []).map((p) => p[1] as number);
        expect(Math.min(...drawn)).toBeGreaterThanOrEqual(minimum - 1e-9);
        const left = ["light-fleece", "heavy-fleece", "fleece-and-plastic"].map(
          (id) => line(a, `T ${id}`) as number,
        );
        expect([...left].sort((x, y) => x - y)).toEqual(left);
      }),
      { numRuns: 40 },
    );
  });
});
