export { discardImport, getImport, listImports, saveImport } from "./save.ts";
export { previewImport } from "./stage.ts";
