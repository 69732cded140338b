import type { SeasonRecord, SeasonRow } from "@pith/contract";
import { type Param, render, say } from "@pith/rules";
import type { SeasonFacts } from "./gather.ts";
import { isRawManure } from "./intervals.ts";
import { isIn } from "./season.ts";

type Row = SeasonRow<"missing">;
type Tables = Omit<SeasonRecord["tables"], "missing" | "totals">;
const CODES = [
  "no-certifier",
  "no-soil-test",
  "no-water-test",
  "no-nitrate",
  "no-lot",
  "no-labour",
  "use-unknown",
  "use-prohibited",
  "use-restricted",
  "proof-ended",
  "no-proof",
  "compost-unknown",
  "no-registration",
  "no-amount",
  "no-harvest-lot",
  "no-marketable",
  "no-hours",
  "more-than-picked",
  "not-set-out",
  "interval-not-kept",
  "unanswered",
  "no-records",
] as const;
type Code = (typeof CODES)[number];

/** What an auditor will ask for and the records do not say, and what they say that will not pass; bed by bed. */
export function missingRows(facts: SeasonFacts, t: Tables): Row[] {
  const reader = { language: facts.language, units: facts.farm?.units ?? "metric" } as const;
  const line = (
    code: Code,
    { bed = null, on = null, id = null }: Partial<Pick<Row, "bed" | "on" | "id">>,
    about: string,
    params: Record<string, Param> = {},
  ): Row => ({
    bed,
    on,
    about,
    code,
    text: render(say(`season-record.missing.${code}`, params), reader),
    id,
  });
  return [...ofBeds(facts, t, line), ...ofGiven(facts, t, line), ...ofPicked(t, line), ...ofAdvice(t, line)];
}
type Line = Parameters<typeof ofBeds>[2];

function ofBeds(
  { beds, season }: SeasonFacts,
  t: Tables,
  line: (
    code: Code,
    where: Partial<Pick<Row, "bed" | "on" | "id">>,
    about: string,
    params?: Record<string, Param>,
  ) => Row,
): Row[] {
  const rows: Row[] = [];
  const seen = new Set(
    [...t.applications, ...t.waterings, ...t.sprays, ...t.harvests, ...t.works].map((r) => r.bedId),
  );
  for (const bed of beds) {
    const where = { bed: bed.name, id: bed.id };
    if (bed.certification !== "none" && !bed.certifier) rows.push(line("no-certifier", where, "beds"));
    if (!t.plantings.some((p) => p.bed === bed.name)) continue;
    if (!t.soilTests.some((s) => s.bedId === bed.id))
      rows.push(line("no-soil-test", where, "soilTests", { season: season.name }));
    if (!seen.has(bed.id)) rows.push(line("no-records", where, "beds", { season: season.name }));
  }
  if (t.waterings.length > 0 && t.waterTests.length === 0) {
    rows.push(line("no-water-test", {}, "waterTests", { season: season.name }));
  }
  if (t.waterings.some((w) => w.nKg === null && w.bedLitres !== null))
    rows.push(line("no-nitrate", {}, "waterTests"));
  return rows;
}

function ofGiven(facts: SeasonFacts, t: Tables, line: Line): Row[] {
  const certified = new Set(facts.beds.filter((b) => b.certification !== "none").map((b) => b.id));
  const raw = new Set(
    facts.applications.filter((a) => isRawManure(facts, a) && a.composted === null).map((a) => a.id),
  );
  const rows: Row[] = [];
  for (const a of t.applications) {
    const about = "applications";
    const what = { material: a.material };
    if (a.lot === null) rows.push(line("no-lot", a, about, what));
    if (a.labourMinutes === null) rows.push(line("no-labour", a, about, what));
    if (raw.has(a.id)) rows.push(line("compost-unknown", a, about, what));
    if (!certified.has(a.bedId)) continue;
    if (a.certifiedUse !== "allowed") rows.push(line(`use-${a.certifiedUse}` as Code, a, about, what));
    else if (a.proof === null) rows.push(line("no-proof", a, about, what));
    if (a.proofUntil !== null && a.proofUntil < a.on) {
      rows.push(line("proof-ended", a, about, { ...what, until: { day: a.proofUntil } }));
    }
  }
  for (const s of t.sprays) {
    if (s.registration === null) rows.push(line("no-registration", s, "sprays", { product: s.product }));
  }
  for (const w of t.waterings) {
    if (w.bedLitres === null) rows.push(line("no-amount", w, "waterings", { valve: w.valve }));
  }
  for (const i of t.intervals) {
    if (i.kept !== "not-kept" || i.firstPickAfter === null || !isIn(facts.season, i.firstPickAfter)) continue;
    rows.push(
      line("interval-not-kept", { bed: i.bed, on: i.firstPickAfter, id: i.id }, "intervals", {
        what: i.what,
        given: { day: i.on },
        from: { day: i.pickFrom },
      }),
    );
  }
  return rows;
}

/** Kilograms typed with two decimals add up to a hair beside their sum. */
const HAIR_KG = 1e-6;

function ofPicked(t: Tables, line: Line): Row[] {
  const rows: Row[] = [];
  const out = new Map(t.plantings.map((p) => [`${p.bed} ${p.planting}`, p.setOutOn]));
  for (const h of t.harvests) {
    const about = "harvests";
    const what = { planting: h.planting };
    const culls = h.culls.reduce((sum, cull) => sum + cull.kg, 0);
    if (h.lot === null) rows.push(line("no-harvest-lot", h, about, what));
    if (h.marketableKg === null) rows.push(line("no-marketable", h, about, what));
    if (h.labourHours === null) rows.push(line("no-hours", h, about, what));
    if ((h.marketableKg ?? 0) + culls > h.pickedKg + HAIR_KG)
      rows.push(line("more-than-picked", h, about, what));
    if (out.get(`${h.bed} ${h.planting}`) === null) rows.push(line("not-set-out", h, about, what));
  }
  return rows;
}

const ofAdvice = (t: Tables, line: Line): Row[] =>
  t.unanswered.map((a) =>
    line("unanswered", { on: a.due, id: a.id }, "unanswered", { subject: a.subject, decision: a.decision }),
  );
