import fc from "fast-check";
import { expect, test } from "vitest";
import {
  GrowingTree,
  leafHash,
  levelsOf,
  proofHolds,
  proofOf,
} from "../../packages/services/src/ledger/merkle.ts";

/** RFC 9162 (6962), 2.1, by the test vectors of the certificate-transparency reference implementations. */

const bytes = (hex: string) => new Uint8Array(Buffer.from(hex, "hex"));
const LEAVES = [
  "",
  "00",
  "10",
  "2021",
  "3031",
  "40414243",
  "5051525354555657",
  "606162636465666768696a6b6c6d6e6f",
]
  .map(bytes)
  .map(leafHash);
const ROOTS = [
  "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
  "6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d",
  "fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125",
  "aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77",
  "d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7",
  "4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4",
  "76e67dadbcdf1e10e1b74ddc608abd2f98dfb16fbce75277b5232a127f2087ef",
  "ddb89be403809e325750d3d263cd78929c2942b7942a34b77e122c9594a74c8c",
  "5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328",
];

const grown = (leaves: Uint8Array[]) => {
  const tree = new GrowingTree();
  for (const leaf of leaves) tree.append(leaf);
  return tree.root();
};

test("trees of none to eight published leaves have the published roots", () => {
  expect(ROOTS.map((_, size) => grown(LEAVES.slice(0, size)))).toEqual(ROOTS);
});

test.each([
  [
    0,
    [
      "96a296d224f285c67bee93c30f8a309157f0daa35dc5b87e410b78630a09cfc7",
      "5f083f0a1a33ca076a95279832580db3e0ef4584bdff1f54c8a360f50de3031e",
      "6b47aaf29ee3c2af9af889bc1fb9254dabd31177f16232dd6aab035ca39bf6e4",
    ],
  ],
  [
    5,
    [
      "bc1a0643b12e4d2d7c77918f44e0f4f79a838b6cf9ec5b5c283e1f4d88599e6b",
      "ca854ea128ed050b41b35ffc1b87b8eb2bde461e9e3b5596ece6b9d5975a0ae0",
      "d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7",
    ],
  ],
])("the published proof of leaf %i of eight", (index, proof) => {
  expect(proofOf(levelsOf(LEAVES), index)).toEqual(proof);
});

test("in a tree of any size each leaf's proof holds, and for no other leaf, place, size or root", () => {
  const size = fc.integer({ min: 1, max: 40 });
  fc.assert(
    fc.property(size, fc.nat(), fc.nat(), (n, pick, other) => {
      const leaves = Array.from({ length: n }, (_, i) => leafHash(Uint8Array.of(i, n)));
      const [index, root, levels] = [pick % n, grown(leaves), levelsOf(leaves)];
      const [leaf, proof] = [leaves[index] as Uint8Array, proofOf(levels, index)];
      expect(Buffer.from(levels.at(-1)?.[0] ?? []).toString("hex")).toBe(root);
      expect(proofHolds(leaf, index, n, proof, root)).toBe(true);
      expect(proofHolds(leafHash(Uint8Array.of(99)), index, n, proof, root)).toBe(false);
      expect(proofHolds(leaf, index, n, proof, grown([...leaves, leaf]))).toBe(false);
      expect(proofHolds(leaf, index, n, [...proof, root], root)).toBe(false);
      if (n > 1) expect(proofHolds(leaf, index, n, proof.slice(1), root)).toBe(false);
      const place = other % n;
      if (place !== index) expect(proofHolds(leaf, place, n, proof, root)).toBe(false);
    }),
    { numRuns: 60 },
  );
});
