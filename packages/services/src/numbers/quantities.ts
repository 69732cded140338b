import { listInputs, type QuantityAnswer, quantities } from "@pith/rules";
import { ServiceError } from "../errors.ts";

/** Every quantity, as anyone who wants to check a number finds it. */
export function listQuantities() {
  return {
    quantities: Object.values(quantities).map((q) => ({
      id: q.id,
      question: q.question,
      inputs: listInputs(q),
      outputs: Object.entries(q.outputs).map(([name, o]) => ({ name, meaning: o.meaning, unit: o.unit })),
      sources: q.sources,
    })),
  };
}

/** One quantity with its working. DomainError for input outside its range. */
export function computeQuantity(id: string, input: unknown): QuantityAnswer<Record<string, unknown>> {
  const quantity = Object.hasOwn(quantities, id) ? quantities[id] : undefined;
  if (!quantity) throw new ServiceError("not-found", `There is no quantity "${id}".`);
  return quantity.compute(input) as QuantityAnswer<Record<string, unknown>>;
}
