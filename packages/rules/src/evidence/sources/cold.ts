import type { Source } from "../types.ts";

export const coldSources: Source[] = [
  {
    id: "brunt-1941",
    cite: "Brunt, D. (1941). Physical and dynamical meteorology, 2nd ed. Cambridge University Press: fall of the ground's temperature on a clear night. Recalled, not re-read; the same equation is the solution for a steady flux out of a half-space (Carslaw and Jaeger 1959).",
    kind: "handbook",
    year: 1941,
    status: "memory",
  },
  {
    id: "soil-thermal-textbooks",
    cite: "Textbook tables of soils' heat capacity and conductivity (sandy soil dry 1.28 MJ/(m3 K) and 0.3 W/(m K), saturated 2.96 and 2.2; clay 1.42 and 0.25, 3.10 and 1.58). Recalled, not re-read.",
    kind: "handbook",
    status: "memory",
  },
  {
    id: "pepper-fruit-storage",
    cite: "Storage of pepper fruit: not below 7 C, band 7-13 C. Gonzalez-Aguilar 2004 as quoted, and a European page on fresh produce.",
    kind: "handbook",
    year: 2004,
    status: "seen",
  },
];
