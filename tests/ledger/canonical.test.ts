import fc from "fast-check";
import { expect, test } from "vitest";
import { canonicalText } from "../../packages/services/src/ledger/canonical.ts";

/**
 * RFC 8785 by its published vectors: the test files that its author keeps beside it (testdata of
 * cyberphone/json-canonicalization) and the numbers of its appendix B.
 */

/** Input and output of each file; outputs of the characters that a terminal does not show are written as escapes. */
const files: Record<string, [string, string]> = {
  french: [
    `{
  "peach": "This sorting order",
  "p\u00e9ch\u00e9": "is wrong according to French",
  "p\u00eache": "but canonicalization MUST",
  "sin":   "ingnore locale"
}`,
    `{"peach":"This sorting order","p\u00e9ch\u00e9":"is wrong according to French","p\u00eache":"but canonicalization MUST","sin":"ingnore locale"}`,
  ],
  structures: [
    String.raw`{
  "1": {"f": {"f": "hi","F": 5} ,"\n": 56.0},
  "10": { },
  "": "empty",
  "a": { },
  "111": [ { } ],
  "A": { }
}`,
    String.raw`{"":"empty","1":{"\n":56,"f":{"F":5,"f":"hi"}},"10":{},"111":[{}],"A":{},"a":{}}`,
  ],
  unicode: [
    String.raw`{
  "Unnormalized Unicode":"\u1e0d\u0307"
}`,
    `{"Unnormalized Unicode":"\u1e0d\u0307"}`,
  ],
  values: [
    String.raw`{
  "numbers": [1E30, 4.50, 333333333.33333329, 2e-3, 0.000000000000000000000000001],
  "escaping": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
  "literals": [null, true, false]
}`,
    String.raw`{"escaping":"€$\u000f\nA'B\"\\\\\"/","literals":[null,true,false],"numbers":[1e+30,4.5,333333333.3333333,0.002,1e-27]}`,
  ],
  weird: [
    String.raw`{
  "\u20ac": "Euro Sign",
  "1": "One",
  "\u0080": "Control\u007f",
  "\ud83d\ude02": "Smiley",
  "\u00f6": "Latin Small Letter O With Diaeresis",
  "\ufb33": "Hebrew Letter Dalet With Dagesh",
  "</script>": "Browser Challenge"
}`,
    `{"1":"One","</script>":"Browser Challenge","\u0080":"Control\u007f","\u00f6":"Latin Small Letter O With Diaeresis","\u20ac":"Euro Sign","\u{1f602}":"Smiley","\ufb33":"Hebrew Letter Dalet With Dagesh"}`,
  ],
  // Its output is not stored where the others were read: by RFC 8785, 3.2.3, an array keeps its order, members are sorted.
  arrays: [
    `[
  56,
  {
    "d": true,
    "10": null,
    "1": [ ]
  }
]`,
    `[56,{"1":[],"10":null,"d":true}]`,
  ],
};

test.each(Object.entries(files))("the published file %s comes out byte for byte", (_, [input, output]) => {
  expect(canonicalText(JSON.parse(input))).toBe(output);
});

test.each([
  ["0000000000000000", "0"],
  ["8000000000000000", "0"],
  ["0000000000000001", "5e-324"],
  ["8000000000000001", "-5e-324"],
  ["7fefffffffffffff", "1.7976931348623157e+308"],
  ["ffefffffffffffff", "-1.7976931348623157e+308"],
  ["4340000000000000", "9007199254740992"],
  ["c340000000000000", "-9007199254740992"],
  ["4430000000000000", "295147905179352830000"],
  ["44b52d02c7e14af5", "9.999999999999997e+22"],
  ["44b52d02c7e14af6", "1e+23"],
  ["44b52d02c7e14af7", "1.0000000000000001e+23"],
  ["444b1ae4d6e2ef4e", "999999999999999700000"],
  ["444b1ae4d6e2ef4f", "999999999999999900000"],
  ["444b1ae4d6e2ef50", "1e+21"],
  ["3eb0c6f7a0b5ed8c", "9.999999999999997e-7"],
  ["3eb0c6f7a0b5ed8d", "0.000001"],
  ["41b3de4355555553", "333333333.3333332"],
  ["41b3de4355555554", "333333333.33333325"],
  ["41b3de4355555555", "333333333.3333333"],
  ["41b3de4355555556", "333333333.3333334"],
  ["41b3de4355555557", "333333333.33333343"],
  ["becbf647612f3696", "-0.0000033333333333333333"],
  ["43143ff3c1cb0959", "1424953923781206.2"],
])("the number of appendix B with the bits %s is written %s", (bits, written) => {
  const view = new DataView(new ArrayBuffer(8));
  view.setBigUint64(0, BigInt(`0x${bits}`));
  expect(canonicalText(view.getFloat64(0))).toBe(written);
});

test.each(["7fffffffffffffff", "7ff0000000000000"])("the bits %s are no number and are refused", (bits) => {
  const view = new DataView(new ArrayBuffer(8));
  view.setBigUint64(0, BigInt(`0x${bits}`));
  expect(() => canonicalText(view.getFloat64(0))).toThrow();
});

test("whatever order its members were in, a value has one text, and the text gives the value", () => {
  fc.assert(
    fc.property(fc.jsonValue({ maxDepth: 2, stringUnit: "binary" }), (value) => {
      const text = canonicalText(value);
      expect(canonicalText(reversed(value))).toBe(text);
      expect(canonicalText(JSON.parse(text))).toBe(text);
    }),
    { numRuns: 60 },
  );
});

const reversed = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(reversed);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([k, v]) => [k, reversed(v)]),
  );
};
