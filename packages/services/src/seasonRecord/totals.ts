import type { SeasonRecord, SeasonRow } from "@pith/contract";
import { uptakePerTonne } from "@pith/rules";

type Tables = Pick<
  SeasonRecord["tables"],
  "beds" | "applications" | "waterings" | "sprays" | "harvests" | "works"
>;
type Totals = SeasonRow<"totals">;

const MINUTES_PER_HOUR = 60;
const KG_PER_T = 1000;

/** Sum of what is known; null where nothing is. */
function known(values: (number | null)[]): number | null {
  const said = values.filter((value) => value !== null);
  return said.length === 0 ? null : said.reduce((sum, value) => sum + value, 0);
}

const less = (a: number | null, b: number | null) => (a === null || b === null ? null : a - b);
const times = (a: number | null, b: number | null) => (a === null || b === null ? null : a * b);
const over = (a: number | null, b: number | null) => (a === null || b === null || b === 0 ? null : a / b);

/** A row for each bed, and one for the farm under its name. */
export function totalRows(tables: Tables, farm: string, labourMoneyPerHour: number | null): Totals[] {
  const inBed = <T extends { bedId: string }>(rows: T[], bedId: string) =>
    rows.filter((r) => r.bedId === bedId);
  const beds = tables.beds.map((bed) =>
    totalsOf(
      {
        beds: [bed],
        applications: inBed(tables.applications, bed.bedId),
        waterings: inBed(tables.waterings, bed.bedId),
        sprays: inBed(tables.sprays, bed.bedId),
        harvests: inBed(tables.harvests, bed.bedId),
        works: inBed(tables.works, bed.bedId),
      },
      { bed: bed.bed, bedId: bed.bedId },
      labourMoneyPerHour,
    ),
  );
  return [...beds, totalsOf(tables, { bed: farm, bedId: null }, labourMoneyPerHour)];
}

function totalsOf(
  { beds, applications, waterings, sprays, harvests, works }: Tables,
  who: Pick<Totals, "bed" | "bedId">,
  labourMoneyPerHour: number | null,
): Totals {
  const croppedM2 = beds.reduce((sum, bed) => sum + bed.croppedM2, 0);
  const pickedKg = known(harvests.map((h) => h.pickedKg));
  const marketableKg = known(harvests.map((h) => h.marketableKg));
  const cullKg = known(harvests.flatMap((h) => h.culls.map((cull) => cull.kg)));
  const given = {
    nKg: known(applications.map((a) => a.nKg)),
    p2o5Kg: known(applications.map((a) => a.p2o5Kg)),
    k2oKg: known(applications.map((a) => a.k2oKg)),
  };
  const waterNKg = known(waterings.map((w) => w.nKg));
  const waterLitres = known(waterings.map((w) => w.bedLitres));
  const removed = removedWith(pickedKg);
  const nIn = known([given.nKg, waterNKg]);
  const hours = hoursOf({ applications, waterings, sprays, harvests, works });
  const timed = harvests.filter((h) => h.labourHours !== null);
  return {
    ...who,
    croppedM2,
    pickedKg,
    marketableKg,
    cullKg,
    unsortedKg: pickedKg === null ? null : pickedKg - (marketableKg ?? 0) - (cullKg ?? 0),
    ...given,
    waterNKg,
    ...removed,
    balanceNLowKg: less(nIn, removed.removedNHighKg),
    balanceNHighKg: less(nIn, removed.removedNLowKg),
    balanceP2o5LowKg: less(given.p2o5Kg, removed.removedP2o5HighKg),
    balanceP2o5HighKg: less(given.p2o5Kg, removed.removedP2o5LowKg),
    balanceK2oLowKg: less(given.k2oKg, removed.removedK2oHighKg),
    balanceK2oHighKg: less(given.k2oKg, removed.removedK2oLowKg),
    waterLitres,
    waterMm: over(waterLitres, croppedM2),
    ...hours,
    pickingMinutesPerKg: over(
      times(known(timed.map((h) => h.labourHours)), MINUTES_PER_HOUR),
      known(timed.map((h) => h.pickedKg)),
    ),
    labourMinutesPerKg: over(times(hours.labourHours, MINUTES_PER_HOUR), pickedKg),
    materialsMoney: known(applications.map((a) => a.costMoney)),
    materialsUnpriced: applications.filter((a) => a.costMoney === null).length,
    labourMoney: times(hours.labourHours, labourMoneyPerHour),
    worthMoney: known(harvests.map((h) => h.worthMoney)),
  };
}

/** What leaves with so much fresh fruit, by the published contents of fruit (see `uptakePerTonne`). */
function removedWith(pickedKg: number | null) {
  const { nKgPerT, p2o5KgPerT, k2oKgPerT } = uptakePerTonne("fruit");
  const of = (kgPerT: number) => (pickedKg === null ? null : (pickedKg / KG_PER_T) * kgPerT);
  return {
    removedNLowKg: of(nKgPerT.low),
    removedNHighKg: of(nKgPerT.high),
    removedP2o5LowKg: of(p2o5KgPerT.low),
    removedP2o5HighKg: of(p2o5KgPerT.high),
    removedK2oLowKg: of(k2oKgPerT.low),
    removedK2oHighKg: of(k2oKgPerT.high),
  };
}

function hoursOf({ applications, waterings, sprays, harvests, works }: Omit<Tables, "beds">) {
  const hours = (rows: { labourMinutes: number | null }[]) =>
    over(known(rows.map((row) => row.labourMinutes)), MINUTES_PER_HOUR);
  const tasks = {
    applyingHours: hours(applications),
    wateringHours: hours(waterings),
    sprayingHours: hours(sprays),
    pickingHours: known(harvests.map((h) => h.labourHours)),
    otherWorkHours: hours(works),
  };
  const untimed = [...applications, ...waterings, ...sprays].filter(
    (row) => row.labourMinutes === null,
  ).length;
  return {
    ...tasks,
    labourHours: known(Object.values(tasks)),
    labourUnknown: untimed + harvests.filter((h) => h.labourHours === null).length,
  };
}
