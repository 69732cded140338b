import { type Dimension, spaced, unitInHeader } from "./units.ts";

interface SoilField {
  field: string;
  dimension: Dimension | "date" | "text";
  named: RegExp;
}

/** Fields of a laboratory's row that are not nutrients. The order decides: a buffer pH is not a pH. */
const FIELDS: SoilField[] = [
  { field: "sampledOn", dimension: "date", named: /\b(sampled|date|collected)\b/ },
  { field: "bed", dimension: "text", named: /\b(bed|field|plot|block)\b/ },
  { field: "depthCm", dimension: "depth", named: /\bdepth\b/ },
  {
    field: "sampleRef",
    dimension: "text",
    named: /\b(sample|lab)\b.*\b(id|no|number|ref)|\bsample\b|\blab ?(id|no)\b/,
  },
  { field: "labName", dimension: "text", named: /\blab(oratory)?\b/ },
  { field: "medium", dimension: "text", named: /\bmedium\b|\bsoil type\b/ },
  { field: "bufferPh", dimension: "ph", named: /\bbuffer\b|\bbph\b|\blti\b/ },
  { field: "waterPh", dimension: "ph", named: /\bph\b/ },
  { field: "organicMatterPct", dimension: "percent", named: /\b(om|organic matter|humus)\b/ },
  { field: "cecCmolPerKg", dimension: "exchange", named: /\b(cec|exchange capacity)\b/ },
  { field: "acidityCmolPerKg", dimension: "exchange", named: /\bacidity\b|\bexch\w* h\b/ },
  { field: "ec", dimension: "conductivity", named: /\b(ec|conductivity|soluble salts?|salts)\b/ },
];

const NUTRIENT_NAMES: [RegExp, string][] = [
  [/\b(nitrate( ?- ?n)?|no3( ?- ?n)?)\b/, "NO3-N"],
  [/\b(phosphorus|p)\b/, "P"],
  [/\b(potassium|k)\b/, "K"],
  [/\b(calcium|ca)\b/, "Ca"],
  [/\b(magnesium|mg)\b(?!\s*\/|\s*per)/, "Mg"],
  [/\b(sul(f|ph)ur|s)\b/, "S"],
  [/\b(zinc|zn)\b/, "Zn"],
  [/\b(copper|cu)\b/, "Cu"],
  [/\b(manganese|mn)\b/, "Mn"],
  [/\b(iron|fe)\b/, "Fe"],
  [/\b(boron|b)\b/, "B"],
  [/\b(sodium|na)\b/, "Na"],
];

const EXTRACTANTS: [RegExp, string][] = [
  [/\bmehlich[ -]?(3|iii)\b|\bm3\b/, "mehlich-3"],
  [/\bmehlich[ -]?(1|i)\b|\bm1\b/, "mehlich-1"],
  [/\bolsen\b|\bbicarb/, "olsen"],
  [/\bbray\b/, "bray-1"],
  [/\bmodified morgan\b|\bmorgan\b/, "modified-morgan"],
  [/\bam\w* acetate\b|\bnh4 ?oac\b/, "ammonium-acetate"],
  [/\bdtpa\b/, "dtpa"],
  [/\bhot water\b/, "hot-water"],
  [/\bkcl\b/, "kcl"],
];

const BUFFER_METHODS: [RegExp, string][] = [
  [/\bmodified mehlich\b/, "modified-mehlich"],
  [/\bmehlich\b/, "mehlich"],
  [/\badams/, "adams-evans"],
  [/\bsmp\b/, "smp"],
  [/\bsikora\b/, "sikora"],
  [/\bwoodruff\b/, "woodruff"],
];

const EC_EXTRACTIONS: [RegExp, string][] = [
  [/saturat|\bpaste\b|\bece\b/, "saturated-paste"],
  [/\b1 ?: ?1\b/, "1:1"],
  [/\b1 ?: ?2\b/, "1:2"],
  [/\b1 ?: ?5\b/, "1:5"],
];

const firstOf = (table: [RegExp, string][], text: string) => table.find(([p]) => p.test(text))?.[1] ?? null;

export const soilDimension = (field: string) => FIELDS.find((f) => f.field === field)?.dimension;
export const isNutrient = (field: string): boolean => NUTRIENT_NAMES.some(([, n]) => n === field);
export const BUFFER_METHOD_CHOICES = BUFFER_METHODS.map(([, m]) => m);
export const EXTRACTANT_CHOICES = EXTRACTANTS.map(([, e]) => e);
export const EC_CHOICES = EC_EXTRACTIONS.map(([, e]) => e);

/**
 * What a header of a laboratory's file is read as. `extractant` also carries a buffer's method and a conductivity's
 * extraction: in each case it is what the number means nothing without.
 */
export function matchSoilColumn(header: string) {
  const h = spaced(header);
  if (/^(extractant|extraction|soil test method)$/.test(h)) {
    return { header, field: "extractant", unit: null, extractant: null };
  }
  const extractant = firstOf(EXTRACTANTS, h);
  const bare = extractant ? h.replace(EXTRACTANTS.find(([, e]) => e === extractant)?.[0] ?? "", " ") : h;
  const found = FIELDS.find((f) => f.named.test(h));
  const nutrient = firstOf(NUTRIENT_NAMES, bare.replace(/\bmg\s*(\/|per)\s*kg\b/g, " "));
  const stated = unitInHeader(header);
  if (!found && nutrient) return { header, field: nutrient, unit: stated, extractant };
  if (!found) return { header, field: null, unit: null, extractant: null };
  const meaning =
    found.field === "bufferPh"
      ? firstOf(BUFFER_METHODS, h)
      : found.field === "ec"
        ? firstOf(EC_EXTRACTIONS, h)
        : null;
  const unit = found.dimension === "ph" ? "pH" : found.dimension === "percent" ? (stated ?? "%") : stated;
  return { header, field: found.field, unit, extractant: meaning };
}
