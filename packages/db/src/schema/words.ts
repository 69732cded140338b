/**
 * The words that columns hold. They repeat the rules' and the wire's, because this package imports nothing of ours; a
 * test holds them to each other and to the CHECK constraints.
 */
export const ROLES = ["lead", "agent", "farmer", "reader"] as const;
export const UNITS = ["metric", "us"] as const;
export const WATERING_METHODS = ["drip", "sprinkler", "furrow", "hand"] as const;
export const BED_KINDS = ["ground", "containers"] as const;
export const CERTIFICATIONS = ["none", "transition", "certified"] as const;
export const CERTIFIED_USES = ["allowed", "restricted", "prohibited", "unknown"] as const;
export const COVERS = ["none", "fleece", "low-tunnel", "high-tunnel", "heated-house"] as const;
/** What a sensor can stand under in its bed. */
export const SENSOR_COVERS = ["fleece", "low-tunnel", "high-tunnel", "heated-house"] as const;
export const MULCHES = ["none", "black", "clear", "white", "silver", "organic"] as const;
export const SPECIES = ["annuum", "chinense", "baccatum", "frutescens", "pubescens"] as const;
export const MEDIA = ["mineral-soil", "organic-soil", "potting-medium"] as const;
export const IMPORT_KINDS = ["soil-tests", "weather", "forecast"] as const;
/** Services that forecasts are pulled from. */
export const FORECAST_SOURCES = ["met-norway"] as const;
export const IMPORT_STATUSES = ["staged", "saved", "discarded"] as const;
export const SOIL_WATER_KINDS = ["tension-kpa", "water-content"] as const;
export const PLANT_TEST_KINDS = ["petiole-sap", "leaf"] as const;
export const SUBJECT_KINDS = [
  "planting",
  "valve",
  "bed",
  "structure",
  "shed",
  "bed-plan",
  "trial",
  "farm-season",
] as const;
export const SHADE_SIDES = ["north", "east", "south", "west"] as const;
export const PICK_AT = ["green", "colour"] as const;
export const SPRAY_TARGETS = ["insects", "mites", "disease", "weeds", "other"] as const;
/** Work on a bed that no other record speaks of. */
export const WORK_TASKS = [
  "setting-out",
  "covering",
  "airing",
  "topping",
  "hardening",
  "weeding",
  "other",
] as const;
export const PHOTO_TYPES = ["image/jpeg", "image/png", "image/webp"] as const;
export const MISSING_REASONS = ["plants-lost", "not-measured", "mixed-up", "spoiled"] as const;
/** How a person is told, and when. */
export const CHANNELS = ["mail", "push", "text"] as const;
export const TIMINGS = ["off", "at-once", "daily"] as const;
export const DELIVERED = ["waiting", "sent", "dropped", "failed"] as const;
export const LINK_KINDS = ["calendar", "stop-mail"] as const;
export const ANSWER_KINDS = ["advice", "needs-more", "does-not-apply", "refused"] as const;
export const FARMER_ANSWERS = ["done", "not-done", "cannot"] as const;
export const ADVISORY_STATUSES = [
  "issued",
  "read",
  "done",
  "not-done",
  "cannot",
  "withdrawn",
  "superseded",
  "expired",
] as const;
/** For which advice a second agent must say yes. */
export const SECOND_READERS = ["never", "rules", "danger", "always"] as const;

// Lists that grow with the rules: the rules check them at the door, so the database has no CHECK to keep in step.
export const MARKET_TYPES = [
  "bell",
  "sweet-long",
  "mini-sweet",
  "pimiento",
  "padron-type",
  "poblano-type",
  "anaheim-type",
  "jalapeno-type",
  "serrano-type",
  "cayenne-type",
  "thai-type",
  "paprika",
  "habanero-type",
  "aji-type",
  "rocoto-type",
  "ornamental",
] as const;
export const BASE_TEMPERATURE_FROM = ["published", "seed-company", "own-records"] as const;
export const NOTE_KINDS = [
  "true-leaves",
  "height-cm",
  "stem-diameter-mm",
  "soil-temperature-10cm-c",
  "buds-visible",
  "first-flower",
  "fruit-set",
  "first-pick",
  "stem-green",
  "stem-woody",
  "leggy",
  "hardened",
  "growing-point-dead",
  "growing-point-alive",
  "new-leaf",
  "no-new-leaf",
  "spare-plants",
  "wilting-at-dawn",
  "end-rot",
  "sunscald",
  "disease-signs",
  "container-drains",
  "emerged",
  "potted-on",
  "flower-drop",
  "mites",
  "ground-cover-pct",
  "seed-leaves-open",
  "mature-green",
  "colouring",
  "tip-taken",
  "remark",
] as const;
export const GLAZINGS = [
  "single-glass",
  "single-poly",
  "double-poly",
  "double-poly-infrared",
  "twin-wall-polycarbonate",
  "triple-wall-polycarbonate",
] as const;
export const INNER_LAYERS = ["none", "fleece", "inner-film", "thermal-screen"] as const;
export const MATERIAL_KINDS = [
  "ammonium-sulfate",
  "urea",
  "ammonium-nitrate",
  "calcium-nitrate",
  "potassium-nitrate",
  "magnesium-nitrate",
  "potassium-sulfate",
  "potassium-chloride",
  "langbeinite",
  "single-superphosphate",
  "triple-superphosphate",
  "monoammonium-phosphate",
  "diammonium-phosphate",
  "monopotassium-phosphate",
  "magnesium-sulfate",
  "gypsum",
  "borax",
  "soluble-borate",
  "compound",
  "compost",
  "manure",
  "poultry-manure",
  "blood-meal",
  "bone-meal",
  "feather-meal",
  "soybean-meal",
  "cottonseed-meal",
  "fish",
  "kelp",
  "wood-ash",
  "calcitic-lime",
  "dolomitic-lime",
  "hydrated-lime",
  "burnt-lime",
  "sulfur",
  "ferrous-sulfate",
  "other",
] as const;
