/** Words around an answer when it is said to a reader, in English. */
export const said: Record<string, string> = {
  "said.needs-more": "Cannot say yet. {measure}",
  "said.refused": "Something has to be put right first.",
  "said.window.between": "From {from} to {to}. {endsBy}",
  "said.window.on": "On {from}. {endsBy}",
  "said.window.from": "From {from}. {endsBy}",
  "said.window.to": "Until {to}. {endsBy}",
  "said.round.overdue": "{reason} The last good moment was {day}.",
  "said.round.by": "{reason} Act by {day}.",
};
