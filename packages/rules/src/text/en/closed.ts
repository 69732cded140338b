/** Words of a bed that a spray's label closes, in English. */
export const closed: Record<string, string> = {
  "closed.step":
    "First wait: the bed is closed after spraying until {day}, {time}. Nobody goes in before, for this or anything else.",
};
