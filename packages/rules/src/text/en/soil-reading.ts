/** What soil-reading says, in English. Keys start with the rule's id. */
export const soilReading: Record<string, string> = {};
