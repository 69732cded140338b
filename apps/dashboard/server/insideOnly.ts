/**
 * Only an address of this dashboard: a link from outside must not send anybody elsewhere after signing in. A browser reads
 * a backslash as a slash and leaves out tabs and line breaks, so that `/<tab>/elsewhere` would be another's address.
 */
export const insideOnly = (next: string): string => (/^\/(?!\/)[^\\\p{Cc}]*$/u.test(next) ? next : "/");
