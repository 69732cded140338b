import { sha256 } from "@noble/hashes/sha2";
import { bytesToHex, concatBytes, hexToBytes } from "@noble/hashes/utils";

/**
 * The hash tree of RFC 9162 (2.1) over the hashes of a ledger's entries. A checkpoint signs its root, so that some entries
 * can be shown to belong to what was signed without the others: a farm's, without the other farms'.
 */
const leafOf = (entryHash: string): Uint8Array => leafHash(hexToBytes(entryHash));
export const leafHash = (data: Uint8Array): Uint8Array => sha256(concatBytes(Uint8Array.of(0), data));
const nodeOf = (left: Uint8Array, right: Uint8Array): Uint8Array =>
  sha256(concatBytes(Uint8Array.of(1), left, right));

/** A tree that only grows: the roots of its full parts, largest first, each with its size. */
export class GrowingTree {
  #parts: { size: number; hash: Uint8Array }[] = [];

  append(leaf: Uint8Array): void {
    let part = { size: 1, hash: leaf };
    for (let last = this.#parts.at(-1); last?.size === part.size; last = this.#parts.at(-1)) {
      this.#parts.pop();
      part = { size: last.size * 2, hash: nodeOf(last.hash, part.hash) };
    }
    this.#parts.push(part);
  }

  appendEntry(entryHash: string): void {
    this.append(leafOf(entryHash));
  }

  root(): string {
    const [last, ...rest] = this.#parts.map((part) => part.hash).reverse();
    return bytesToHex(
      last ? rest.reduce((right, left) => nodeOf(left, right), last) : sha256(new Uint8Array()),
    );
  }
}

/** Every level of the tree over these leaves, the leaves first. A last node without a sibling rises as it is. */
export function levelsOf(leaves: Uint8Array[]): Uint8Array[][] {
  const levels = [leaves];
  for (let below = leaves; below.length > 1; ) {
    const above: Uint8Array[] = [];
    for (let i = 0; i < below.length; i += 2) {
      const [left, right] = [below[i] as Uint8Array, below[i + 1]];
      above.push(right ? nodeOf(left, right) : left);
    }
    levels.push(above);
    below = above;
  }
  return levels;
}

export const entryLevels = (entryHashes: string[]): Uint8Array[][] => levelsOf(entryHashes.map(leafOf));

/** What leads from one leaf to the root (2.1.3.1). */
export function proofOf(levels: Uint8Array[][], index: number): string[] {
  return levels.slice(0, -1).flatMap((level, depth) => {
    const sibling = level[(index >> depth) ^ 1];
    return sibling ? [bytesToHex(sibling)] : [];
  });
}

/** Whether a leaf at this place of a tree of this size leads to this root (2.1.3.2). */
export function proofHolds(
  leaf: Uint8Array,
  index: number,
  size: number,
  proof: string[],
  root: string,
): boolean {
  if (index >= size) return false;
  let [at, last, hash] = [index, size - 1, leaf];
  for (const step of proof) {
    if (last === 0 || !/^[0-9a-f]{64}$/.test(step)) return false;
    if (at % 2 === 1 || at === last) {
      hash = nodeOf(hexToBytes(step), hash);
      while (at % 2 === 0 && at !== 0) [at, last] = [at >> 1, last >> 1];
    } else hash = nodeOf(hash, hexToBytes(step));
    [at, last] = [at >> 1, last >> 1];
  }
  return last === 0 && bytesToHex(hash) === root;
}

/** The same of an entry, by its number and hash. */
export const entryIsIn = (seq: number, hash: string, size: number, proof: string[], root: string): boolean =>
  proofHolds(leafOf(hash), seq - 1, size, proof, root);
