/** What cold-record says, in English. Keys start with the rule's id. */
export const coldRecord: Record<string, string> = {};
