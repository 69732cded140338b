import type { Column } from "@pith/contract";
import { formsOf, isByArea, isUsualDepth, nutrientUnits, OF_CEC } from "./nutrientUnits.ts";
import { LEAVE_OUT, type Question } from "./reading.ts";
import {
  BUFFER_METHOD_CHOICES,
  EC_CHOICES,
  EXTRACTANT_CHOICES,
  isNutrient,
  isShareOfSomething,
  soilDimension,
} from "./soilColumns.ts";
import { unitsOf } from "./units.ts";

/** What a person answers where a report does not say; the rules then refuse the value rather than guess. */
export const NOT_STATED = "not stated";

/** What of a laboratory's columns is open, column by column and then what only several of them together show. */
export function columnQuestions(columns: Column[]): Question[] {
  const rowExtractant = columns.some((c) => c.field === "extractant");
  const one = columns.flatMap((column) => questionsOf(column, rowExtractant));
  // Which of two to read is only clear once it is known by which method each is.
  return one.length > 0 ? one : twiceQuestions(columns);
}

function questionsOf(column: Column, rowExtractant: boolean): Question[] {
  const { field, header, unit, extractant } = column;
  if (field === null) return [];
  const about = { header, headers: [header] };
  const asked: Question[] = [];
  const units = isNutrient(field) ? nutrientUnits(field) : fieldUnits(field);
  if (units && !(unit !== null && units.includes(unit))) {
    asked.push(
      isShareOfSomething(header, field)
        ? {
            ...about,
            about: "unit",
            ask: `Is "${header}" a share of the soil’s mass, or of its exchange capacity (base saturation)?`,
            choices: ["%", OF_CEC, LEAVE_OUT],
          }
        : {
            ...about,
            about: "unit",
            ask: `In what unit is "${header}"?`,
            choices: isNutrient(field) ? [...units, LEAVE_OUT] : units,
          },
    );
  }
  if (isNutrient(field) && column.form !== undefined && !formsOf(field).includes(column.form ?? "")) {
    asked.push({
      ...about,
      about: "form",
      ask: `In which form does the laboratory print "${header}"?`,
      choices: [...formsOf(field), LEAVE_OUT],
    });
  }
  const meanings = meaningChoices(field);
  if (meanings && extractant === null && !(isNutrient(field) && rowExtractant)) {
    const what = field === "ec" ? "extraction" : field === "bufferPh" ? "buffer method" : "extractant";
    asked.push({
      ...about,
      about: "extractant",
      ask: `By which ${what} is "${header}"?`,
      choices: field === "bufferPh" ? meanings : [...meanings, NOT_STATED],
    });
  }
  return asked;
}

function fieldUnits(field: string): string[] | null {
  const dimension = soilDimension(field);
  return !dimension || dimension === "date" || dimension === "text" ? null : unitsOf(dimension);
}

function meaningChoices(field: string): string[] | null {
  if (isNutrient(field)) return EXTRACTANT_CHOICES;
  return field === "ec" ? EC_CHOICES : field === "bufferPh" ? BUFFER_METHOD_CHOICES : null;
}

/** Two columns read as one thing: the same nutrient by two extractants is two results, anything else is asked. */
function twiceQuestions(columns: Column[]): Question[] {
  const groups = new Map<string, Column[]>();
  for (const column of columns) {
    if (column.field === null) continue;
    const key = isNutrient(column.field) ? `${column.field} ${column.extractant}` : column.field;
    groups.set(key, [...(groups.get(key) ?? []), column]);
  }
  return [...groups.values()]
    .filter((group) => group.length > 1)
    .map((group) => {
      const headers = group.map((c) => c.header);
      return {
        header: headers[0] ?? "",
        headers,
        about: "field" as const,
        ask: `${headers.length} columns are read as ${group[0]?.field}. Which one is to be read?`,
        choices: headers,
      };
    });
}

/**
 * What mass of soil kg/ha or lb/acre is reckoned by. Pounds an acre of samples 6 to 7 in deep are the trade's slice;
 * at other depths, and in kg/ha, laboratories differ.
 */
export function basisQuestions(columns: Column[], depthsCm: () => number[]): Question[] {
  const byArea = columns.filter((c) => c.field !== null && isNutrient(c.field) && isByArea(c.unit));
  if (byArea.length === 0) return [];
  const depths = depthsCm();
  const usual = depths.every(isUsualDepth);
  for (const column of byArea) {
    if (column.basis === "usual-slice" && !usual) column.basis = null;
    if (!column.basis && usual && column.unit === "lb/acre") column.basis = "usual-slice";
  }
  const open = byArea.filter((c) => !c.basis);
  if (open.length > 0) {
    return [
      {
        header: open[0]?.header ?? "",
        headers: open.map((c) => c.header),
        about: "basis",
        ask: `What mass of soil does the laboratory reckon ${listed([...new Set(open.map((c) => c.unit ?? ""))])} by?`,
        choices: ["plough-slice", "slice-per-6-in", "depth-and-density"],
      },
    ];
  }
  const dense = byArea.filter((c) => c.basis === "depth-and-density" && !c.densityKgPerM3);
  if (dense.length === 0) return [];
  return [
    {
      header: dense[0]?.header ?? "",
      headers: dense.map((c) => c.header),
      about: "density",
      ask: "What density of soil does the laboratory reckon with?",
      choices: [],
      number: { unit: "kg/m3", low: 100, high: 2200 },
    },
  ];
}

const listed = (words: string[]) => words.join(" and ");
