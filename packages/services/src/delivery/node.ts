/** What reaches outwards, for the Node worker alone: an edge runtime has neither sockets to guard nor long errands. */
export { guardedPost } from "./guardedPost.ts";
export { httpTexts } from "./httpTexts.ts";
export { recordingTexts } from "./recordingTexts.ts";
export { webPush } from "./webPush.ts";
