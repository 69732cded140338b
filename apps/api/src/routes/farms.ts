import { farmRoutes } from "@pith/contract";
import {
  addBed,
  addFarm,
  addMaterial,
  addPlanting,
  addSite,
  addStructure,
  addValve,
  changeBed,
  changeFarm,
  changeMaterial,
  changeOfficeSettings,
  changePlanting,
  changeSite,
  changeStructure,
  changeValve,
  getBed,
  getFarm,
  getMaterial,
  getOffice,
  getPlanting,
  getSite,
  getStructure,
  getValve,
  listFarms,
} from "@pith/services";
import type { App } from "../env.ts";

/** The client, its places, its ground and what stands on it. */
export function farmRoutesOf(app: App) {
  const { sites, valves, beds, plantings, materials, structures } = farmRoutes;
  app.openapi(farmRoutes.getOffice, async (c) => c.json(await getOffice(c.get("ctx")), 200));
  app.openapi(farmRoutes.changeOfficeSettings, async (c) =>
    c.json(await changeOfficeSettings(c.get("ctx"), c.req.valid("json")), 200),
  );
  app.openapi(farmRoutes.listFarms, async (c) =>
    c.json(await listFarms(c.get("ctx"), c.req.valid("query")), 200),
  );
  app.openapi(farmRoutes.addFarm, async (c) => c.json(await addFarm(c.get("ctx"), c.req.valid("json")), 201));
  app.openapi(farmRoutes.getFarm, async (c) =>
    c.json(await getFarm(c.get("ctx"), c.req.valid("param").farmId), 200),
  );
  app.openapi(farmRoutes.changeFarm, async (c) =>
    c.json(await changeFarm(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("json")), 200),
  );

  app.openapi(sites.add, async (c) =>
    c.json(await addSite(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("json")), 201),
  );
  app.openapi(sites.get, async (c) => {
    const { farmId, id } = c.req.valid("param");
    return c.json(await getSite(c.get("ctx"), farmId, id), 200);
  });
  app.openapi(sites.change, async (c) => {
    const { farmId, id } = c.req.valid("param");
    return c.json(await changeSite(c.get("ctx"), farmId, id, c.req.valid("json")), 200);
  });
  app.openapi(valves.add, async (c) =>
    c.json(await addValve(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("json")), 201),
  );
  app.openapi(valves.get, async (c) => {
    const { farmId, id } = c.req.valid("param");
    return c.json(await getValve(c.get("ctx"), farmId, id), 200);
  });
  app.openapi(valves.change, async (c) => {
    const { farmId, id } = c.req.valid("param");
    return c.json(await changeValve(c.get("ctx"), farmId, id, c.req.valid("json")), 200);
  });
  app.openapi(beds.add, async (c) =>
    c.json(await addBed(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("json")), 201),
  );
  app.openapi(beds.get, async (c) => {
    const { farmId, id } = c.req.valid("param");
    return c.json(await getBed(c.get("ctx"), farmId, id), 200);
  });
  app.openapi(beds.change, async (c) => {
    const { farmId, id } = c.req.valid("param");
    return c.json(await changeBed(c.get("ctx"), farmId, id, c.req.valid("json")), 200);
  });
  app.openapi(plantings.add, async (c) =>
    c.json(await addPlanting(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("json")), 201),
  );
  app.openapi(plantings.get, async (c) => {
    const { farmId, id } = c.req.valid("param");
    return c.json(await getPlanting(c.get("ctx"), farmId, id), 200);
  });
  app.openapi(plantings.change, async (c) => {
    const { farmId, id } = c.req.valid("param");
    return c.json(await changePlanting(c.get("ctx"), farmId, id, c.req.valid("json")), 200);
  });
  app.openapi(materials.add, async (c) =>
    c.json(await addMaterial(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("json")), 201),
  );
  app.openapi(materials.get, async (c) => {
    const { farmId, id } = c.req.valid("param");
    return c.json(await getMaterial(c.get("ctx"), farmId, id), 200);
  });
  app.openapi(materials.change, async (c) => {
    const { farmId, id } = c.req.valid("param");
    return c.json(await changeMaterial(c.get("ctx"), farmId, id, c.req.valid("json")), 200);
  });
  app.openapi(structures.add, async (c) =>
    c.json(await addStructure(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("json")), 201),
  );
  app.openapi(structures.get, async (c) => {
    const { farmId, id } = c.req.valid("param");
    return c.json(await getStructure(c.get("ctx"), farmId, id), 200);
  });
  app.openapi(structures.change, async (c) => {
    const { farmId, id } = c.req.valid("param");
    return c.json(await changeStructure(c.get("ctx"), farmId, id, c.req.valid("json")), 200);
  });
}
