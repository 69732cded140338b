import { type FarmDetail, sensorRoutes } from "@pith/contract";
import type { Plan } from "../forms/plan.ts";

/** What the form of a series asks. */
export const seriesSchema = sensorRoutes.addSeries.request.body.content["application/json"].schema;

export const seriesPlan = (farm: FarmDetail): Plan => ({
  labels: "series",
  choices: {
    siteId: farm.sites.map(({ id, name }) => ({ value: id, label: name })),
    bedId: farm.beds.map(({ id, name }) => ({ value: id, label: name })),
  },
  sections: [
    { title: "what", fields: ["label", "name", "quantity", "unit"] },
    { title: "where", fields: ["siteId", "bedId", "cover", "depthCm", "heightM"] },
    { title: "when", fields: ["expectedEveryS", "silentAfterS", "keepMonths"] },
  ],
});

/** A new series as most are. */
export const ordinary = {
  quantity: "air-temperature",
  unit: "Cel",
  expectedEveryS: 600,
  silentAfterS: 7200,
  keepMonths: 14,
};
