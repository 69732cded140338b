"use server";

import { farmRoutes, type Problem, sensorRoutes } from "@pith/contract";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { getTranslations } from "next-intl/server";
import { attempt, call } from "../../server/api.ts";
import { agentSeat } from "../../server/seat.ts";
import type { FormState } from "../forms/plan.ts";
import { problemState, readForm } from "../forms/read.ts";
import { problemWords } from "../forms/words.ts";
import { seriesPlan, seriesSchema } from "./plan.ts";

/** Adds a series or changes one; what the API refuses comes back beside its field. */
export async function saveSeries(
  { farmId, seriesId }: { farmId: string; seriesId: string | null },
  before: FormState,
  data: FormData,
): Promise<FormState> {
  const { officeId } = await agentSeat();
  const [farm, words] = await Promise.all([
    call(farmRoutes.getFarm, { params: { officeId, farmId } }),
    problemWords(),
  ]);
  const plan = seriesPlan(farm);
  const { units } = farm.farm;
  const read = readForm(plan, seriesSchema, data, units, words);
  const refused = (problem: Problem | null) =>
    problemState(before, read, problem, plan, seriesSchema, units, words);
  if (Object.keys(read.problems).length > 0) return refused(null);
  const { quantity, ...rest } = read.json;
  const saved = await attempt((client) =>
    // The API judges the body; the form's shape follows the same schema.
    seriesId === null
      ? client.call(sensorRoutes.addSeries, {
          params: { officeId, farmId },
          json: { quantity, ...rest } as never,
        })
      : client.call(sensorRoutes.changeSeries, {
          params: { officeId, farmId, seriesId },
          json: rest as never,
        }),
  );
  if (!saved.done) return refused(saved.problem);
  redirect(`/sensors/${farmId}?saved=series`);
}

/** What a key's form led to: its secret, shown once, or why there is none. */
export type KeyMade = { secret: string; names: string[] } | { message: string } | null;

export async function makeKey(farmId: string, _before: KeyMade, data: FormData): Promise<KeyMade> {
  const { officeId } = await agentSeat();
  const t = await getTranslations("sensors.keys");
  const seriesIds = data.getAll("series").map(String);
  if (seriesIds.length === 0) return { message: t("noSeries") };
  const name = String(data.get("name") ?? "").trim() || t("unnamed");
  const made = await attempt((client) =>
    client.call(sensorRoutes.addSensorKey, {
      params: { officeId, farmId },
      json: { name, seriesIds, endsAt: null },
    }),
  );
  return made.done ? shown(officeId, farmId, made.value) : { message: said(made.problem) };
}

/** A key in this one's place; this one opens for a day more. */
export async function rotateKey(farmId: string, keyId: string, _before: KeyMade): Promise<KeyMade> {
  const { officeId } = await agentSeat();
  const made = await attempt((client) =>
    client.call(sensorRoutes.rotateSensorKey, { params: { officeId, farmId, keyId }, json: {} }),
  );
  return made.done ? shown(officeId, farmId, made.value) : { message: said(made.problem) };
}

export async function revokeKey(farmId: string, keyId: string, _before: KeyMade): Promise<KeyMade> {
  const { officeId } = await agentSeat();
  const done = await attempt((client) =>
    client.call(sensorRoutes.revokeSensorKey, { params: { officeId, farmId, keyId }, json: {} }),
  );
  if (!done.done) return { message: said(done.problem) };
  redirect(`/sensors/${farmId}?saved=keyRevoked#keys`);
}

/** The list of keys is read again; the secret goes to the page alone. */
async function shown(officeId: string, farmId: string, key: { secret: string; seriesIds: string[] }) {
  revalidatePath(`/sensors/${farmId}`);
  const { series } = await call(sensorRoutes.listSeries, { params: { officeId, farmId } });
  return {
    secret: key.secret,
    names: series.filter((s) => key.seriesIds.includes(s.id)).map((s) => s.name),
  };
}

const said = ({ detail, title }: Problem): string => detail ?? title;
