import type { Column } from "@pith/contract";
import { formsOf, isBase, OF_CEC } from "./nutrientUnits.ts";
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
  {
    field: "freeLime",
    dimension: "text",
    named: /\bfizz\w*\b|\befferv\w*\b|\b(free|excess) (lime|carbonates?)\b/,
  },
  { field: "ec", dimension: "conductivity", named: /\b(ec|conductivity|soluble salts?|salts)\b/ },
];

const NUTRIENT_NAMES: [RegExp, string][] = [
  [/\b(nitrates?|no3n?)\b/, "NO3-N"],
  [/\b(phosphorus|phosphates?|p2o5|po4|p)\b/, "P"],
  [/\b(potassium|potash|k2o|k)\b/, "K"],
  [/\b(calcium|cao|ca)\b/, "Ca"],
  [/\b(magnesium|mgo|mg)\b(?!\s*\/|\s*per)/, "Mg"],
  [/\b(sul(f|ph)ur|sul(f|ph)ates?|so4|s)\b/, "S"],
  [/\b(zinc|zn)\b/, "Zn"],
  [/\b(copper|cu)\b/, "Cu"],
  [/\b(manganese|mn)\b/, "Mn"],
  [/\b(iron|fe)\b/, "Fe"],
  [/\b(boron|b)\b/, "B"],
  [/\b(sodium|na)\b/, "Na"],
];

/**
 * Forms that a header states beyond doubt. `null` is a name that people print both forms under: nitrate is the ion to
 * one laboratory and its nitrogen to the next, phosphate and potash are the element or the oxide.
 */
const FORMS: [RegExp, string | null][] = [
  [/\bno3n\b|\b(no3|nitrates?)( ?- ?| )(n|nitrogen)\b/, "NO3-N"],
  [/\b(no3|nitrates?)\b/, null],
  [/\bp2o5\b/, "P2O5"],
  [/\bpo4( ?- ?| )p\b/, "P"],
  [/\bpo4\b/, "PO4"],
  [/\bphosphates?\b/, null],
  [/\bk2o\b/, "K2O"],
  [/\bpotash\b/, null],
  [/\bcao\b/, "CaO"],
  [/\bmgo\b/, "MgO"],
  [/\b(so4|sul(f|ph)ates?)( ?- ?| )s\b/, "S"],
  [/\bso4\b/, "SO4"],
  [/\bsul(f|ph)ates?\b/, null],
];

/** A share of exchange capacity rather than of soil. */
const BASE_SATURATION = /\bsat\w*\b|\bof cec\b|\bbase\b/;

/** Methods by name. One of the same family is another method: original Morgan and Bray-2 are asked about. */
const EXTRACTANTS: [RegExp, string][] = [
  [/\bmehlich[ -]?(3|iii)\b|\bm3\b/, "mehlich-3"],
  [/\bmehlich[ -]?(1|i)\b|\bm1\b/, "mehlich-1"],
  [/\bolsen\b|\bbicarb/, "olsen"],
  [/\bbray\b(?![ -]*(p[ -]?)?(2|ii)\b)(?!.*\bp2\b)/, "bray-1"],
  [/\bmod\w*\.? morgan\b/, "modified-morgan"],
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
/** The extractant that a cell names, in any of its usual spellings. */
export const extractantNamed = (text: string): string | null =>
  EXTRACTANT_CHOICES.find((e) => e === text.toLowerCase()) ?? firstOf(EXTRACTANTS, spaced(text));
export const EC_CHOICES = EC_EXTRACTIONS.map(([, e]) => e);

/**
 * What a header of a laboratory's file is read as. `extractant` also carries a buffer's method and a conductivity's
 * extraction: in each case it is what the number means nothing without.
 */
export function matchSoilColumn(header: string): Column {
  const h = spaced(header);
  const column = { header, field: null, unit: null, extractant: null };
  if (/^(extractant|extraction|soil test method)$/.test(h)) return { ...column, field: "extractant" };
  const found = FIELDS.find((f) => f.named.test(h));
  if (!found) return matchNutrient(column, h);
  const { field, dimension } = found;
  const stated = unitInHeader(header);
  const unit =
    dimension === "ph"
      ? "pH"
      : dimension === "text"
        ? null
        : dimension === "percent"
          ? (stated ?? "%")
          : stated;
  const meanings = field === "bufferPh" ? BUFFER_METHODS : field === "ec" ? EC_EXTRACTIONS : [];
  return { ...column, field, unit, extractant: firstOf(meanings, h) };
}

function matchNutrient(column: Column, h: string): Column {
  const extractant = firstOf(EXTRACTANTS, h);
  const named = extractant ? h.replace(EXTRACTANTS.find(([, e]) => e === extractant)?.[0] ?? "", " ") : h;
  const bare = named.replace(/\bmg\s*(\/|per)\s*kg\b/g, " ");
  const field = firstOf(NUTRIENT_NAMES, bare);
  if (!field) return column;
  const stated = unitInHeader(column.header);
  // "K %" is a share of the soil to one laboratory and of its exchange capacity to the next.
  const share = isBase(field) && (stated === "%" || (stated === null && BASE_SATURATION.test(h)));
  const unit = share ? (BASE_SATURATION.test(h) ? OF_CEC : null) : stated;
  const form = FORMS.find(([p]) => p.test(bare));
  return { ...column, field, unit, extractant, form: form ? form[1] : (formsOf(field)[0] ?? null) };
}

/** A header that states percent of a base without saying of what. */
export const isShareOfSomething = (header: string, field: string): boolean =>
  isBase(field) && unitInHeader(header) === "%" && !BASE_SATURATION.test(spaced(header));
