import type { Working } from "../../core/working.ts";
import { fao56 } from "../../quantities/cite.ts";
import { mulchOn } from "../../states/standing.ts";
import type { Demand } from "../../water/demand.ts";
import { STAGES } from "../../water/stages.ts";
import { windExposure } from "../../water/windExposure.ts";
import { heightM } from "../../water/zone.ts";
import type { ZoneReading } from "./reading.ts";
import type { ValveSetting } from "./setting.ts";

/** The book's extent, the coefficients of the next day and what they make of its ET0. */
export function writeCoefficient(w: Working, setting: ValveSetting, z: ZoneReading, demand: Demand): void {
  const { zone, top, days, today: day } = z;
  const { today } = setting;
  const mulch = mulchOn(zone.bed, today);
  const climate = `h = ${heightM(zone, today)} m, RHmin = ${demand.rhMinPct.toFixed(1)} %, u2 = ${demand.windAt2mMPerS.toFixed(2)} m/s`;
  const staked = zone.planting.staked ? "staked" : "not staked";
  w.line(
    "J0",
    "book opened, root zone taken as full",
    "setting out, or first weather day",
    days[0]?.day ?? null,
    "date",
  );
  w.line("n", "days in the book", "", z.closed, "days");
  w.line(
    "L",
    "stages from setting out",
    `initial ${STAGES.initial}, development ${STAGES.development}, mid ${STAGES.mid}, late ${STAGES.late}`,
    `${STAGES.initial}/${STAGES.development}/${STAGES.mid}/${STAGES.late}`,
    "days",
    fao56("Table 11, p. 104"),
  );
  if (!top) {
    w.line(
      "Kc",
      `crop coefficient of the next day, mulch ${mulch}, ${staked}`,
      `curve of eq. 66 through the levels of Table 12 moved by eq. 62 and 65 (${climate})`,
      day.kcb,
      "",
      fao56("eq. 62, 65, 66; ch. 10"),
    );
  } else {
    const { season, closed } = z;
    const at = (column: Float64Array) => column[closed] as number;
    w.line(
      "Kcb",
      `basal coefficient of the next day, mulch ${mulch}, ${staked}`,
      `curve of eq. 66 through the levels of Table 17 moved by eq. 70 (${climate}), and by the cover where somebody saw it`,
      day.kcb,
      "",
      fao56("eq. 66, 70; ch. 10"),
    );
    w.line(
      "Kcmax",
      "upper limit of Kc",
      "max{1.2 + [...](h / 3)^0.3, Kcb + 0.05}",
      at(season.kcMax),
      "",
      fao56("eq. 72"),
    );
    w.line(
      "TEW",
      "evaporable water of the top 0.10 m",
      "1000 (θFC - 0.5 θWP) Ze, or Table 19",
      top.tewMm,
      "mm",
      fao56("eq. 73, Table 19"),
    );
    w.line("REW", "easily evaporable water", "Table 19", top.rewMm, "mm", fao56("Table 19, p. 144"));
    w.line(
      "fw",
      "ground that the valve wets",
      "measured, or Table 20",
      season.wettedFraction,
      "fraction",
      fao56("Table 20"),
    );
    w.line(
      "few",
      "ground both wetted by the valve and open to the sun",
      "min(1 - fc, fw); drippers [1 - (2/3) fc] fw",
      at(season.wateredFraction),
      "fraction",
      fao56("eq. 75, 76"),
    );
    w.line(
      "few,P",
      "open ground that rain alone wets",
      "1 - fc - few",
      at(season.rainedFraction),
      "fraction",
      {
        key: "allen-2005-dual",
      },
    );
    w.line(
      "mulch",
      "share of the evaporation that the mulch leaves",
      "1 - fall",
      at(season.evaporationKept),
      "fraction",
      fao56("ch. 10, p. 196-197"),
    );
    w.line(
      "De",
      "missing from the top that the valve wets",
      "eq. 77",
      z.start.wateredTopMm,
      "mm",
      fao56("eq. 77"),
    );
    w.line(
      "Ke",
      "evaporation coefficient of the next day",
      "min[Kr (Kcmax - Kcb), few Kcmax], less the mulch's share",
      day.ke,
      "",
      fao56("eq. 71, 74"),
    );
  }
  w.line(
    "ET0",
    "expected on the next day",
    "forecast, else mean of the last 7 measured days",
    day.et0Mm,
    "mm/day",
    fao56("eq. 6"),
  );
  w.line(
    "ETc",
    "expected crop evapotranspiration",
    top ? "(Kcb + Ke) ET0" : "Kc ET0",
    day.etcMm,
    "mm/day",
    fao56(top ? "eq. 69" : "eq. 58"),
  );
}

/** What wind does to the last measured day. */
export function writeWind(w: Working, { state }: ValveSetting, z: ZoneReading): void {
  const wind = windExposure(z.ground, state.weather, state.site);
  if (!wind) return;
  for (const [symbol, name, at] of [
    ["still", "in still air", wind.still],
    ["windy", "in the windiest week so far", wind.windy],
  ] as const) {
    w.line(
      `Kc ${symbol}`,
      `the plants' coefficient of ${wind.day} ${name}`,
      `moved by eq. 70, u2 = ${at.windAt2mMPerS.toFixed(2)} m/s`,
      at.kc,
      "",
      fao56("eq. 62, 70"),
    );
    w.line(
      `ETc ${symbol}`,
      `what the plants would have asked for on ${wind.day} ${name}`,
      `Kc × ET0 with that wind, ET0 = ${at.et0Mm.toFixed(2)} mm`,
      at.etcMm,
      "mm/day",
      fao56("eq. 6"),
    );
  }
}
