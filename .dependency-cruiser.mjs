/** Which way imports run. See DEVELOPERS.md. */
const only = (name, from, allowed) => ({
  name,
  severity: "error",
  from: { path: from },
  to: { path: "^(apps|packages|infra|tests)/", pathNot: [from, ...allowed] },
});

export default {
  forbidden: [
    only("rules-imports-nothing-of-ours", "^packages/rules/", []),
    only("contract-may-import-rules", "^packages/contract/", ["^packages/rules/"]),
    only("db-imports-nothing-of-ours", "^packages/db/", []),
    only("services-import-rules-contract-db", "^packages/services/", ["^packages/(rules|contract|db)/"]),
    only("dashboard-speaks-to-the-api-alone", "^apps/dashboard/", ["^packages/(rules|contract)/"]),
    only("api-imports-services-and-contract", "^apps/api/src/(?!entry)", [
      "^apps/api/",
      "^packages/(services|contract)/",
    ]),
    only("api-entries-may-open-the-database", "^apps/api/src/entry", [
      "^apps/api/",
      "^packages/(services|contract|db)/",
    ]),
    {
      name: "nothing-imports-an-app",
      severity: "error",
      from: { path: "^(packages|infra)/" },
      to: { path: "^apps/" },
    },
    {
      name: "rules-does-no-io",
      severity: "error",
      from: { path: "^packages/rules/" },
      to: { dependencyTypes: ["core"] },
    },
    {
      name: "no-circles",
      severity: "error",
      from: {},
      to: { circular: true, dependencyTypesNot: ["type-only"] },
    },
  ],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    doNotFollow: { path: "node_modules" },
    exclude: { path: "(^|/)(node_modules|\\.next|dist)/" },
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["import", "require", "node", "default"],
    },
  },
};
