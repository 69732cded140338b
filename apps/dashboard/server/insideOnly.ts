/**
 * Only an address of this dashboard: a link from outside must not send anybody elsewhere after signing in. A browser reads
 * a backslash as a slash and leaves out tabs and line breaks, so that `/<tab>/elsewhere` would be another's address.
 */
export const insideOnly = (next: string): string =>
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is refused
  /^\/(?!\/)[^\\\x00-\x1f\x7f]*$/.test(next) ? next : "/";
