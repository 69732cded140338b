import { type SourceRef, Working } from "../../core/working.ts";
import {
  AT_5C,
  COLOURING,
  FRUIT_CHILLS_C,
  FRUIT_CHILLS_SOURCE,
  FRUIT_FREEZES_C,
  STORAGE,
} from "../../tables/fruitStorage.ts";
import type { Reading } from "./reading.ts";

const PRACTICE: SourceRef = { key: "common-practice" };

export function workingOf(r: Reading): Working {
  const w = new Working();
  w.line(
    "stage",
    "when its fruit is picked",
    r.atKnown ? "as the planting says" : "as the market type is",
    r.at,
    "",
    PRACTICE,
  );
  for (const [symbol, s] of [
    ["green", r.green],
    ["colour", r.colour],
  ] as const) {
    if (!s) continue;
    w.line(
      `Q_${symbol}`,
      `heat from showing to the first ${symbol} fruit, as stage reckons it`,
      `± ${s.need.sd.toFixed(0)}`,
      s.need.mean,
      "C day",
      {
        key: "pepper-maturity-guides",
      },
    );
    w.line(
      `t_${symbol}`,
      `its day; eight in ten between ${s.dates.low ?? "no day"} and ${s.dates.high ?? "no day"}`,
      s.notedOn === null ? "past years with the forecast" : "noted",
      s.dates.likely,
      "date",
    );
  }
  if (r.autumn) {
    w.line("T_frost", "thermometer reading that counts as frost", "default", r.autumn.frostC, "C", PRACTICE);
    w.line(
      "t_frost",
      `first autumn frost at the plants in the middle year; eight in ten between ${r.autumn.dates.low ?? "no day"} and ${r.autumn.dates.high ?? "no day"}`,
      "counted in the station's years, site and covers in it",
      r.autumn.dates.likely,
      "date",
    );
  }
  const shares = [
    ["green", r.greenBefore],
    ["colour", r.colourBefore],
  ] as const;
  for (const [symbol, share] of shares) {
    if (share !== null)
      w.line(
        `P_${symbol}`,
        `chance of a ${symbol} fruit before the first frost`,
        "each year's warmth against that year's frost",
        share,
        "fraction",
      );
  }
  if (r.frostNight)
    w.line(
      "T_min",
      `forecast at the plants for the night after ${r.frostNight.evening}`,
      "forecast + site + cover",
      r.frostNight.minC,
      "C",
    );
  else if (r.chillNight)
    w.line(
      "T_min",
      `forecast at the plants for the night after ${r.chillNight.evening}`,
      "forecast + site + cover",
      r.chillNight.minC,
      "C",
    );
  w.line(
    "T_chill",
    "fruit chills below",
    "on the shelf; taken alike on the plant",
    FRUIT_CHILLS_C,
    "C",
    FRUIT_CHILLS_SOURCE,
  );
  w.line("T_freeze", "fruit freezes at", "31 F", FRUIT_FREEZES_C, "C", STORAGE.source);
  w.line("T_keep", "coolest place to keep fruit", "45 F", STORAGE.lowC, "C", STORAGE.source);
  w.line(
    "d_5C",
    "days at 5 C before mature green fruit shows chilling",
    `${AT_5C.daysLow} to ${AT_5C.daysHigh}`,
    AT_5C.daysLow,
    "days",
    AT_5C.source,
  );
  w.line(
    "T_ripen",
    "warmth in which begun colour goes on",
    `${COLOURING.lowC} to ${COLOURING.highC}`,
    COLOURING.lowC,
    "C",
    COLOURING.source,
  );
  if (r.harvestFrom !== null)
    w.line(
      "t_harvest",
      "first day the labels of its sprays let fruit be picked",
      "day of spraying + pre-harvest days, the latest",
      r.harvestFrom,
      "date",
    );
  return w;
}
