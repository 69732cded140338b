import type { Column } from "@pith/contract";
import { describe, expect, test } from "vitest";
import { dateFormatOf, readDay, readNumber } from "../../packages/services/src/imports/cells.ts";
import { readCsv } from "../../packages/services/src/imports/csv.ts";
import { readSoilTests } from "../../packages/services/src/imports/readSoilTests.ts";
import { readWeather } from "../../packages/services/src/imports/readWeather.ts";

/** Reading files: what is understood by name, what is asked, what is refused and why. */

const BED = "0b6c2a5e-0000-4000-8000-000000000001";
const defaults = { bedsByName: new Map([["north tunnel", BED]]) };
const soil = (csv: string, more: object = {}, now?: Column[], before?: Column[]) =>
  readSoilTests(readCsv(csv), { now, before }, { ...defaults, ...more });
const weather = (csv: string, said?: Column[]) => readWeather(readCsv(csv), said);

describe("cells", () => {
  test("a limit is not turned into a number", () => {
    expect(readNumber("<0.5", false)).toEqual({
      kind: "unreadable",
      reason: '"<0.5" is a limit, not a number; leave the cell empty or give the number',
    });
  });
  test("6,5 is 6.5 only where the separator is not a comma", () => {
    expect(readNumber("6,5", true)).toEqual({ kind: "number", value: 6.5 });
    expect(readNumber("6,5", false).kind).toBe("unreadable");
  });
  test("31 April does not exist", () => {
    expect(readDay("2026-04-31", "YYYY-MM-DD")).toBeNull();
    expect(readDay("04/30/2026", "MM/DD/YYYY")).toBe("2026-04-30");
  });
  test("04/05/2026 alone is in doubt; 04/25/2026 beside it settles it", () => {
    expect(dateFormatOf(["04/05/2026"])).toBeNull();
    expect(dateFormatOf(["04/05/2026", "04/25/2026"])).toBe("MM/DD/YYYY");
  });
});

describe("a laboratory's file", () => {
  test("columns are matched by name with unit, extractant, method and extraction", async () => {
    const read = await soil(
      "Date sampled,Bed,Sample ID,Depth (in),pH,Buffer pH (SMP),OM %,CEC meq/100g,EC 1:2 (mmhos/cm),Mehlich-3 P ppm,Mehlich-3 K lb/A\n" +
        "2026-03-14,North tunnel,A1,6,6.4,6.8,3.1,9.5,0.4,52,240\n",
    );
    expect(read.questions).toEqual([]);
    expect(read.refused).toEqual([]);
    expect(read.accepted[0]?.row).toMatchObject({
      bedId: BED,
      sampledOn: "2026-03-14",
      sampleRef: "A1",
      depthCm: 15.24,
      waterPh: 6.4,
      bufferPh: { method: "smp", value: 6.8 },
      organicMatterPct: 3.1,
      cecCmolPerKg: 9.5,
      ec: { dSPerM: 0.4, extraction: "1:2" },
      values: [
        { nutrient: "P", extractant: "mehlich-3", mgPerKg: 52 },
        { nutrient: "K", extractant: "mehlich-3", mgPerKg: 120 },
      ],
    });
  });

  test("a unit and an extractant that the file does not state are asked, never guessed", async () => {
    const read = await soil("sampled on,bed,depth cm,P\n2026-03-14,North tunnel,15,52\n");
    expect(read.accepted).toEqual([]);
    expect(read.questions.map((q) => [q.header, q.about])).toEqual([
      ["P", "unit"],
      ["P", "extractant"],
    ]);
  });

  test("answered questions settle the column; `not stated` keeps the value without an extractant", async () => {
    const columns = [{ header: "P", field: "P", unit: "ppm", extractant: "not stated" }];
    const read = await soil("sampled on,bed,depth cm,P\n2026-03-14,North tunnel,15,52\n", {}, columns);
    expect(read.questions).toEqual([]);
    expect(read.accepted[0]?.row.values).toEqual([{ nutrient: "P", mgPerKg: 52 }]);
  });

  test("each refused row is named by line, column and reason, and the others are kept", async () => {
    const read = await soil(
      "sampled on,bed,depth cm,sample,pH\n" +
        "2026-03-14,North tunnel,15,A,19\n" +
        "2026-03-14,South field,15,B,6.5\n" +
        "14 March,North tunnel,15,C,6.5\n" +
        "2026-03-14,North tunnel,15,D,6.5\n" +
        "2026-03-14,North tunnel,15,D,6.6\n",
    );
    expect(read.accepted.map((a) => a.line)).toEqual([5]);
    expect(read.refused).toEqual([
      { line: 2, column: "pH", reason: "waterPh must be at most 12", value: "19" },
      {
        line: 3,
        column: "bed",
        reason: 'There is no bed "South field" on this farm; its beds are north tunnel',
        value: "South field",
      },
      {
        line: 4,
        column: "sampled on",
        reason: '"14 March" is not a day written as YYYY-MM-DD',
        value: "14 March",
      },
      {
        line: 6,
        column: "sample",
        reason: "The same sample stands on line 5 with other values: pH 6.5 on line 5, 6.6 here",
        value: "D",
      },
    ]);
  });

  const mediumRow = (medium: string) => `2026-03-14,North tunnel,15,pH ${medium || "none"},${medium},6.5`;
  const sampled = (...media: string[]) =>
    soil(`sampled on,bed,depth cm,sample,Soil type,pH\n${media.map(mediumRow).join("\n")}\n`);
  test.each([
    ["potting-medium", ["Potting mix", "container medium", "soilless", "peat-mix", "bark", "Potting soil"]],
    ["organic-soil", ["Organic soil", "muck", "muck soil", "peat soil"]],
    ["mineral-soil", ["", "mineral", "Field soil", "garden", "Soil", "mineral-soil", "Sandy loam", "clay"]],
  ])("what was sampled, read word for word: %s", async (medium, said) => {
    const read = await sampled(...said);
    expect(read.refused).toEqual([]);
    expect(read.accepted.map((a) => a.row.medium)).toEqual(said.map(() => medium));
  });
  test("potatoes are no pot and a certificate is no muck: what was sampled is refused, not guessed", async () => {
    const said = ["potato field", "certified organic", "non-organic", "peat"];
    const read = await sampled(...said);
    expect(read.accepted).toEqual([]);
    expect(read.refused.map(({ column, value }) => [column, value])).toEqual(
      said.map((value) => ["Soil type", value]),
    );
    expect(read.refused[0]?.reason).toMatch(/mineral soil, .*organic soil, muck .*potting/);
  });

  test("a file without a depth says which two places could say it", async () => {
    const read = await soil("sampled on,bed,pH\n2026-03-14,North tunnel,6.5\n");
    expect(read.refused.map((r) => r.reason)).toEqual([
      "No column is the sampling depth, and none was given for the whole file (depthCm).",
    ]);
    const deep = await soil("sampled on,bed,pH\n2026-03-14,North tunnel,6.5\n", { depthCm: 20 });
    expect(deep.accepted[0]?.row.depthCm).toBe(20);
  });

  test("1 meq K per 100 g is 391.0 mg/kg (reference row SN-121)", async () => {
    const read = await soil(
      "sampled on;bed;depth cm;K ammonium acetate meq/100 g\n2026-03-14;North tunnel;15;1,0\n",
    );
    expect(read.accepted[0]?.row.values).toEqual([
      {
        nutrient: "K",
        extractant: "ammonium-acetate",
        mgPerKg: expect.closeTo(391.0, 1),
        reported: { value: 1, unit: "meq/100 g" },
      },
    ]);
  });
});

describe("a station's file", () => {
  test("names in any of the usual spellings, units converted: 68 F is 20 C, 0.5 in is 12.7 mm, 10 mph is 4.4704 m/s", async () => {
    const read = await weather(
      "Date,Max Temp (°F),Min Temp (°F),Rain (in),Wind mph\n2026-05-01,68,50,0.5,10\n",
    );
    expect(read.questions).toEqual([]);
    const row = read.accepted[0]?.row;
    expect(row?.date).toBe("2026-05-01");
    expect(row?.tMaxC).toBeCloseTo(20, 12);
    expect(row?.tMinC).toBeCloseTo(10, 12);
    expect(row?.rainMm).toBeCloseTo(12.7, 12);
    expect(row?.windMPerS).toBeCloseTo(4.4704, 12);
  });

  test("our own field names are understood with their units", async () => {
    const read = await weather(
      "date,tMaxC,tMinC,rainMm,rhMeanPct,windMPerS,rsMjPerM2Day\n2026-05-01,20,10,0,70,2,18\n",
    );
    expect(read.questions).toEqual([]);
    expect(read.accepted[0]?.row).toEqual({
      date: "2026-05-01",
      tMaxC: 20,
      tMinC: 10,
      rainMm: 0,
      rhMeanPct: 70,
      windMPerS: 2,
      rsMjPerM2Day: 18,
    });
  });

  test("temp_max without a unit is asked", async () => {
    const read = await weather("date,precipitation,temp_max,temp_min,wind\n2012-01-01,0.0,12.8,5.0,4.7\n");
    expect(read.questions.map((q) => q.header)).toEqual(["precipitation", "temp_max", "temp_min", "wind"]);
  });

  test("an empty cell is missing, not zero", async () => {
    const { accepted } = await weather("date,tMaxC,rainMm\n2026-05-01,20,\n");
    expect(accepted[0]?.row).toEqual({
      date: "2026-05-01",
      tMaxC: 20,
    });
  });

  test("a maximum below the minimum is refused with the line", async () => {
    const read = await weather("date,tMaxC,tMinC\n2026-05-01,5,9\n");
    expect(read.refused).toEqual([
      { line: 2, column: "tMaxC", reason: "tMaxC must not be below tMinC (read as °C)", value: "5" },
    ]);
  });

  test("Fahrenheit that claims Celsius is asked again", async () => {
    const days = Array.from(
      { length: 28 },
      (_, i) => `2026-06-${String(i + 1).padStart(2, "0")},${48 + (i % 5)}`,
    );
    const read = await weather(`date,tmax °C\n${days.join("\n")}\n`);
    expect(read.accepted).toEqual([]);
    expect(read.questions[0]?.ask).toBe(
      'Half the days of "tmax °C" would be hotter than 50 °C. In what unit is it?',
    );
  });

  test("line numbers hold across blank lines and quoted line breaks", async () => {
    const read = await weather('date,tMaxC,remark\n\n2026-05-01,20,"two\nlines"\n2026-05-02,x,\n');
    expect(read.refused).toEqual([{ line: 5, column: "tMaxC", reason: '"x" is not a number', value: "x" }]);
  });

  test("nothing but a header is refused in one sentence", async () => {
    expect(() => readCsv("date,tMaxC\n")).toThrow(
      "The file needs a header line and at least one row below it.",
    );
  });
});

describe("what a laboratory's number is in mg/kg", () => {
  const head = "sampled on,bed,depth cm,Mehlich-3 ";
  const read = async (column: string, depthCm: number, value: number, says: Partial<Column> = {}) => {
    const header = `Mehlich-3 ${column}`;
    const csv = `${head}${column}\n2026-03-14,North tunnel,${depthCm},${value}\n`;
    const { columns } = await soil(csv);
    const said = columns.map((c) => (c.header === header ? { ...c, ...says } : c));
    const { accepted, questions, refused } = await soil(csv, {}, said);
    expect([questions, refused]).toEqual([[], []]);
    return (accepted[0]?.row.values as { mgPerKg: number; reported?: object }[] | undefined)?.[0];
  };
  const dense = (gPerCm3: number) => ({
    basis: "depth-and-density" as const,
    densityKgPerM3: gPerCm3 * 1000,
  });

  test.each<[string, string, number, number, Partial<Column>, number, number]>([
    ["SN-102: P2O5 holds 0.4364 of P", "P2O5 ppm", 15, 100, {}, 43.64, 0.02],
    ["SN-104: K2O holds 0.8302 of K", "K2O ppm", 15, 100, {}, 83.02, 0.02],
    ["SN-120: 100 ppm NO3 is 22.59 ppm NO3-N", "nitrate ppm", 15, 100, { form: "NO3" }, 22.59, 0.023],
    ["SN-115: 200 lb/A of 6 in are 100 ppm", "K lb/acre", 15.24, 200, {}, 100, 0],
    ["SN-115: 200 lb/A of 7 in are 100 ppm", "K lb/acre", 17.78, 200, {}, 100, 0],
    ["SN-115: double for each 6 in", "K lb/A", 30.48, 400, { basis: "slice-per-6-in" }, 100, 1e-9],
    ["SN-115: the slice whatever the depth", "K lb/A", 30.48, 200, { basis: "plough-slice" }, 100, 0],
    ["SN-110, SN-115: the slice in kg/ha", "K kg/ha", 15, 224.17, { basis: "plough-slice" }, 100, 0.01],
    ["SN-117: 6 in at 1.33 g/cm3", "K lb/A", 15.24, 180.8, dense(1.33), 100, 0.1],
    ["SN-117: 12 in at 1.33 g/cm3", "K lb/A", 30.48, 361.7, dense(1.33), 100, 0.1],
    ["SN-118: 15 cm at 1.3 g/cm3", "K kg/ha", 15, 195, dense(1.3), 100, 0.1],
    ["SN-121: Ca", "Ca meq/100 g", 15, 1, {}, 200.4, 0.2],
    ["SN-121: Mg", "Mg cmol/kg", 15, 1, {}, 121.5, 0.12],
    ["SN-121: Na", "Na meq/100g", 15, 1, {}, 229.9, 0.23],
    ["one percent is 10,000 mg/kg", "Fe %", 15, 0.5, {}, 5000, 1e-9],
  ])("%s", async (_, column, depthCm, value, says, mgPerKg, tolerance) => {
    const got = await read(column, depthCm, value, says);
    expect(Math.abs((got?.mgPerKg ?? Number.NaN) - mgPerKg)).toBeLessThanOrEqual(tolerance);
  });

  test("what was printed is kept beside it, with its unit and form; a ppm is its own mg/kg", async () => {
    expect((await read("P2O5 lb/acre", 15.24, 120))?.reported).toEqual({ value: 120, unit: "lb/acre P2O5" });
    expect((await read("K %", 15, 0.02, { unit: "%" }))?.reported).toEqual({ value: 0.02, unit: "%" });
    expect((await read("K ppm", 15, 120))?.reported).toBeUndefined();
  });

  test("SN-125: a base saturation is read with the row's exchange capacity, and refused without", async () => {
    const csv =
      "sampled on,bed,depth cm,sample,CEC meq/100 g,K sat % (Mehlich-3)\n" +
      `2026-03-14,North tunnel,15,A,10.14,${(100 * 0.969) / 10.14}\n` +
      "2026-03-14,North tunnel,15,B,,9\n";
    const { accepted, refused } = await soil(csv);
    const k = (accepted[0]?.row.values as { mgPerKg: number }[] | undefined)?.[0];
    // Inputs of the row: K 379 ppm; its tolerance is 0.5 %.
    expect(Math.abs((k?.mgPerKg ?? 0) - 379)).toBeLessThanOrEqual(379 * 0.005);
    expect(refused).toEqual([
      {
        line: 3,
        column: "K sat % (Mehlich-3)",
        reason: "K is a share of exchange capacity, and the row states no exchange capacity",
        value: "9",
      },
    ]);
  });
});

describe("what is ambiguous is asked", () => {
  const asked = async (header: string, depthCm = 15, now?: Column[]) => {
    const { questions } = await soil(
      `sampled on,bed,depth cm,pH,${header}\n2026-03-14,North tunnel,${depthCm},6.4,5\n`,
      {},
      now,
    );
    return questions.map((q) => [q.about, ...q.choices]);
  };
  const methods = expect.arrayContaining(["mehlich-1", "mehlich-3", "olsen", "bray-1", "modified-morgan"]);

  test.each<[string, (string | object)[][]]>([
    ["Nitrate ppm, KCl", [["form", "NO3-N", "NO3", "leave-out"]]],
    ["NO3-N ppm, KCl", []],
    ["Olsen phosphate ppm", [["form", "P", "P2O5", "PO4", "leave-out"]]],
    ["Olsen P2O5 ppm", []],
    ["M3 potash ppm", [["form", "K", "K2O", "leave-out"]]],
    ["M3 K %", [["unit", "%", "% of CEC", "leave-out"]]],
    ["Bray-1 P mg/kg", []],
    ["DTPA Zn ppm", []],
  ])("%s", async (header, questions) => {
    expect(await asked(`"${header}"`)).toEqual(questions);
  });

  test.each(["Bray-2 P ppm", "Bray P-2 P ppm", "Morgan P ppm", "Mehlich P ppm"])(
    "%s is by none of the methods known, or by one of two: which is asked",
    async (header) => {
      const [question, ...more] = await asked(header);
      expect([question?.[0], more]).toEqual(["extractant", []]);
      expect(question?.slice(1)).toEqual(methods);
    },
  );

  test("pounds an acre of another depth than 6 to 7 in, and kg/ha at any: by which mass of soil", async () => {
    const bases = ["plough-slice", "slice-per-6-in", "depth-and-density"];
    expect(await asked("M3 K lb/acre", 15)).toEqual([]);
    expect(await asked("M3 K lb/acre", 20)).toEqual([["basis", ...bases]]);
    expect(await asked("M3 K kg/ha", 15)).toEqual([["basis", ...bases]]);
    const header = "M3 K lb/acre";
    const column = { header, field: "K", unit: "lb/acre", extractant: "mehlich-3" };
    expect(await asked(header, 20, [{ ...column, basis: "depth-and-density" }])).toEqual([["density"]]);
    // What holds of 6 to 7 in is not carried over to another depth.
    expect(await asked(header, 20, [{ ...column, basis: "usual-slice" }])).toEqual([["basis", ...bases]]);
  });

  test("one question about the mass of soil holds for every column it concerns", async () => {
    const { questions } = await soil(
      "sampled on,bed,depth in,M3 P lb/A,M3 K lb/A,pH\n2026-03-14,North tunnel,8,50,200,6.4\n",
    );
    expect(questions.map((q) => q.headers)).toEqual([["M3 P lb/A", "M3 K lb/A"]]);
  });

  test("the same nutrient by two extractants is two results; by one, which column to read is asked", async () => {
    const two = await soil(
      "sampled on,bed,depth cm,Bray-1 P ppm,Olsen P ppm\n2026-03-14,North tunnel,15,30,12\n",
    );
    expect(two.accepted[0]?.row.values).toEqual([
      { nutrient: "P", extractant: "bray-1", mgPerKg: 30 },
      { nutrient: "P", extractant: "olsen", mgPerKg: 12 },
    ]);
    const csv = "sampled on,bed,depth cm,M3 K ppm,M3 K lb/A\n2026-03-14,North tunnel,15,100,200\n";
    const { questions, columns } = await soil(csv);
    expect(questions.map((q) => [q.about, q.choices])).toEqual([["field", ["M3 K ppm", "M3 K lb/A"]]]);
    const said = columns.map((c) => (c.header === "M3 K lb/A" ? { ...c, field: null } : c));
    const one = await soil(csv, {}, said);
    expect(one.accepted[0]?.row.values).toEqual([{ nutrient: "K", extractant: "mehlich-3", mgPerKg: 100 }]);
  });

  test("a base saturation beside the content is that content printed again, and left out", async () => {
    const { columns, questions } = await soil(
      "sampled on,bed,depth cm,M3 K ppm,K %,Ca % sat\n2026-03-14,North tunnel,15,100,4,60\n",
    );
    expect(columns.map((c) => [c.header, c.field]).slice(3)).toEqual([
      ["M3 K ppm", "K"],
      ["K %", null],
      ["Ca % sat", "Ca"],
    ]);
    expect(questions.map((q) => [q.header, q.about])).toEqual([["Ca % sat", "extractant"]]);
  });

  test("answered with `leave-out`, a column is not read", async () => {
    const csv = "sampled on,bed,depth cm,pH,phosphate\n2026-03-14,North tunnel,15,6.4,5\n";
    const { columns } = await soil(csv);
    const said = columns.map((c) => (c.header === "phosphate" ? { ...c, form: "leave-out" } : c));
    const { questions, accepted } = await soil(csv, {}, said);
    expect([questions, accepted[0]?.row.values]).toEqual([[], []]);
  });
});

describe("depth, fizz and samples", () => {
  test("a layer from the surface is as deep as it ends; one that begins below is refused", async () => {
    const { accepted, refused } = await soil(
      "sampled on,bed,depth (in),sample,pH\n" +
        "2026-03-14,North tunnel,0-6,A,6.4\n2026-03-14,North tunnel,6 in,B,6.4\n" +
        "2026-03-14,North tunnel,6-12,C,6.4\n2026-03-14,North tunnel,15 cm,D,6.4\n",
    );
    expect(accepted.map((a) => a.row.depthCm)).toEqual([15.24, 15.24]);
    expect(refused.map((r) => [r.line, r.column, r.value, r.reason])).toEqual([
      [4, "depth (in)", "6-12", '"6-12" does not begin at the surface'],
      [5, "depth (in)", "15 cm", '"15 cm" is not a number'],
    ]);
  });

  test("whether it fizzes is read from its words, and refused where they say neither", async () => {
    const { accepted, refused } = await soil(
      "sampled on,bed,depth cm,sample,pH,Fizz test\n" +
        ["Strong", "none", "", "L"]
          .map((fizz, i) => `2026-03-14,North tunnel,15,${i},7.8,${fizz}\n`)
          .join(""),
    );
    expect(accepted.map((a) => a.row.freeLime)).toEqual([true, false, undefined]);
    expect(refused.map((r) => [r.line, r.column, r.value])).toEqual([[5, "Fizz test", "L"]]);
  });

  test("the same sample twice with the same values is told, not refused", async () => {
    const { accepted, refused, repeated } = await soil(
      "sampled on,bed,depth cm,sample,pH,M3 K ppm\n" +
        "2026-03-14,North tunnel,15,A,6.4,120\n2026-03-14,North tunnel,15,A,6.40,120.0\n" +
        "2026-03-14,North tunnel,15,A,6.4,130\n2026-03-14,North tunnel,20,A,6.4,130\n",
    );
    expect(accepted.map((a) => a.line)).toEqual([2, 5]);
    expect(repeated).toEqual([{ line: 3, sameAs: 2 }]);
    expect(refused.map((r) => [r.line, r.reason])).toEqual([
      [4, "The same sample stands on line 2 with other values: K (mehlich-3) 120 on line 2, 130 here"],
    ]);
  });

  test("a value outside its bounds names its column and what stood there", async () => {
    const { refused } = await soil(
      "sampled on,bed,depth cm,pH,M3 K ppm\n2026-03-14,North tunnel,15,6.4,-5\n",
    );
    expect(refused).toEqual([
      { line: 2, column: "M3 K ppm", reason: "K in mg/kg must be at least 0", value: "-5" },
    ]);
  });
});

describe("a laboratory remembered", () => {
  const before: Column[] = [
    { header: "P", field: "P", unit: "ppm", extractant: "olsen", form: "P" },
    { header: "Sampled", field: "sampledOn", unit: "DD/MM/YYYY", extractant: null },
  ];

  test("what was said stands; what is said now stands above it", async () => {
    const csv = "Sampled,bed,depth cm,P\n04/05/2026,North tunnel,15,52\n";
    const first = await soil(csv, {}, undefined, before);
    expect(first.questions).toEqual([]);
    expect(first.accepted[0]?.row).toMatchObject({
      sampledOn: "2026-05-04",
      values: [{ nutrient: "P", extractant: "olsen", mgPerKg: 52 }],
    });
    const now = [{ header: "P", field: "P", unit: "ppm", extractant: "bray-1" }];
    const second = await soil(csv, {}, now, before);
    expect(second.accepted[0]?.row.values).toEqual([{ nutrient: "P", extractant: "bray-1", mgPerKg: 52 }]);
  });

  test("dates that leave no doubt are read by themselves, whatever the last file's were", async () => {
    const csv = "Sampled,bed,depth cm,P\n04/25/2026,North tunnel,15,52\n";
    const { accepted } = await soil(csv, {}, undefined, before);
    expect(accepted[0]?.row.sampledOn).toBe("2026-04-25");
  });
});
