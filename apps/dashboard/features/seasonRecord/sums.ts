import type { SeasonRow } from "@pith/contract";
import { localeOf } from "../../format/language.ts";
import { type FormUnit, inText } from "../../format/units.ts";
import type { Said } from "./cells.ts";

/** The sums of a bed, or of the farm, each with its name; what nobody wrote down is told in one sentence. */
export function sumsText(row: SeasonRow<"totals">, { t, language, units }: Said) {
  const as = (value: number | null, unit: FormUnit) =>
    value === null ? null : inText(value, unit, units, language);
  const span = (low: number | null, high: number | null) =>
    low === null || high === null
      ? null
      : t("span", { low: inText(low, "kg", units, language), high: inText(high, "kg", units, language) });
  const money = (value: number | null) => (value === null ? null : value.toFixed(2));
  const balance = (given: number | null, out: string | null, left: string | null) =>
    given === null && out === null
      ? null
      : t("balance", {
          given: as(given, "kg") ?? t("unknown"),
          out: out ?? t("unknown"),
          left: left ?? t("unknown"),
        });
  const perKg = (value: number | null) => (value === null ? null : t("perKg", { minutes: value.toFixed(1) }));
  const nGiven = row.nKg === null && row.waterNKg === null ? null : (row.nKg ?? 0) + (row.waterNKg ?? 0);
  const lines: [string, string | null][] = [
    ["cropped", as(row.croppedM2, "m2")],
    ["picked", as(row.pickedKg, "kg")],
    ["marketable", as(row.marketableKg, "kg")],
    ["culls", as(row.cullKg, "kg")],
    [
      "nitrogen",
      balance(
        nGiven,
        span(row.removedNLowKg, row.removedNHighKg),
        span(row.balanceNLowKg, row.balanceNHighKg),
      ),
    ],
    [
      "phosphate",
      balance(
        row.p2o5Kg,
        span(row.removedP2o5LowKg, row.removedP2o5HighKg),
        span(row.balanceP2o5LowKg, row.balanceP2o5HighKg),
      ),
    ],
    [
      "potash",
      balance(
        row.k2oKg,
        span(row.removedK2oLowKg, row.removedK2oHighKg),
        span(row.balanceK2oLowKg, row.balanceK2oHighKg),
      ),
    ],
    ["waterNitrate", as(row.waterNKg, "kg")],
    ["water", row.waterLitres === null ? null : `${as(row.waterLitres, "L")}, ${as(row.waterMm, "mm")}`],
    ["applying", as(row.applyingHours, "hours")],
    ["watering", as(row.wateringHours, "hours")],
    ["spraying", as(row.sprayingHours, "hours")],
    ["picking", as(row.pickingHours, "hours")],
    ["otherWork", as(row.otherWorkHours, "hours")],
    [
      "labour",
      row.labourHours === null
        ? null
        : t("labourSum", {
            hours: inText(row.labourHours, "hours", units, language),
            unknown: row.labourUnknown,
          }),
    ],
    ["pickingPerKg", perKg(row.pickingMinutesPerKg)],
    ["labourPerKg", perKg(row.labourMinutesPerKg)],
    ["materials", money(row.materialsMoney)],
    ["labourMoney", money(row.labourMoney)],
    ["worth", money(row.worthMoney)],
  ];
  const known = lines.flatMap(([name, text]) =>
    text === null ? [] : [{ name: t(`totals.${name}` as "totals.cropped"), text }],
  );
  const unknown = lines
    .filter(([, text]) => text === null)
    .map(([name]) => t(`totals.${name}` as "totals.cropped"));
  const list = new Intl.ListFormat(localeOf(language), { type: "conjunction" });
  return { known, unwritten: unknown.length > 0 ? t("notWritten", { what: list.format(unknown) }) : null };
}
