/** What setting-depth says, in English. Keys start with the rule's id. */
export const settingDepth: Record<string, string> = {};
