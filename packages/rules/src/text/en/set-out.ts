/** What set-out says, in English. Keys start with the rule's id. */
export const setOut: Record<string, string> = {};
