import { expect, test } from "vitest";
import { faultInCheckpoint, signCheckpoint } from "../../packages/services/src/ledger/checkpoint.ts";
import { keyIdOf, openSigner, signatureHolds } from "../../packages/services/src/ledger/signing.ts";

/** RFC 8037, appendix A: the key of A.1, its thumbprint of A.3, and the signature of A.4. */
const D = "nWGxne_9WmC6hEr0kuwsxERJxWl7MmkZcDusAxyuf2A";
const PUBLIC = { kty: "OKP", crv: "Ed25519", x: "11qYAYKxCrfVS_7TyWQHOg7hcvPapiMlrwIaaPcHURo" } as const;
const signer = await openSigner(JSON.stringify({ ...PUBLIC, d: D }));

test("the published key has the published thumbprint", async () => {
  expect(await keyIdOf(PUBLIC)).toBe("kPrK_qmxVWaYVA9wwBF6Iuo3vVzz7TxHCTwXBygrS4k");
  expect(signer.keyId).toBe("kPrK_qmxVWaYVA9wwBF6Iuo3vVzz7TxHCTwXBygrS4k");
});

test("it signs the published text with the published signature, which holds for that text alone", async () => {
  const text = "eyJhbGciOiJFZERTQSJ9.RXhhbXBsZSBvZiBFZDI1NTE5IHNpZ25pbmc";
  const signature = "hgyY0il_MGCjP0JzlnLWG1PPOt7-09PGcvMg3AIbQR6dWbhijcNR4ki4iylGjg5BhVsPt9g7sVvpAr_MuM0KAg";
  expect(await signer.sign(text)).toBe(signature);
  expect(await signatureHolds(PUBLIC, text, signature)).toBe(true);
  expect(await signatureHolds(PUBLIC, `${text}.`, signature)).toBe(false);
  expect(await signatureHolds(PUBLIC, text, signature.replace("h", "i"))).toBe(false);
  expect(await signatureHolds(PUBLIC, text, "!")).toBe(false);
});

test("a checkpoint holds as signed, and not with any field changed", async () => {
  const checkpoint = await signCheckpoint(signer, {
    office: "00000000-0000-4000-8000-000000000001",
    seq: 3,
    head: "a".repeat(64),
    root: "b".repeat(64),
    at: "2026-07-06T13:00:00.000Z",
  });
  expect(await faultInCheckpoint(checkpoint)).toBeNull();
  for (const change of [
    { seq: 4 },
    { head: "c".repeat(64) },
    { root: "c".repeat(64) },
    { at: "2026-07-06T13:00:00.001Z" },
    { office: "00000000-0000-4000-8000-000000000002" },
  ]) {
    expect(await faultInCheckpoint({ ...checkpoint, ...change })).toBe(
      "its signature is not that of its key",
    );
  }
  expect(await faultInCheckpoint({ ...checkpoint, keyId: "another" })).toBe(
    "its key's id is not that of its key",
  );
});

test("a key that is none is refused without being shown", async () => {
  await expect(openSigner("secret")).rejects.toThrow("the ledger's key is not JSON");
  await expect(openSigner(JSON.stringify(PUBLIC))).rejects.toThrow("must be the private JWK");
});
