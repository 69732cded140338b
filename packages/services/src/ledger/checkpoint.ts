import { type Checkpoint, CheckpointSchema } from "@pith/contract";
import { canonicalText } from "./canonical.ts";
import { keyIdOf, type Signer, signatureHolds } from "./signing.ts";

/**
 * A statement, signed: on this instant the ledger of this office had so many entries, the last with this hash. Whoever
 * keeps it outside the database can tell later whether what it vouches for was rewritten.
 */
export async function signCheckpoint(
  signer: Signer,
  facts: Pick<Checkpoint, "office" | "seq" | "head" | "root" | "at">,
): Promise<Checkpoint> {
  const statement = {
    v: 1 as const,
    kind: "pith-ledger-checkpoint" as const,
    ...facts,
    keyId: signer.keyId,
    publicKey: signer.publicKey,
  };
  return { ...statement, signature: await signer.sign(canonicalText(statement)) };
}

/** A checkpoint from its JSON; undefined where the text is none. */
export function readCheckpoint(text: string): Checkpoint | undefined {
  try {
    return CheckpointSchema.safeParse(JSON.parse(text)).data;
  } catch {
    return undefined;
  }
}

/** Why a checkpoint vouches for nothing; null where its key signed it. Whose key that is, people compare by its id. */
export async function faultInCheckpoint({ signature, ...statement }: Checkpoint): Promise<string | null> {
  if ((await keyIdOf(statement.publicKey)) !== statement.keyId) return "its key's id is not that of its key";
  const holds = await signatureHolds(statement.publicKey, canonicalText(statement), signature);
  return holds ? null : "its signature is not that of its key";
}
