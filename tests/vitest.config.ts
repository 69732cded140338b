import { defineConfig } from "vitest/config";

/** Property tests draw the same cases in every run, so that a red run can be had again. */
const setupFiles = [`${import.meta.dirname}/support/seed.ts`];

/** One project for what needs nothing, one for what needs the database, one for what needs the browser. */
export default defineConfig({
  test: {
    // Two at least, also where there are only two cores: most of a service's test is waiting for the database.
    maxWorkers: 2,
    projects: [
      {
        test: {
          name: "rules",
          setupFiles,
          root: import.meta.dirname,
          // Pure: nothing that one file does can be seen by another, and reading all of the rules takes longer than most.
          isolate: false,
          testTimeout: 30_000,
          include: ["reference", "rules", "words"].map((room) => `${room}/**/*.test.ts`),
          benchmark: { include: ["bench/rules/**/*.bench.ts"] },
        },
      },
      {
        test: {
          name: "service",
          setupFiles,
          root: import.meta.dirname,
          // Each file has a database of its own; reading the service anew for each took longer than most of them.
          isolate: false,
          include: ["api", "tenancy", "ledger", "faults", "weather"].map((room) => `${room}/**/*.test.ts`),
          benchmark: { include: ["bench/service/**/*.bench.ts"] },
          globalSetup: [`${import.meta.dirname}/support/postgres.ts`],
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
      {
        test: {
          name: "browser",
          root: import.meta.dirname,
          include: ["browser/**/*.test.ts"],
          benchmark: { include: ["bench/browser/**/*.bench.ts"] },
          globalSetup: [`${import.meta.dirname}/support/stack.ts`],
          // A form that goes to the service and back may take seconds where all else runs beside it.
          expect: { poll: { timeout: 20_000 } },
          testTimeout: 120_000,
          hookTimeout: 300_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
