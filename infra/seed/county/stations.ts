/** Stations of the county; one of them is too young for its tails. */
export const STATIONS = {
  "ALD-01": { seed: 11, years: 24, offsetC: 0 },
  "ALD-02": { seed: 23, years: 12, offsetC: -0.8 },
  "ALD-03": { seed: 37, years: 4, offsetC: 0.6 },
} as const;
