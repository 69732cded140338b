import { DomainError, listInputs, type Quantity, type QuantityAnswer, quantities } from "@pith/rules";

/**
 * `npm run -s quantity -- <id> '<json>'`: one quantity as JSON, exit 0; a problem document (RFC 9457), exit 2.
 * Without arguments: every id, its question and its inputs.
 */
const [id, text, ...more] = process.argv.slice(2);

if (id === undefined) {
  print(Object.values(quantities).map(listed));
} else {
  try {
    if (more.length > 0) {
      const message = "quote the JSON so that it is one argument";
      throw new DomainError([{ field: "", message, accepted: "<id> '<json>'", received: more }]);
    }
    print(answer(id, text));
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    print({
      type: "about:blank",
      title: "The quantity cannot be computed",
      status: 422,
      detail: error.message,
      errors: error.problems,
    });
    process.exitCode = 2;
  }
}

function listed(quantity: Quantity) {
  return {
    id: quantity.id,
    question: quantity.question,
    inputs: listInputs(quantity),
    outputs: quantity.outputs,
  };
}

function answer(wanted: string, json: string | undefined): QuantityAnswer<Record<string, unknown>> {
  // An own key only: "constructor" is no quantity.
  const quantity = Object.hasOwn(quantities, wanted) ? quantities[wanted] : undefined;
  if (!quantity) {
    const accepted = Object.keys(quantities).join(", ");
    throw new DomainError([{ field: "id", message: "is not a quantity", accepted, received: wanted }]);
  }
  return quantity.compute(inputsFrom(json));
}

function inputsFrom(json: string | undefined): unknown {
  try {
    return JSON.parse(json ?? "");
  } catch {
    const message = json === undefined ? "the inputs are missing" : "the inputs are not JSON";
    throw new DomainError([{ field: "", message, accepted: "one JSON object", received: json }]);
  }
}

function print(value: unknown): void {
  process.stdout.write(`${JSON.stringify(value, null, 2)}\n`);
}
