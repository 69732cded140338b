import { quantities } from "@pith/rules";

type Inputs = Record<string, unknown>;

/** A printed number with its tolerance; `null` or a word where the source prints none, then exact. */
export type Printed = readonly [value: number | string | null, tolerance: number];

/**
 * One published example or table cell. FAO-56 is Allen, Pereira, Raes and Smith (1998), FAO Irrigation and Drainage
 * Paper 56, pages as printed. SEEN: the printed number; COMPUTED: from the published formula by another method.
 * Tolerance: half a unit of the last printed place plus what the source's rounded intermediates add.
 */
export interface ReferenceRow {
  id: string;
  source: string;
  status: "SEEN" | "COMPUTED";
  /** The quantity or table that is held to it. */
  what: string;
  answer: () => Record<string, unknown>;
  /** Where a quantity answers: which, and from what. */
  by?: { quantity: string; inputs: Inputs };
  expect: Record<string, Printed>;
}

type Expect = ReferenceRow["expect"];

/** A quantity's values, and each line of its working as `~` and its symbol. */
export function answerOf(id: string, inputs: Inputs): Record<string, unknown> {
  const quantity = quantities[id];
  if (!quantity) throw new Error(`no quantity ${id}`);
  const { value, working } = quantity.compute(inputs);
  return { ...Object.fromEntries(working.map((line) => [`~${line.symbol}`, line.value])), ...value };
}

/** A row held by anything that answers with names and values. */
export const seenIn = (
  id: string,
  source: string,
  what: string,
  answer: ReferenceRow["answer"],
  expect: Expect,
): ReferenceRow => ({ id, source, status: "SEEN", what, answer, expect });

export const computedIn = (...of: Parameters<typeof seenIn>): ReferenceRow => ({
  ...seenIn(...of),
  status: "COMPUTED",
});

/** A row held by a quantity. */
export const seen = (
  id: string,
  source: string,
  quantity: string,
  inputs: Inputs,
  expect: Expect,
): ReferenceRow => ({
  ...seenIn(id, source, quantity, () => answerOf(quantity, inputs), expect),
  by: { quantity, inputs },
});

export const computed = (...of: Parameters<typeof seen>): ReferenceRow => ({
  ...seen(...of),
  status: "COMPUTED",
});

/** What several neighbouring cells of a source print, one after the other, all with one tolerance. */
export const printed = (values: readonly (number | null)[], tolerance: number): Expect =>
  Object.fromEntries(values.map((value, i) => [`${i + 1}`, [value, tolerance]]));

/** The answers to {@link printed}. */
export const inOrder = (values: readonly unknown[]): Record<string, unknown> =>
  Object.fromEntries(values.map((value, i) => [`${i + 1}`, value]));
