// @ts-check
import { connect, createServer } from "node:net";
import { PlainFailure } from "./failure.mjs";

/**
 * @param {number} port 0 for any
 * @returns {Promise<number>} the port bound for a moment on 127.0.0.1
 */
const bindForAMoment = (port) =>
  new Promise((resolve, reject) => {
    const server = createServer();
    server.once("error", reject);
    server.listen(port, "127.0.0.1", () => {
      const address = server.address();
      const bound = typeof address === "object" && address ? address.port : port;
      server.close(() => resolve(bound));
    });
  });

/** @returns {Promise<number>} */
export const findFreePort = () => bindForAMoment(0);

/** @param {number} port @returns {Promise<boolean>} */
export const portIsFree = (port) =>
  bindForAMoment(port).then(
    () => true,
    () => false,
  );

/**
 * @param {string} host
 * @param {number} port
 * @param {number} withinMs
 * @returns {Promise<string | undefined>} undefined when somebody answers there, otherwise the error's code
 */
export const whyNobodyAnswers = (host, port, withinMs) =>
  new Promise((resolve) => {
    const socket = connect({ host, port, timeout: withinMs });
    /** @param {string | undefined} answer */
    const settle = (answer) => {
      socket.destroy();
      resolve(answer);
    };
    socket.once("connect", () => settle(undefined));
    socket.once("timeout", () => settle("ETIMEDOUT"));
    socket.once(
      "error",
      (/** @type {NodeJS.ErrnoException & { errors?: NodeJS.ErrnoException[] }} */ error) =>
        settle(error.code ?? error.errors?.[0]?.code ?? "ECONNREFUSED"),
    );
  });

/**
 * Reads a port from the environment.
 *
 * @param {string} variable
 * @param {number} otherwise
 * @returns {number}
 */
export function portFrom(variable, otherwise) {
  const given = process.env[variable];
  if (given === undefined || given === "") return otherwise;
  const port = Number(given);
  if (!Number.isInteger(port) || port < 1 || port > 65535)
    throw new PlainFailure(`${variable} must be a port from 1 to 65535, but it is "${given}".`);
  return port;
}

/**
 * Refuses, in one sentence, a port somebody else uses or this user may not open.
 *
 * @param {number} port
 * @param {{ variable: string, purpose: string }} about
 */
export async function requireFreePort(port, { variable, purpose }) {
  const taken = new PlainFailure(
    `Port ${port}, wanted for ${purpose}, is already taken by another program: stop that one, or set ${variable} to a free port.`,
  );
  // Some systems let two programs bind one port at different addresses, so ask whether anybody answers too.
  if ((await whyNobodyAnswers("127.0.0.1", port, 500)) === undefined) throw taken;
  try {
    await bindForAMoment(port);
  } catch (error) {
    const { code } = /** @type {NodeJS.ErrnoException} */ (error);
    if (code === "EACCES")
      throw new PlainFailure(
        `This user may not open port ${port}, wanted for ${purpose}: set ${variable} to a port above 1023.`,
      );
    throw taken;
  }
}
