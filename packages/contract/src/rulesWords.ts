/** Words and small shapes that the wire shares with the rules, so that neither can drift. */
export {
  ANIMALS,
  ASH_ORIGINS,
  CERTIFIED_USES,
  COVERS,
  FUELS,
  GLAZINGS,
  GuideSchema,
  INNER_LAYERS,
  MARKET_TYPES,
  MATERIAL_KINDS,
  MULCHES,
  NOTE_KINDS,
  PLANT_NUTRIENTS,
  PLANT_TEST_KINDS,
  PLANT_TEST_STAGES,
  POTTING_MEDIA,
  SettingsSchema,
  SOIL_WATER_KINDS,
  SoilSchema,
  SPECIES,
} from "@pith/rules";
export const VALVE_METHODS = ["drip", "sprinkler", "furrow", "hand"] as const;
export const BED_CERTIFICATIONS = ["none", "transition", "certified"] as const;
