import { adviceRoutes, type Draft, farmRoutes, importRoutes } from "@pith/contract";
import { type Api, bodies } from "./support.ts";

/** A furnished farm of office A, made over HTTP by its agent as anybody would. */

export type Furnished = Awaited<ReturnType<typeof furnish>>;

export async function furnish(api: Api, { plantings = 1 } = {}) {
  const pith = api.client(api.agent);
  const params = { officeId: api.office.id, farmId: api.farm.id };
  const site = await pith.call(farmRoutes.sites.add, { params, json: bodies.site });
  const valve = await pith.call(farmRoutes.valves.add, { params, json: bodies.valve(site.id) });
  const bed = await pith.call(farmRoutes.beds.add, { params, json: bodies.bed(site.id, valve.id) });
  const structure = await pith.call(farmRoutes.structures.add, {
    params,
    json: bodies.structure(site.id),
  });
  const material = await pith.call(farmRoutes.materials.add, { params, json: bodies.material });
  const plantingIds: string[] = [];
  for (let i = 0; i < plantings; i++) {
    const json = { ...bodies.planting(bed.id), varietyName: `Tarn ${i + 1}` };
    plantingIds.push((await pith.call(farmRoutes.plantings.add, { params, json })).id);
  }
  return {
    ...params,
    siteId: site.id,
    valveId: valve.id,
    bedId: bed.id,
    structureId: structure.id,
    materialId: material.id,
    plantingIds,
    plantingId: plantingIds[0] ?? "",
  };
}

/** Reads a file; nothing is saved yet. */
export const preview = (
  api: Api,
  farm: Pick<Furnished, "officeId" | "farmId">,
  json: Parameters<typeof previewBody>[0],
) => api.client(api.agent).call(importRoutes.previewImport, { params: farm, json: previewBody(json) });

const previewBody = (json: {
  kind: "soil-tests" | "weather" | "forecast";
  csv: string;
  siteId?: string;
  bedId?: string;
  issuedAt?: string;
  columns?: { header: string; field: string | null; unit: string | null; extractant: string | null }[];
}) => ({ fileName: "file.csv", ...json });

/** Open advice of the farm, most urgent first. */
export async function openAdvice(api: Api, farm: Pick<Furnished, "officeId" | "farmId">): Promise<Draft[]> {
  const { drafts } = await api.client(api.agent).call(adviceRoutes.getRound, {
    params: { officeId: farm.officeId },
    query: { farmId: farm.farmId },
  });
  return drafts;
}

/** Issues a draft as the agent who has just read it. */
export async function issue(api: Api, officeId: string, draftId: string, note: string | null = null) {
  const pith = api.client(api.agent);
  const params = { officeId, draftId };
  const { stateSha256 } = await pith.call(adviceRoutes.getDraft, { params });
  return pith.call(adviceRoutes.issueDraft, { params, json: { stateSha256, note } });
}
