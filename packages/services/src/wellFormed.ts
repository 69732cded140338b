import { parseAtTheDoor } from "@pith/rules";
import type { z } from "zod";

/** A route of the contract that takes a JSON body. */
interface RouteWithBody<S extends z.ZodType> {
  request: { body: { content: { "application/json": { schema: S } } } };
}

/** What a route's body is once it is read. */
export type BodyOf<R> = R extends RouteWithBody<infer S> ? z.output<S> : never;

/** The body a route takes, checked by the route's own schema. DomainError names field, bound and what came. */
export const bodyOf = <S extends z.ZodType>(route: RouteWithBody<S>, raw: unknown): z.output<S> =>
  parseAtTheDoor(schemaOf(route), raw);

/** The schema of a route's body. */
export const schemaOf = <S extends z.ZodType>(route: RouteWithBody<S>): S =>
  route.request.body.content["application/json"].schema;

/** The query a route takes, checked by the route's own schema. */
export const queryOf = <S extends z.ZodType>(route: { request: { query: S } }, raw: unknown): z.output<S> =>
  parseAtTheDoor(route.request.query, raw);
