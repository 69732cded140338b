import { recordRoutes } from "@pith/contract";
import {
  addApplication,
  addBedHistory,
  addDelivery,
  addDrainReading,
  addHarvest,
  addNote,
  addPhoto,
  addPlantTest,
  addSign,
  addSoilWater,
  addSpray,
  addWatering,
  addWaterTest,
  addWork,
  getPhoto,
  getRecords,
  getWeather,
  removeApplication,
  removeBedHistory,
  removeDelivery,
  removeDrainReading,
  removeHarvest,
  removeNote,
  removePhoto,
  removePlantTest,
  removeSign,
  removeSoilWater,
  removeSpray,
  removeWatering,
  removeWaterTest,
  removeWork,
} from "@pith/services";
import type { App } from "../env.ts";

/** What was really done and seen. */
export function recordRoutesOf(app: App) {
  const { notes, applications, waterings, harvests, waterTests, soilWater } = recordRoutes;
  const { deliveries, plantTests, drainReadings } = recordRoutes;
  const { signs, sprays, bedHistory, photos, works } = recordRoutes;
  app.openapi(recordRoutes.getRecords, async (c) =>
    c.json(await getRecords(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("query")), 200),
  );
  app.openapi(recordRoutes.getWeather, async (c) => {
    const { farmId, siteId } = c.req.valid("param");
    return c.json(await getWeather(c.get("ctx"), farmId, siteId, c.req.valid("query")), 200);
  });

  app.openapi(notes.add, async (c) =>
    c.json(await addNote(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("json")), 201),
  );
  app.openapi(notes.remove, async (c) => {
    const { farmId, id } = c.req.valid("param");
    return c.json(await removeNote(c.get("ctx"), farmId, id), 200);
  });
  app.openapi(applications.add, async (c) =>
    c.json(await addApplication(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("json")), 201),
  );
  app.openapi(applications.remove, async (c) => {
    const { farmId, id } = c.req.valid("param");
    return c.json(await removeApplication(c.get("ctx"), farmId, id), 200);
  });
  app.openapi(waterings.add, async (c) =>
    c.json(await addWatering(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("json")), 201),
  );
  app.openapi(waterings.remove, async (c) => {
    const { farmId, id } = c.req.valid("param");
    return c.json(await removeWatering(c.get("ctx"), farmId, id), 200);
  });
  app.openapi(harvests.add, async (c) =>
    c.json(await addHarvest(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("json")), 201),
  );
  app.openapi(harvests.remove, async (c) => {
    const { farmId, id } = c.req.valid("param");
    return c.json(await removeHarvest(c.get("ctx"), farmId, id), 200);
  });
  app.openapi(waterTests.add, async (c) =>
    c.json(await addWaterTest(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("json")), 201),
  );
  app.openapi(waterTests.remove, async (c) => {
    const { farmId, id } = c.req.valid("param");
    return c.json(await removeWaterTest(c.get("ctx"), farmId, id), 200);
  });
  app.openapi(soilWater.add, async (c) =>
    c.json(await addSoilWater(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("json")), 201),
  );
  app.openapi(soilWater.remove, async (c) => {
    const { farmId, id } = c.req.valid("param");
    return c.json(await removeSoilWater(c.get("ctx"), farmId, id), 200);
  });
  app.openapi(deliveries.add, async (c) =>
    c.json(await addDelivery(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("json")), 201),
  );
  app.openapi(deliveries.remove, async (c) => {
    const { farmId, id } = c.req.valid("param");
    return c.json(await removeDelivery(c.get("ctx"), farmId, id), 200);
  });
  app.openapi(plantTests.add, async (c) =>
    c.json(await addPlantTest(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("json")), 201),
  );
  app.openapi(plantTests.remove, async (c) => {
    const { farmId, id } = c.req.valid("param");
    return c.json(await removePlantTest(c.get("ctx"), farmId, id), 200);
  });
  app.openapi(drainReadings.add, async (c) =>
    c.json(await addDrainReading(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("json")), 201),
  );
  app.openapi(drainReadings.remove, async (c) => {
    const { farmId, id } = c.req.valid("param");
    return c.json(await removeDrainReading(c.get("ctx"), farmId, id), 200);
  });
  app.openapi(signs.add, async (c) =>
    c.json(await addSign(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("json")), 201),
  );
  app.openapi(signs.remove, async (c) => {
    const { farmId, id } = c.req.valid("param");
    return c.json(await removeSign(c.get("ctx"), farmId, id), 200);
  });
  app.openapi(sprays.add, async (c) =>
    c.json(await addSpray(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("json")), 201),
  );
  app.openapi(sprays.remove, async (c) => {
    const { farmId, id } = c.req.valid("param");
    return c.json(await removeSpray(c.get("ctx"), farmId, id), 200);
  });
  app.openapi(works.add, async (c) =>
    c.json(await addWork(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("json")), 201),
  );
  app.openapi(works.remove, async (c) => {
    const { farmId, id } = c.req.valid("param");
    return c.json(await removeWork(c.get("ctx"), farmId, id), 200);
  });
  app.openapi(bedHistory.add, async (c) =>
    c.json(await addBedHistory(c.get("ctx"), c.req.valid("param").farmId, c.req.valid("json")), 201),
  );
  app.openapi(bedHistory.remove, async (c) => {
    const { farmId, id } = c.req.valid("param");
    return c.json(await removeBedHistory(c.get("ctx"), farmId, id), 200);
  });
  app.openapi(photos.add, async (c) => {
    const { farmId, signId } = c.req.valid("param");
    return c.json(await addPhoto(c.get("ctx"), farmId, signId, c.req.valid("json")), 201);
  });
  app.openapi(photos.get, async (c) => {
    const { farmId, id } = c.req.valid("param");
    const { mediaType, bytes } = await getPhoto(c.get("ctx"), farmId, id);
    // A picture never changes; only this person's browser may keep it.
    return c.body(bytes, 200, { "content-type": mediaType, "cache-control": "private, max-age=86400" });
  });
  app.openapi(photos.remove, async (c) => {
    const { farmId, id } = c.req.valid("param");
    return c.json(await removePhoto(c.get("ctx"), farmId, id), 200);
  });
}
