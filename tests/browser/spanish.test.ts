import { afterAll, expect, test } from "vitest";
import en from "../../apps/dashboard/messages/en.json" with { type: "json" };
import es from "../../apps/dashboard/messages/es.json" with { type: "json" };
import { closeBrowser, openPage } from "./browser.ts";

afterAll(closeBrowser);

type Tree = { [key: string]: string | Tree };
const flat = (tree: Tree): string[] =>
  Object.values(tree).flatMap((value) => (typeof value === "string" ? [value] : flat(value)));
const spanish = new Set(flat(es));
/** Whole sentences of the English catalogue that are no Spanish too: none of them may stand on a Spanish page. */
const ENGLISH = flat(en).filter(
  (text) => text.length > 12 && text.includes(" ") && !/[{<]/.test(text) && !spanish.has(text),
);

test("the main job in Spanish: the agent issues, the farmer reads, answers and finds no English sentence", async () => {
  const agent = await openPage({ role: "agent", locale: "es-MX" });
  const english = async (page: typeof agent.page) => {
    const text = await page.locator("body").innerText();
    return ENGLISH.filter((sentence) => text.includes(sentence));
  };
  await agent.page.goto("/round");
  expect(await agent.page.locator("html").getAttribute("lang")).toBe("es");
  expect(await agent.page.locator("h1").textContent()).toBe("La ronda");
  expect(await english(agent.page)).toEqual([]);

  const farmer = await openPage({ role: "farmer", width: 390, locale: "es-MX" });
  await farmer.page.goto("/record");
  const farmId = (await farmer.page.locator('main a[href^="/record/"]').first().getAttribute("href"))?.split(
    "/",
  )[2];
  await agent.page.goto(`/round?farm=${farmId}&rule=irrigate`);
  await agent.page.locator("[data-entry]").last().click();
  await agent.page.waitForURL("**/drafts/**");
  const decision = await agent.page.locator("h1").textContent();
  expect(decision).toMatch(/[Rr]iegue|[Ee]spere|riego/);
  await agent.page.getByRole("button", { name: "Emitir este consejo" }).click();
  await agent.page.waitForURL("**/issued/**");
  const id = new URL(agent.page.url()).pathname.split("/").at(-1);
  const issued = await agent.page.locator("h1.decision").textContent();

  await farmer.page.goto(`/today/${id}`);
  expect(await farmer.page.locator("h1").textContent()).toBe(issued);
  await expect.poll(() => farmer.page.locator("body").innerText()).toMatch(/Las normas locales/);
  expect(await english(farmer.page)).toEqual([]);
  await farmer.page.getByRole("radio", { name: /No se puede/ }).check();
  await farmer.page.getByLabel("¿Por qué?").fill("La bomba está descompuesta.");
  await farmer.page.getByRole("button", { name: "Mandar la respuesta" }).click();
  await expect
    .poll(() => farmer.page.locator("body").innerText())
    .toContain("Gracias, su respuesta está en la oficina");
  await farmer.page.goto("/today");
  expect(await english(farmer.page)).toEqual([]);

  // The choice at the foot outweighs the browser's language.
  await farmer.page.getByRole("button", { name: "English" }).click();
  await expect.poll(() => farmer.page.locator("html").getAttribute("lang")).toBe("en");
  await farmer.page.getByRole("button", { name: "Español" }).click();
  await expect.poll(() => farmer.page.locator("html").getAttribute("lang")).toBe("es");
  expect([...agent.errors, ...farmer.errors]).toEqual([]);
  await agent.context.close();
  await farmer.context.close();
}, 120_000);
