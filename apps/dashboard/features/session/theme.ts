"use server";

import { cookies } from "next/headers";
import { z } from "zod";
import { YEAR_S } from "./year.ts";

/** Keeps the choice of light or dark; "system" follows the device again. */
export async function chooseTheme(data: FormData): Promise<void> {
  const theme = z.enum(["system", "light", "dark"]).parse(data.get("theme"));
  const jar = await cookies();
  if (theme === "system") jar.delete("theme");
  else jar.set("theme", theme, { maxAge: YEAR_S, sameSite: "lax", path: "/", httpOnly: true });
}
