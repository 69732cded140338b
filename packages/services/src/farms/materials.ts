import { farmRoutes, type Material } from "@pith/contract";
import { materials } from "@pith/db";
import { MaterialSchema, parseAtTheDoor } from "@pith/rules";
import { materialPart } from "../states/parts.ts";
import type { BodyOf } from "../wellFormed.ts";
import { listMaterials } from "./listMaterials.ts";
import { type Thing, verbsOf } from "./things.ts";

const material: Thing<Material, BodyOf<typeof farmRoutes.materials.add>> = {
  one: "material",
  routes: farmRoutes.materials,
  list: listMaterials,
  save: (tx, at, id, value) =>
    tx
      .insert(materials)
      .values({ ...at, id, ...value })
      .onConflictDoUpdate({ target: [materials.officeId, materials.id], set: value }),
  check: async (_tx, _at, id, value) => {
    parseAtTheDoor(MaterialSchema, materialPart({ id, ...value }));
  },
};

export const { get: getMaterial, add: addMaterial, change: changeMaterial } = verbsOf(material);
