import { execFile } from "node:child_process";
import { existsSync } from "node:fs";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { promisify } from "node:util";
import { describe, expect, test } from "vitest";

const REPOSITORY = resolve(import.meta.dirname, "../..");
/** NOAA GHCN-Daily (Menne et al. 2012), one station since 1938. It lies beside the repository and need not be there. */
const SERIES = "../shared/data/daily-USW00014839.csv";
const COMMAND = "infra/cli/hindcast.ts";
const STARTED_MS = 60_000;

interface Ran {
  code: number;
  stdout: string;
  stderr: string;
}

/** Runs the command as `npm run hindcast` does. */
async function hindcast(...args: string[]): Promise<Ran> {
  try {
    const run = promisify(execFile)(process.execPath, ["infra/run.mjs", COMMAND, ...args], {
      cwd: REPOSITORY,
    });
    return { code: 0, ...(await run) };
  } catch (error) {
    const { code, stdout, stderr } = error as { code: number; stdout: string; stderr: string };
    return { code, stdout, stderr };
  }
}

/** What the check says of a series: its scores, or that there is none. */
async function checkOn(series: string): Promise<string> {
  if (!existsSync(resolve(REPOSITORY, series))) return "not run: no long series";
  const { code, stdout, stderr } = await hindcast(series);
  return code === 0 ? stdout : stderr;
}

const numbers = (text: string, pattern: RegExp): number[] =>
  [...text.matchAll(pattern)].map((match) => Number(match[1]));

describe("the climatology of set-out on the long series", () => {
  test(
    "beats the flat base rate in dose and frost by more than two standard errors, over 80 years or more",
    async () => {
      const said = await checkOn(SERIES);
      process.stdout.write(`${said}\n`);
      if (!existsSync(resolve(REPOSITORY, SERIES))) {
        expect(said).toBe("not run: no long series");
        return;
      }
      const skills = numbers(said, /^Brier skill score (-?\d\.\d+) against/gm);
      const errors = numbers(said, /standard error (\d\.\d+)/g);
      const springs = numbers(said, /^(\d+) springs/gm);
      expect(skills).toHaveLength(4);
      expect(springs[0]).toBeGreaterThanOrEqual(80);
      skills.forEach((skill, i) => {
        expect(skill - 2 * (errors[i] as number)).toBeGreaterThan(0);
      });
    },
    STARTED_MS,
  );
  test("says so where there is no series", async () => {
    expect(await checkOn("../shared/data/no-such-series.csv")).toBe("not run: no long series");
  });
});

describe("npm run hindcast on what it cannot use: one sentence, exit 2", () => {
  test.each([
    [
      "a value that is no number names its line and column",
      "2001-01-01,5,1,0\n2001-01-02,5,cold,0\n",
      /^The series cannot be used: line 3, column tMinC: "cold" is not a number.*\.\n$/,
    ],
    [
      "a station that nobody places: its latitude is asked for and never assumed",
      "2001-01-01,5,1,0\n2001-01-02,5,2,0\n",
      /^--latitude is missing: .* series\.csv .* give 20 to 65 degrees north\.\n$/,
    ],
  ])(
    "%s",
    async (_, days, sentence) => {
      const folder = await mkdtemp(join(tmpdir(), "hindcast-"));
      try {
        const path = join(folder, "series.csv");
        await writeFile(path, `date,tMaxC,tMinC,rainMm\n${days}`);
        const { code, stdout, stderr } = await hindcast(path);
        expect(code).toBe(2);
        expect(stdout).toBe("");
        expect(stderr).toMatch(sentence);
      } finally {
        await rm(folder, { recursive: true });
      }
    },
    STARTED_MS,
  );
  test.each([
    ["no file", [], /^Usage: /],
    [
      "a file that is not there",
      ["no-such-series.csv"],
      /^The file no-such-series.csv cannot be read: ENOENT/,
    ],
    ["a latitude without spring in May", ["x.csv", "--latitude", "-33"], /latitude/],
  ] as const)(
    "%s",
    async (_, args, sentence) => {
      const { code, stderr } = await hindcast(...args);
      expect(code).toBe(2);
      expect(stderr).toMatch(sentence);
      expect(stderr.trimEnd().split("\n")).toHaveLength(1);
    },
    STARTED_MS,
  );
});
