import { z } from "zod";
import { refuse } from "../../core/errors.ts";
import { num, word } from "../../core/fields.ts";
import { defineQuantity } from "../../core/quantity.ts";
import {
  ATOMIC_WEIGHT,
  type Element,
  NUTRIENT_FORM_NAMES,
  NUTRIENT_FORMS,
  type NutrientForm,
} from "../../tables/nutrients.ts";

const SOURCE = { key: "iupac-atomic-weights" };

const composition = (form: NutrientForm) => Object.entries(NUTRIENT_FORMS[form]) as [Element, number][];

/** Molar mass of a form [g/mol]. */
const molarMass = (form: NutrientForm): number =>
  composition(form).reduce((sum, [element, count]) => sum + count * ATOMIC_WEIGHT[element], 0);

/** Oxygen and hydrogen are in too many forms to say that one form can stand for another. */
const carriers = (form: NutrientForm) => composition(form).filter(([e]) => e !== "O" && e !== "H");

/**
 * Mass of one nutrient form that holds as much of their shared element as a mass of another.
 *
 *   factor = (n_from / M_from) / (n_to / M_to)
 *
 * MgCO3 and CaCO3 share carbonate, so their factor is that of equal neutralising value.
 * Source: atomic weights. Printed factors of 1.2051 and 1.205 for K to K2O (SN-105, SN-106) are 0.04 % above it.
 *
 * @throws DomainError naming `to` where the two share no element
 */
export function convertNutrient(
  from: NutrientForm,
  to: NutrientForm,
  amount: number,
): { amount: number; factor: number } {
  const inTo = new Map(carriers(to));
  const shared = carriers(from).find(([element]) => inTo.has(element));
  if (!shared) {
    const accepted = NUTRIENT_FORM_NAMES.filter((name) =>
      carriers(name).some(([e]) => carriers(from).some(([f]) => f === e)),
    );
    refuse("to", `shares no element with ${from}`, accepted.join(", "), to);
  }
  const [element, inFrom] = shared;
  const perTo = inTo.get(element) ?? 0;
  const factor = from === to ? 1 : (inFrom * molarMass(to)) / (perTo * molarMass(from));
  return { amount: amount * factor, factor };
}

export const nutrientForm = defineQuantity({
  id: "nutrient-form",
  question: "How much is that in another form of the nutrient?",
  schema: z.strictObject({
    from: word("form the amount is in", NUTRIENT_FORM_NAMES),
    to: word("form it is wanted in", NUTRIENT_FORM_NAMES),
    amount: num("amount, in any unit of mass, content or rate", "as given", 0, 1e12),
  }),
  outputs: {
    amount: { meaning: "amount in the wanted form", unit: "as given" },
    factor: { meaning: "mass of the wanted form in one of the given", unit: "1" },
  },
  sources: [SOURCE],
  compute({ from, to, amount }, w) {
    const mFrom = w.line(
      "M1",
      `molar mass of ${from}`,
      "M = sum of atomic weights",
      molarMass(from),
      "g/mol",
      SOURCE,
    );
    const mTo = w.line(
      "M2",
      `molar mass of ${to}`,
      "M = sum of atomic weights",
      molarMass(to),
      "g/mol",
      SOURCE,
    );
    const result = convertNutrient(from, to, amount);
    w.line(
      "f",
      `${to} that holds as much of the shared element as one part of ${from}`,
      `f = (n1 / M1) / (n2 / M2), M1 = ${mFrom}, M2 = ${mTo}`,
      result.factor,
      "1",
      SOURCE,
    );
    w.line("m", `amount as ${to}`, `m = f x ${amount}`, result.amount, "as given", SOURCE);
    return result;
  },
});
