import fc from "fast-check";

fc.configureGlobal({ seed: Number(process.env.PITH_SEED ?? 20_260_609) });
