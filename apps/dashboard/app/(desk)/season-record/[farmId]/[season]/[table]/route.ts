import { redirect } from "next/navigation";
import { forward } from "../../../../../../features/imports/forward.ts";
import { seat } from "../../../../../../server/seat.ts";

interface Props {
  params: Promise<{ farmId: string; season: string; table: string }>;
}

/** One table of the record as a file. */
export async function GET(request: Request, { params }: Props) {
  const { farmId, season, table } = await params;
  const query = new URLSearchParams({ season, table });
  const path = (officeId: string) =>
    `/v1/offices/${officeId}/farms/${encodeURIComponent(farmId)}/season-record.csv?${query}`;
  return forward(request, path, ["content-disposition"], anybody);
}

async function anybody() {
  const mine = await seat();
  if (!mine) redirect("/");
  return mine;
}
