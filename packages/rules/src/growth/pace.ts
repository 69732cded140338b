/**
 * A planting's pace: the heat it takes to each stage as a share of the table's. 1 is the table's own, 0.9 a tenth earlier.
 */
export interface Pace {
  mean: number;
  sd: number;
}

/** One look at the pace: a share of the table's heat, and how far one such look strays. */
export interface PaceSeen {
  share: number;
  sd: number;
}

/**
 * The pace after a look at it, both normal with known spread:
 *
 *   1 / s'² = 1 / s² + 1 / s_y²,   m' = s'² (m / s² + y / s_y²)
 *
 * Looks count as independent of one another. Source: conjugate normal mean, Gelman et al., Bayesian Data Analysis, sec. 2.5
 * (from memory).
 */
export function updatePace(pace: Pace, seen: PaceSeen): Pace {
  const before = 1 / pace.sd ** 2;
  const look = 1 / seen.sd ** 2;
  return {
    mean: (pace.mean * before + seen.share * look) / (before + look),
    sd: 1 / Math.sqrt(before + look),
  };
}
