import type { Claim } from "../types.ts";

export const coldRecordClaims: Claim[] = [];
