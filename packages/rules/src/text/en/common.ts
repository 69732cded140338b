/** Words that several rules use, in English. */
export const common: Record<string, string> = {
  "common.whole-season": "the whole season",
};
