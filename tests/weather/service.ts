import { readFileSync } from "node:fs";
import { createServer, type IncomingHttpHeaders, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";

/** The forecast service on a loopback port, serving files made to its documented format. Nothing else is ever asked. */

export const file = (name: string): string => readFileSync(`${import.meta.dirname}/${name}`, "utf8");

export type Answer = (response: ServerResponse, headers: IncomingHttpHeaders) => void;

/** An ordinary answer: a body with the headers that the service sends. */
export const says =
  (body: string, status = 200, headers: Record<string, string> = {}): Answer =>
  (response) =>
    void response.writeHead(status, { "content-type": "application/json", ...headers }).end(body);

export async function startService() {
  const asked: { url: string; headers: IncomingHttpHeaders }[] = [];
  const service = { answer: says(file("point-forecast.json")) as Answer };
  const server = createServer((request, response) => {
    asked.push({ url: request.url ?? "", headers: request.headers });
    service.answer(response, request.headers);
  });
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
  const baseUrl = `http://127.0.0.1:${(server.address() as AddressInfo).port}/locationforecast/2.0`;
  return {
    baseUrl,
    asked,
    /** What the next questions are answered with. */
    set answer(next: Answer) {
      service.answer = next;
    },
    async close() {
      server.closeAllConnections();
      await new Promise((done) => server.close(done));
    },
  };
}
