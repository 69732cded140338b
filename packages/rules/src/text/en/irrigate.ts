/** What irrigate says, in English. Keys start with the rule's id. */
export const irrigate: Record<string, string> = {};
