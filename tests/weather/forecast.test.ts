import { metNorway } from "@pith/services";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { readForecast } from "../../packages/services/src/weather/readForecast.ts";
import { SourceFailure } from "../../packages/services/src/weather/source.ts";
import { file, says, startService } from "./service.ts";

/** What a forecast service answers, and what is made of it. Expected values are worked out by hand from the file. */

const ZONE = "America/Chicago";
const place = { latitudeDeg: 47.51234567, longitudeDeg: -93.1, elevationM: 410.4, timeZone: ZONE };
const text = file("point-forecast.json");
const read = (body: string, zone = ZONE) => readForecast(body, "The service", zone);

describe("the file of the documented format", () => {
  const forecast = read(text);

  test("was issued when meta.updated_at says", () => {
    expect(forecast.issuedAt).toBe("2026-05-11T03:40:12.000Z");
  });

  test("26 instants with an hour after them are hours; the six-hourly ones are not", () => {
    expect(forecast.hours).toHaveLength(26);
    expect(forecast.hours?.[5]).toEqual({
      at: "2026-05-11T09:00:00.000Z",
      temperatureC: 3.1,
      dewPointC: 4,
      rhPct: 80,
      windMPerS: 3,
      cloudPct: 50,
      rainMm: 0,
    });
  });

  test("10 May and 14 May are not there from midnight to midnight and are left out", () => {
    expect(forecast.days.map((d) => d.date)).toEqual(["2026-05-11", "2026-05-12", "2026-05-13"]);
  });

  test("11 May: 3 x 0.2 = 0.6 mm once, though the six hours say 0.6 again; 17.9 is of the six hours, 17.4 of the hour", () => {
    expect(forecast.days[0]).toEqual({
      date: "2026-05-11",
      tMaxC: 17.9,
      tMinC: 3.1,
      rainMm: 0.6,
      rainChancePct: 70,
      rhMeanPct: 80,
      dewPointC: 4,
      windMPerS: 3,
      windHeightM: 10,
      cloudPct: 50,
    });
  });

  test("12 May: 0.1 + 1.2 + 5/6 of 0.6 = 1.8 mm; the six hours across midnight are colder in its half: 1.5", () => {
    expect(forecast.days[1]).toMatchObject({ tMaxC: 21.3, tMinC: 1.5, rainMm: 1.8, rainChancePct: 40 });
  });

  test("13 May: 1/6 of 0.6 = 0.1 mm", () => {
    expect(forecast.days[2]).toMatchObject({ tMaxC: 18, tMinC: 4, rainMm: 0.1, rainChancePct: 30 });
  });
});

describe("the site's own day", () => {
  const hourly = (from: string, hours: number) => {
    const document = JSON.parse(text) as { properties: { timeseries: object[] } };
    const [first] = document.properties.timeseries as [
      { data: { next_1_hours: { details: Record<string, number> } } },
    ];
    document.properties.timeseries = Array.from({ length: hours }, (_, h) => {
      const next = { details: { ...first.data.next_1_hours.details, precipitation_amount: 0.1 } };
      const time = new Date(Date.parse(from) + h * 3_600_000).toISOString();
      return { time, data: { ...first.data, next_1_hours: next } };
    });
    return JSON.stringify(document);
  };

  test.each([
    ["2026-03-08T06:00:00Z", 23, "2026-03-08", 2.3],
    ["2026-11-01T05:00:00Z", 25, "2026-11-01", 2.5],
    ["2026-05-11T05:00:00Z", 24, "2026-05-11", 2.4],
  ])("from %s, %i hours of 0.1 mm are the whole of %s: %f mm", (from, hours, date, rainMm) => {
    expect(read(hourly(from, hours)).days).toMatchObject([{ date, rainMm }]);
    expect(read(hourly(from, hours - 1)).days).toEqual([]);
  });

  test("an hour without an amount leaves the day's rain unknown, not less", () => {
    const body = hourly("2026-05-11T05:00:00Z", 24).replace('"precipitation_amount":0.1,', "");
    expect(read(body).days[0]).not.toHaveProperty("rainMm");
    expect(read(body).days[0]).toMatchObject({ tMaxC: 10 });
  });

  test("a gap of an hour leaves the day out", () => {
    const document = JSON.parse(hourly("2026-05-11T05:00:00Z", 24)) as {
      properties: { timeseries: object[] };
    };
    document.properties.timeseries.splice(12, 1);
    expect(read(JSON.stringify(document)).days).toEqual([]);
  });
});

describe("what cannot be used is refused by name", () => {
  test.each([
    ["cut short", text.slice(0, 4000), "answered with something that is not whole JSON"],
    ["a page", "<html></html>", "answered with something that is not whole JSON"],
    ["without meta", file("without-meta.json"), "in a form that is not known: properties.meta"],
    ["a list", "[]", "in a form that is not known: the document"],
    [
      "Fahrenheit",
      text.replace('"air_temperature": "celsius"', '"air_temperature": "fahrenheit"'),
      "gave air_temperature in fahrenheit; it is read in celsius only",
    ],
    [
      "knots",
      text.replace('"wind_speed": "m/s"', '"wind_speed": "knots"'),
      "gave wind_speed in knots; it is read in m/s only",
    ],
    ["no unit", text.replace('"wind_speed": "m/s"', '"x": "m/s"'), "gave wind_speed without a unit"],
    [
      "words for a number",
      text.replace('"air_temperature": 3.1', '"air_temperature": "3.1"'),
      "gave air_temperature as something that is not a number",
    ],
    [
      "no temperature",
      text.replace('"air_temperature": 3.1,', ""),
      "gave no air_temperature at 2026-05-11T09:00:00Z",
    ],
    ["a star's heat", text.replace('"air_temperature": 3.1', '"air_temperature": 3100'), "days.0.tMaxC"],
    [
      "times out of order",
      text.replace("2026-05-11T09:00:00Z", "2026-05-11T08:00:00Z"),
      "times that do not follow one another",
    ],
  ])("%s", (_, body, why) => {
    expect(() => read(body)).toThrow(SourceFailure);
    expect(() => read(body)).toThrow(why);
  });
});

describe("asking the service", () => {
  let service: Awaited<ReturnType<typeof startService>>;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(() => service?.close());
  const source = (timeoutMs?: number) =>
    metNorway({ contact: "office@aldertarn.example", baseUrl: service.baseUrl, timeoutMs });
  const NAME = "The Norwegian Meteorological Institute";

  test("one question: four decimals, whole metres, who asks, and nothing secret", async () => {
    service.answer = says(text, 200, {
      expires: "Mon, 11 May 2026 05:10:00 GMT",
      "last-modified": "Mon, 11 May 2026 03:41:00 GMT",
    });
    const fetched = await source().fetch(place);
    expect(fetched).toMatchObject({
      kind: "fresh",
      since: "Mon, 11 May 2026 03:41:00 GMT",
      askAgainAt: "2026-05-11T05:10:00.000Z",
      deprecated: false,
    });
    const [{ url, headers } = { url: "", headers: {} }] = service.asked.slice(-1);
    expect(url).toBe("/locationforecast/2.0/complete?lat=47.5123&lon=-93.1&altitude=410");
    expect(headers["user-agent"]).toBe("Pith/1 office@aldertarn.example");
    expect(headers["if-modified-since"]).toBeUndefined();
    expect(headers.cookie).toBeUndefined();
    expect(headers.authorization).toBeUndefined();
  });

  test("asked again it hands back when it changed last, and 304 is unchanged", async () => {
    service.answer = says("", 304, { expires: "Mon, 11 May 2026 06:00:00 GMT" });
    expect(await source().fetch(place, "Mon, 11 May 2026 03:41:00 GMT")).toEqual({
      kind: "unchanged",
      askAgainAt: "2026-05-11T06:00:00.000Z",
      deprecated: false,
    });
    expect(service.asked.at(-1)?.headers["if-modified-since"]).toBe("Mon, 11 May 2026 03:41:00 GMT");
  });

  test("203 says that this way of asking will end", async () => {
    service.answer = says(text, 203);
    expect(await source().fetch(place)).toMatchObject({ kind: "fresh", deprecated: true, askAgainAt: null });
  });

  test.each([
    [429, `${NAME} was asked too often (429) and wants a pause.`],
    [403, `${NAME} refused the question (403): check PITH_FORECAST_CONTACT, by which it knows who asks.`],
    [422, `${NAME} has no forecast for this place (422).`],
    [500, `${NAME} answered with an error (500).`],
    [302, `${NAME} answered with an error (302).`],
    [304, `${NAME} answered "not changed" to a first question.`],
  ])("%i", async (status, message) => {
    service.answer = says("", status, { location: "/elsewhere" });
    await expect(source().fetch(place)).rejects.toThrow(message);
  });

  test("a pause that it wants is kept", async () => {
    service.answer = says("", 429, { "retry-after": "7200" });
    await expect(source().fetch(place)).rejects.toMatchObject({ pauseMs: 7_200_000 });
    service.answer = says("", 429);
    await expect(source().fetch(place)).rejects.toMatchObject({ pauseMs: null });
  });

  test("a body that breaks off", async () => {
    service.answer = (response) => {
      response.writeHead(200, { "content-length": String(text.length) });
      response.write(text.slice(0, 2000), () => response.destroy());
    };
    await expect(source().fetch(place)).rejects.toThrow(`${NAME} broke off in the middle of its answer.`);
  });

  test("a service that does not answer, and one that stops half way", async () => {
    service.answer = () => {};
    await expect(source(200).fetch(place)).rejects.toThrow(`${NAME} did not answer within 0.2 s.`);
    service.answer = (response) => void response.writeHead(200).write(text.slice(0, 500));
    await expect(source(200).fetch(place)).rejects.toThrow(`${NAME} did not answer within 0.2 s.`);
  });

  test("more than 3 MB is not read to its end", async () => {
    service.answer = says(" ".repeat(3_100_000));
    await expect(source().fetch(place)).rejects.toThrow(`${NAME} sent more than 3 MB.`);
  });

  test("nobody there", async () => {
    const nowhere = metNorway({ contact: "office@aldertarn.example", baseUrl: "http://127.0.0.1:9/x" });
    await expect(nowhere.fetch(place)).rejects.toThrow(`${NAME} cannot be reached.`);
  });
});
