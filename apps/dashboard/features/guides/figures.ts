/** A guide's number as printed: with as many decimals as its table has, where that is known. */
export const figures = (value: number, decimals?: number): string =>
  new Intl.NumberFormat("en", {
    minimumFractionDigits: decimals ?? 0,
    maximumFractionDigits: decimals ?? 4,
  }).format(value);

const FORMS: Record<string, string> = { P2O5: "P₂O₅", K2O: "K₂O" };

/** A form of a nutrient as it is written. */
export const formName = (form: string): string => FORMS[form] ?? form;
