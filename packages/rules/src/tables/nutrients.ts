/**
 * Standard atomic weights, abridged to five figures [g/mol].
 *
 * Source: IUPAC Commission on Isotopic Abundances and Atomic Weights, 2021 (Prohaska et al. 2022, Pure Appl. Chem.
 * 94:573). Read from memory of that table; the factors that follow agree with printed ones (SN-101 to SN-107).
 */
export const ATOMIC_WEIGHT = {
  H: 1.008,
  C: 12.011,
  N: 14.007,
  O: 15.999,
  Na: 22.99,
  Mg: 24.305,
  P: 30.974,
  S: 32.06,
  Cl: 35.45,
  K: 39.098,
  Ca: 40.078,
} as const;
export type Element = keyof typeof ATOMIC_WEIGHT;

/** What a nutrient form is made of. `NO3-N` is the nitrogen in nitrate, so it counts as nitrogen alone. */
export const NUTRIENT_FORMS = {
  N: { N: 1 },
  NO3: { N: 1, O: 3 },
  "NO3-N": { N: 1 },
  NH4: { N: 1, H: 4 },
  "NH4-N": { N: 1 },
  P: { P: 1 },
  P2O5: { P: 2, O: 5 },
  PO4: { P: 1, O: 4 },
  K: { K: 1 },
  K2O: { K: 2, O: 1 },
  KCl: { K: 1, Cl: 1 },
  K2SO4: { K: 2, S: 1, O: 4 },
  Ca: { Ca: 1 },
  CaO: { Ca: 1, O: 1 },
  CaCO3: { Ca: 1, C: 1, O: 3 },
  Mg: { Mg: 1 },
  MgO: { Mg: 1, O: 1 },
  MgCO3: { Mg: 1, C: 1, O: 3 },
  S: { S: 1 },
  SO3: { S: 1, O: 3 },
  SO4: { S: 1, O: 4 },
  Na: { Na: 1 },
  Na2O: { Na: 2, O: 1 },
} as const satisfies Record<string, Partial<Record<Element, number>>>;
export type NutrientForm = keyof typeof NUTRIENT_FORMS;

/** The names, in the order above, as a schema wants them. */
export const NUTRIENT_FORM_NAMES = Object.keys(NUTRIENT_FORMS) as [NutrientForm, ...NutrientForm[]];

/** Charges of the exchangeable cations that a soil test counts. */
export const CATION_CHARGE = { Ca: 2, Mg: 2, K: 1, Na: 1 } as const;
export type Cation = keyof typeof CATION_CHARGE;
