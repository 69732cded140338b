import { subscribe } from "node:diagnostics_channel";
import type { IncomingMessage } from "node:http";
import { whoCalls } from "@pith/contract";

/**
 * Puts the true caller's address in the place of what each request says of itself, before anything reads it. The server of
 * the pages keeps whatever a caller wrote there, and shows nobody the connection.
 */
export function markCallers(proxies: readonly string[]): void {
  subscribe("http.server.request.start", (message) => {
    const { headers, socket } = (message as { request: IncomingMessage }).request;
    const said = headers["x-forwarded-for"];
    headers["x-forwarded-for"] = whoCalls(socket.remoteAddress ?? "unknown", String(said ?? ""), proxies);
  });
}
