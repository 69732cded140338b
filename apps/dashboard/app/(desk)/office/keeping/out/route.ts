import { handOn } from "../../../../../features/keeping/handOn.ts";

/** Everything the office owns as a file, or one farm. */
export function GET(request: Request): Promise<Response> {
  const asked = new URL(request.url).searchParams;
  const farm = asked.get("farm");
  return handOn(request, (officeId) => {
    const office = `/v1/offices/${officeId}`;
    if (farm !== null) return `${office}/farms/${encodeURIComponent(farm)}/export`;
    return asked.get("as") === "csv" ? `${office}/export.zip` : `${office}/export`;
  });
}
