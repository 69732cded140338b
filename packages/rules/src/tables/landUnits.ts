/** Kilograms per hectare in one pound per acre: 0.45359237 kg over 0.40468564224 ha, international definitions. */
export const KG_PER_HA_PER_LB_PER_ACRE = 0.45359237 / 0.40468564224;

/** Square feet in an acre, by definition. */
export const SQUARE_FEET_PER_ACRE = 43_560;

/** Kilograms per hectare in one short ton per acre. */
export const KG_PER_HA_PER_TON_PER_ACRE = 2000 * KG_PER_HA_PER_LB_PER_ACRE;

/** Centimetres in an inch, by definition. */
export const CM_PER_INCH = 2.54;
