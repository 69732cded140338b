import { handOn } from "../../../../../features/keeping/handOn.ts";

/** What another office exported, taken in: all of it, or one farm. */
export function POST(request: Request): Promise<Response> {
  const what = new URL(request.url).searchParams.get("what") === "farm" ? "moves" : "import";
  return handOn(request, (officeId) => `/v1/offices/${officeId}/${what}`);
}
