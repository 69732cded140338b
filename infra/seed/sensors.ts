import { type Client, farmRoutes, sensorRoutes } from "@pith/contract";
import { addDays, instantAt, localDay, localHour } from "@pith/rules";
import { STATIONS } from "./county/stations.ts";
import { seeded } from "./random.ts";
import { inventWeather, type Station } from "./weather.ts";

/** A mast in the open of a demo farm, with a key of its own and two weeks of invented readings, sent as a device sends them. */

const DAYS = 14;
const EVERY_S = 1800;
const KEY = "Mast in the home field";
const WEEK_S = 7 * 86_400;

const SERIES = [
  { name: "mast:air", label: "Air at the mast", quantity: "air-temperature", unit: "Cel" },
  { name: "mast:humidity", label: "Humidity at the mast", quantity: "relative-humidity", unit: "%RH" },
] as const;

type Params = { officeId: string; farmId: string };

/** Sets the mast up where there is none, and brings its readings up to the hour. */
export async function runDemoMast(client: Client, origin: string, params: Params): Promise<void> {
  const { sites } = await client.call(farmRoutes.getFarm, { params });
  const [site] = sites;
  if (!site) return;
  const { series } = await client.call(sensorRoutes.listSeries, { params });
  const ids: string[] = [];
  for (const one of SERIES) {
    const there = series.find((s) => s.name === one.name);
    const json = {
      ...one,
      siteId: site.id,
      bedId: null,
      cover: null,
      depthCm: null,
      heightM: 2,
      expectedEveryS: EVERY_S,
      // Nobody sends for it while nothing runs: a demo that rests over the weekend is no alarm.
      silentAfterS: WEEK_S,
      keepMonths: 14,
    };
    ids.push((there ?? (await client.call(sensorRoutes.addSeries, { params, json }))).id);
  }
  const { keys } = await client.call(sensorRoutes.listSensorKeys, { params });
  const known = keys.find((k) => k.name === KEY && k.endsAt === null && k.revokedAt === null);
  const { secret } = known
    ? await client.call(sensorRoutes.rotateSensorKey, {
        params: { ...params, keyId: known.id },
        json: { overlapHours: 0 },
      })
    : await client.call(sensorRoutes.addSensorKey, {
        params,
        json: { name: KEY, seriesIds: ids, endsAt: null },
      });
  const pack = invent(site.timeZone, site.latitudeDeg, new Date());
  const answer = await fetch(`${origin}/v1/readings`, {
    method: "POST",
    headers: { authorization: `Bearer ${secret}`, "content-type": "application/senml+json" },
    body: JSON.stringify(pack),
  });
  if (!answer.ok) throw new Error(`the demo's mast was refused: ${answer.status} ${await answer.text()}`);
}

/** Between the extremes of invented days: lowest at five, highest at three in the afternoon; the same whenever asked. */
function invent(timeZone: string, latitudeDeg: number, now: Date) {
  const today = localDay(now.toISOString(), timeZone);
  const station: Station = { ...STATIONS["ALD-01"], latitudeDeg };
  const from = addDays(today, -DAYS);
  const days = new Map(
    inventWeather(station, addDays(`${today.slice(0, 4)}-01-01`, -365), today).map((d) => [d.date, d]),
  );
  const first = Date.parse(instantAt(from, 0, timeZone)) / 1000;
  const records: object[] = [];
  for (let t = first; t * 1000 <= now.getTime(); t += EVERY_S) {
    const at = new Date(t * 1000).toISOString();
    const day = days.get(localDay(at, timeZone));
    if (!day) continue;
    const { normal } = seeded(Math.floor(t / EVERY_S));
    const warmth = 0.5 + 0.5 * Math.cos((2 * Math.PI * (localHour(at, timeZone) - 15)) / 24);
    const air = day.tMinC + (day.tMaxC - day.tMinC) * warmth + 0.2 * normal();
    const humidity = Math.min(99, Math.max(20, day.rhMeanPct + 18 - 36 * warmth + normal()));
    records.push({ n: "mast:air", t, v: Math.round(air * 10) / 10 });
    records.push({ n: "mast:humidity", t, v: Math.round(humidity) });
  }
  return records;
}
