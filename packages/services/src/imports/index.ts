export { forgetLabMapping, listLabMappings } from "./labMappings.ts";
export { Stopped, type Watch } from "./progress.ts";
export { refusedCsv } from "./refusedCsv.ts";
export { discardImport, getImport, listImports, saveImport } from "./save.ts";
export { previewImport } from "./stage.ts";
