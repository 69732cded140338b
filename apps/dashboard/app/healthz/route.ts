/** Says that the dashboard answers; it asks nothing of the API. */
export const GET = () => Response.json({ status: "ok" });
