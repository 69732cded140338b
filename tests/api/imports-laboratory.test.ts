import { type Column, type Import, importRoutes } from "@pith/contract";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { readCsv } from "../../packages/services/src/imports/csv.ts";
import { type Furnished, furnish } from "./furnish.ts";
import { allLines, linesOf } from "./lines.ts";
import { type Api, startApi } from "./support.ts";

/** A laboratory's files: its columns are said once, five thousand rows are read and stored with an exact account. */

let api: Api;
let here: Furnished;
let files: string;
beforeAll(async () => {
  api = await startApi();
  here = await furnish(api);
  files = `/v1/offices/${here.officeId}/farms/${here.farmId}/imports`;
});
afterAll(() => api?.close());

const body = (csv: string, more: { labName?: string; columns?: Column[]; depthCm?: number } = {}) => ({
  kind: "soil-tests" as const,
  fileName: "laboratory.csv",
  csv,
  ...more,
});
const read = (csv: string, more?: Parameters<typeof body>[1]) =>
  api.client(api.agent).call(importRoutes.previewImport, {
    params: { officeId: here.officeId, farmId: here.farmId },
    json: body(csv, more),
  });
const save = async (id: string) =>
  (await api.as(api.agent).post(`${files}/${id}/save`).expect(200)).body as Import;
const labs = async (who = api.agent) =>
  (await api.as(who).get(`/v1/offices/${here.officeId}/lab-mappings`).expect(200)).body.labs as {
    lab: string;
    columns: Column[];
  }[];
const storedTests = async (sampleRef: string) =>
  (
    await api.admin<{ result: { values: object[]; freeLime?: boolean } }[]>`
      select result from soil_tests where sample_ref = ${sampleRef}`
  ).map((row) => row.result);

describe("a laboratory's columns are said once", () => {
  const head = "Sampled,Bed,Depth (in),Sample ID,pH,P,K lb/A,Fizz";
  const answers: Record<string, Partial<Column>> = {
    P: { unit: "ppm", extractant: "olsen" },
    "K lb/A": { extractant: "ammonium-acetate", basis: "slice-per-6-in" },
  };
  const answered = (columns: Column[]) => columns.map((c) => ({ ...c, ...answers[c.header] }));

  test("asked at the first file, remembered when it is saved, read alike at the next", async () => {
    const csv = `${head}\n2026-04-14,North bed,8,A1,6.4,52,320,yes\n`;
    const first = await read(csv, { labName: "Tarn Laboratory" });
    expect(first.questions.map((q) => [q.header, q.about])).toEqual([
      ["P", "unit"],
      ["P", "extractant"],
      ["K lb/A", "extractant"],
    ]);
    expect(first.lab).toEqual({ name: "Tarn Laboratory", readAsBefore: [], rememberedAt: null });
    const second = await read(csv, { labName: "Tarn Laboratory", columns: answered(first.columns) });
    expect(second.questions).toEqual([]);
    expect(await labs()).toEqual([]);
    await save(second.id);
    expect((await labs()).map((l) => l.lab)).toEqual(["tarn laboratory"]);
    // 320 lb/A by 2,000,000 lb for each 6 in, over 8 in: 320 / (2 x 8 / 6) = 120.
    expect(await storedTests("A1")).toEqual([
      {
        waterPh: 6.4,
        freeLime: true,
        values: [
          { nutrient: "P", extractant: "olsen", mgPerKg: 52 },
          {
            nutrient: "K",
            extractant: "ammonium-acetate",
            mgPerKg: expect.closeTo(120, 9),
            reported: { value: 320, unit: "lb/acre" },
          },
        ],
      },
    ]);

    const third = await read(`${head}\n2026-05-02,North bed,8,A2,6.5,40,300,no\n`, {
      labName: "TARN laboratory",
    });
    expect(third.questions).toEqual([]);
    expect(third.lab).toMatchObject({
      readAsBefore: head.split(","),
      rememberedAt: "2026-05-10T12:00:00.000Z",
    });
    expect(third.accepted[0]).toMatchObject({
      labName: "TARN laboratory",
      values: [
        { nutrient: "P", extractant: "olsen", mgPerKg: 40 },
        { nutrient: "K", mgPerKg: expect.closeTo(112.5, 9) },
      ],
    });
  });

  test("a header that is new is asked alone; the file may name the laboratory itself", async () => {
    const csv = `Lab,${head},Zn\nTarn Laboratory,2026-05-03,North bed,8,A3,6.4,52,240,no,1.2\n`;
    const asked = await read(csv);
    expect(asked.questions.map((q) => [q.header, q.about])).toEqual([
      ["Zn", "unit"],
      ["Zn", "extractant"],
    ]);
    expect(asked.lab?.readAsBefore).toEqual(head.split(","));
  });

  test("another laboratory's file, or one of none, is asked about anew", async () => {
    const csv = `${head}\n2026-05-03,North bed,8,A4,6.4,52,240,no\n`;
    for (const labName of ["Other Laboratory", undefined]) {
      expect((await read(csv, { labName })).questions.length).toBe(3);
    }
  });

  test("changed once, it is remembered as changed, and only a file that was saved changes it", async () => {
    const csv = `${head}\n2026-05-04,North bed,8,A5,6.4,52,240,no\n`;
    const as = await read(csv, { labName: "Tarn Laboratory" });
    const columns = as.columns.map((c) => (c.header === "P" ? { ...c, extractant: "bray-1" } : c));
    const changed = await read(csv, { labName: "Tarn Laboratory", columns });
    expect(changed.lab?.readAsBefore).not.toContain("P");
    const extractant = async () => (await labs())[0]?.columns.find((c) => c.header === "P")?.extractant;
    expect(await extractant()).toBe("olsen");
    await save(changed.id);
    expect(await extractant()).toBe("bray-1");
  });

  test("forgotten, it is asked about again; what is not there cannot be forgotten", async () => {
    const one = (lab: string) => `/v1/offices/${here.officeId}/lab-mappings/${encodeURIComponent(lab)}`;
    await api.as(api.agent).delete(one("tarn laboratory")).expect(200);
    expect(await labs()).toEqual([]);
    await api.as(api.agent).delete(one("tarn laboratory")).expect(404);
    const csv = `${head}\n2026-05-05,North bed,8,A6,6.4,52,240,no\n`;
    expect((await read(csv, { labName: "Tarn Laboratory" })).questions.length).toBe(3);
  });
});

describe("the same sample with other values", () => {
  const head = "sampled on,bed,depth cm,sample,pH,M3 K ppm";
  test("is refused with both shown; with the same values it is stored already", async () => {
    await save((await read(`${head}\n2026-03-01,North bed,15,X1,6.4,120\n`)).id);
    const again = await read(
      `${head}\n2026-03-01,North bed,15,X1,6.4,130\n2026-03-01,North bed,15,X2,6.4,130\n`,
    );
    expect(again).toMatchObject({ acceptedCount: 1, refusedCount: 1, duplicateCount: 0 });
    expect(again.refused).toEqual([
      {
        line: 2,
        column: null,
        value: "X1",
        reason: "This sample is stored already with other values: K (mehlich-3) 120 stored, 130 here",
      },
    ]);
    const same = await read(`${head}\n2026-03-01,North bed,15,X1,6.4,120\n`);
    expect(same).toMatchObject({
      acceptedCount: 0,
      duplicateCount: 1,
      duplicates: [{ line: 2, sameAs: null }],
    });
  });

  test("is not dropped where it was stored between reading and saving: the save is refused", async () => {
    const [first, second] = [
      await read(`${head}\n2026-03-02,North bed,15,X3,6.4,120\n`),
      await read(`${head}\n2026-03-02,North bed,15,X3,6.6,120\n2026-03-02,North bed,15,X4,6.6,120\n`),
    ];
    await save(first.id);
    const before = await api.counts();
    const { body: said } = await api.as(api.agent).post(`${files}/${second.id}/save`).expect(409);
    expect(said.detail).toBe(
      "Since the file was read, line 2 was stored by another import. This sample is stored already with other values: pH 6.4 stored, 6.6 here. Read the file again.",
    );
    expect(await api.counts()).toEqual(before);
  });

  test("what was stored in the meantime with the same values is counted where it belongs", async () => {
    const csv = (rows: string[]) => `${head}\n${rows.join("\n")}\n`;
    const rows = ["2026-03-03,North bed,15,X5,6.4,120", "2026-03-03,North bed,15,X6,6.4,120"];
    const [one, both] = [await read(csv(rows.slice(0, 1))), await read(csv(rows))];
    await save(one.id);
    expect(await save(both.id)).toMatchObject({
      acceptedCount: 1,
      duplicateCount: 1,
      duplicates: [{ line: 2, sameAs: null }],
    });
  });
});

describe("five thousand rows", () => {
  const ROWS = 5000;
  const head = "sampled on,bed,depth cm,sample,pH,M3 P ppm,M3 K ppm,M3 Ca ppm,M3 Mg ppm";
  interface Made {
    csv: string;
    refused: number[];
    duplicates: number[];
  }
  /** What each row is: most are good, some are wrong in each of the ways there are. */
  function make(prefix: string): Made {
    const made: Made = { csv: "", refused: [], duplicates: [] };
    const rows: string[] = [];
    const good = (n: number, ph = (5 + (n % 30) / 10).toFixed(1)) =>
      `2026-02-${String(1 + (n % 28)).padStart(2, "0")},North bed,15,${prefix}${n},${ph},${20 + (n % 70)},${90 + (n % 200)},1200,150`;
    for (let n = 0; n < ROWS; n += 1) {
      const line = n + 2;
      if (n % 50 === 7) {
        rows.push(good(n, "19"));
        made.refused.push(line);
      } else if (n % 100 === 13) {
        rows.push(good(n).replace("North bed", "Nobody's bed"));
        made.refused.push(line);
      } else if (n % 250 === 20 && n > 20) {
        rows.push(good(n - 1));
        made.duplicates.push(line);
      } else if (n % 500 === 30 && n > 30) {
        rows.push(good(n - 2, "4.1"));
        made.refused.push(line);
      } else rows.push(good(n));
    }
    made.csv = `${head}\n${rows.join("\n")}\n`;
    return made;
  }
  const growth = async (work: () => Promise<unknown>) => {
    const before = await api.counts();
    await work();
    const after = await api.counts();
    return {
      soil_tests: (after.soil_tests ?? 0) - (before.soil_tests ?? 0),
      audit_log: (after.audit_log ?? 0) - (before.audit_log ?? 0),
      imports: (after.imports ?? 0) - (before.imports ?? 0),
      lab_mappings: (after.lab_mappings ?? 0) - (before.lab_mappings ?? 0),
    };
  };
  const nothing = { soil_tests: 0, audit_log: 0, imports: 0, lab_mappings: 0 };
  /** Nobody works on the farm any more. */
  const untilQuiet = () => api.admin`select id from farms where id = ${here.farmId} for update`;
  const preview = (csv: string) => allLines(api, api.agent, files, body(csv, { labName: "Big Laboratory" }));

  test("are read with progress, each refusal by its line, each repeat by what it repeats", async () => {
    const { csv, refused, duplicates } = make("L");
    const { progress, result, problem } = await preview(csv);
    expect(problem).toBeUndefined();
    expect(result).toMatchObject({
      questions: [],
      acceptedCount: ROWS - refused.length - duplicates.length,
      refusedCount: refused.length,
      duplicateCount: duplicates.length,
    });
    expect([refused.length, duplicates.length]).toEqual([159, 19]);
    expect(result?.refused.map((r) => r.line)).toEqual(refused);
    expect(result?.duplicates).toEqual(duplicates.map((line) => ({ line, sameAs: line - 1 })));
    const read = progress.filter((p) => p.phase === "reading").map((p) => [p.done, p.of]);
    expect(read).toEqual(Array.from({ length: 21 }, (_, i) => [i * 250, ROWS]));

    // The list as a file holds the same lines, with what stood there and why.
    const file = await api.as(api.agent).get(`${files}/${result?.id}/refused.csv`).expect(200);
    expect(file.headers["content-type"]).toBe("text/csv; charset=utf-8");
    const { headers, rows } = readCsv(file.text);
    expect(headers).toEqual(["line", "column", "value", "reason"]);
    expect(rows.map(({ cells }) => Number(cells[0]))).toEqual(refused);
    expect(rows[0]?.cells).toEqual(["9", "pH", "19", "waterPh must be at most 12"]);

    // Stored: all of the accepted in one transaction, told as it goes.
    let saved: Awaited<ReturnType<typeof allLines>> | undefined;
    const grew = await growth(async () => {
      saved = await allLines(api, api.agent, `${files}/${result?.id}/save`);
    });
    const stored = ROWS - refused.length - duplicates.length;
    expect(grew).toEqual({ soil_tests: stored, audit_log: 1, imports: 0, lab_mappings: 1 });
    expect(saved?.result).toMatchObject({ status: "saved", acceptedCount: stored });
    const storing = saved?.progress.filter((p) => p.phase === "storing").map((p) => p.done);
    expect(storing).toEqual([0, 500, 1000, 1500, 2000, 2500, 3000, 3500, 4000, 4500, stored]);
    expect(saved?.progress.at(-1)?.phase).toBe("advising");

    // The same file again: every row of it is stored already, and says so.
    const again = (await preview(csv)).result;
    expect(again).toMatchObject({
      acceptedCount: 0,
      duplicateCount: stored + duplicates.length,
      refusedCount: refused.length,
    });
    expect(again?.refused.map((r) => r.line)).toEqual(refused);
  });

  test("a fault in the middle leaves nothing, is told as a problem, and the file can be saved afterwards", async () => {
    const { csv } = make("F");
    const { result } = await preview(csv);
    await api.admin.unsafe(`
      create function fault() returns trigger language plpgsql as
        $$ begin if new.sample_ref = 'F3000' then raise exception 'the disk is full'; end if; return new; end $$;
      create trigger fault before insert on soil_tests for each row execute function fault()`);
    let failed: Awaited<ReturnType<typeof allLines>> | undefined;
    const grew = await growth(async () => {
      failed = await allLines(api, api.agent, `${files}/${result?.id}/save`);
    });
    await api.admin.unsafe("drop trigger fault on soil_tests; drop function fault()");
    expect(grew).toEqual(nothing);
    expect(failed?.result).toBeUndefined();
    expect(failed?.problem).toEqual({
      type: "/v1/problems/broken",
      title: "Something broke on our side",
      status: 500,
      requestId: expect.any(String),
    });
    expect(failed?.progress.map((p) => p.done)).toContain(2500);
    expect((await growth(() => save(result?.id ?? ""))).soil_tests).toBe(result?.acceptedCount);
  });

  test("whoever hangs up before the end stores nothing", async () => {
    const { csv } = make("H");
    const { result } = await preview(csv);
    await api.admin.unsafe(`
      create function slow() returns trigger language plpgsql as $$ begin perform pg_sleep(0.2); return null; end $$;
      create trigger slow after insert on soil_tests for each statement execute function slow()`);
    const grew = await growth(async () => {
      const stop = new AbortController();
      const lines = linesOf(api, api.agent, `${files}/${result?.id}/save`, undefined, stop.signal);
      await expect(async () => {
        for await (const line of lines) if ("phase" in line && line.done >= 1000) stop.abort();
      }).rejects.toThrow(/abort/i);
      await untilQuiet();
    });
    await api.admin.unsafe("drop trigger slow on soil_tests; drop function slow()");
    expect(grew).toEqual(nothing);
    expect((await api.as(api.agent).get(`${files}/${result?.id}`)).body.status).toBe("staged");
  });

  test("a refusal before the first row comes as a problem document, with its own status", async () => {
    const response = await fetch(`${api.origin}${files}`, {
      method: "POST",
      headers: {
        accept: "application/x-ndjson",
        "content-type": "application/json",
        cookie: api.farmer.cookie,
      },
      body: JSON.stringify({ ...body("a,b\n1,2\n"), fileName: "" }),
    });
    expect(response.status).toBe(422);
    const { problem } = await allLines(api, api.agent, files, body("a\n"));
    expect(problem).toMatchObject({ status: 422, errors: [{ field: "csv" }] });
  });
});
