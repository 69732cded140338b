/** What feeding says, in English. Keys start with the rule's id. */
export const feeding: Record<string, string> = {};
