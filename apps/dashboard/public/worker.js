// Keeps the farmer's pages readable without signal, and shows what the office sends while no page is open.

const DAY = "pith-day";
const PARTS = "pith-parts";
/** Longer than this, poor signal is no signal. */
const PATIENCE_MS = 5000;
/** A page that nobody opened and no other page listed for so long is let go. */
const KEPT_MS = 14 * 24 * 3600 * 1000;
/** Only a farm's own pages are kept; nothing of the office's desk is. */
const OURS = /^\/(today|record)(\/|$)/;
const ICON = /^\/(icon|apple-touch-icon)[\w-]*\.(svg|png)$/;

/** Counts up whenever the kept pages are let go: what was asked for before that is not put away after it. */
let turn = 0;
/** How many pages are being put away: until each stands there whole, nobody knows which parts are in use. */
let busy = 0;

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));

self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET") return;
  const address = new URL(request.url);
  if (address.origin !== self.location.origin) return;
  if (address.pathname.startsWith("/_next/static/") || ICON.test(address.pathname)) {
    event.respondWith(partOf(request));
  } else if (address.pathname.startsWith("/sign-in")) {
    // Whoever comes to the door again may be somebody else.
    event.waitUntil(forget());
    if (address.searchParams.has("signed-out")) event.waitUntil(stopTelling());
  } else if (request.mode === "navigate" && OURS.test(address.pathname)) {
    event.respondWith(pageOf(event, address.pathname));
  }
});

self.addEventListener("message", (event) => {
  const { keep, anew } = event.data ?? {};
  // What a page lists is fetched ahead, so that it can be read where it was never opened.
  if (Array.isArray(keep)) event.waitUntil(fetchAhead(keep.filter((path) => typeof path === "string")));
  // The reader has chosen another language, paper or office.
  if (anew) event.waitUntil(keptNames().then((names) => forget().then(() => fetchAhead(names))));
});

async function fetchAhead(paths) {
  const since = turn;
  const fetched = await Promise.all(
    paths
      .filter((path) => OURS.test(path))
      .map((path) =>
        fetch(path, { credentials: "same-origin" }).then(
          (answer) => keep(path, answer, since),
          () => false,
        ),
      ),
  );
  // Without signal nothing is let go.
  if (fetched.includes(true)) await prune();
}

async function forget() {
  turn += 1;
  await caches.delete(DAY);
}

/** Who signs out leaves the phone to others: nothing of theirs is to appear on it. A session that only ended is still told. */
async function stopTelling() {
  await (await self.registration.pushManager?.getSubscription())?.unsubscribe();
}

async function keptNames() {
  const pages = await (await caches.open(DAY)).keys();
  return pages.map(({ url }) => new URL(url).pathname);
}

async function partOf(request) {
  const there = await caches.match(request);
  if (there) return there;
  const answer = await fetch(request);
  if (answer.ok) (await caches.open(PARTS)).put(request, answer.clone());
  return answer;
}

/** A page's name is its path alone: what was just saved is said once, and is no part of it. */
async function pageOf(event, name) {
  const since = turn;
  const asked = fetch(event.request);
  // The reader does not wait for what is put away, and what comes too late for them is put away all the same.
  event.waitUntil(asked.then((answer) => keep(name, answer.clone(), since)).catch(() => {}));
  try {
    return await Promise.race([
      asked,
      new Promise((_, give) => setTimeout(() => give(new Error("no signal")), PATIENCE_MS)),
    ]);
  } catch {
    const there = await keptPage(name);
    if (there) return there;
  }
  try {
    return await asked;
  } catch (error) {
    const day = await keptPage("/today");
    if (day) return day;
    throw error;
  }
}

/** A page out of the store says since when it stands there. */
async function keptPage(name) {
  const there = await (await caches.open(DAY)).match(name);
  if (!there) return undefined;
  const page = await there.text();
  const at = there.headers.get("x-kept-at");
  return new Response(page.replace("<html", `<html data-kept-at="${at}"`), { headers: there.headers });
}

/** Puts away a page that is what it says: no redirect to the door, no error. Answers whether it was. */
async function keep(name, answer, since) {
  if (!answer.ok || answer.redirected) return false;
  if (!answer.headers.get("content-type")?.startsWith("text/html")) return false;
  busy += 1;
  try {
    const page = await answer.text();
    // A page that was never opened needs its scripts too, or nothing can be answered on it.
    const parts = new Set(page.match(/\/_next\/static\/[^"'\\\s]+\.(?:js|css|woff2)/g));
    await Promise.all([...parts].map((path) => partOf(new Request(path)).catch(() => {})));
    const headers = new Headers(answer.headers);
    headers.set("x-kept-at", new Date().toISOString());
    if (since !== turn) return false;
    const day = await caches.open(DAY);
    await day.put(name, new Response(page, { headers }));
    // Somebody left while it was being put away.
    if (since !== turn) await day.delete(name);
    return since === turn;
  } finally {
    busy -= 1;
  }
}

/** Lets go of pages from long ago, and of scripts, styles and letters that no kept page asks for any more. */
async function prune() {
  if (busy > 0) return;
  const [day, parts] = await Promise.all([caches.open(DAY), caches.open(PARTS)]);
  const used = [];
  for (const request of await day.keys()) {
    const page = await day.match(request);
    if (!page) continue;
    if (Date.now() - Date.parse(page.headers.get("x-kept-at")) > KEPT_MS) await day.delete(request);
    else used.push(await page.text());
  }
  const unused = new Map();
  for (const request of await parts.keys()) {
    const { pathname } = new URL(request.url);
    if (!ICON.test(pathname)) unused.set(pathname.slice(pathname.lastIndexOf("/") + 1), request);
  }
  // A style names its letters, and a script may name another that it fetches only when it is wanted.
  for (let text = used.pop(); text !== undefined; text = used.pop()) {
    for (const [name, request] of unused) {
      if (!text.includes(name)) continue;
      unused.delete(name);
      const part = /\.(js|css)$/.test(name) ? await parts.match(request) : undefined;
      if (part) used.push(await part.text());
    }
  }
  if (busy === 0) await Promise.all([...unused.values()].map((request) => parts.delete(request)));
}

// A message gets a title, a farm and a link; the advice is read on the page.
self.addEventListener("push", (event) => {
  const { title, farm, link } = event.data?.json() ?? {};
  if (typeof title !== "string") return;
  event.waitUntil(
    self.registration.showNotification(title, {
      body: farm,
      icon: "/icon-192.png",
      tag: link,
      data: { link },
    }),
  );
});

self.addEventListener("notificationclick", (event) => {
  event.notification.close();
  const { link } = event.notification.data ?? {};
  // Never away from here.
  const address = new URL(typeof link === "string" ? link : "/", self.location.origin);
  if (address.origin !== self.location.origin) return;
  event.waitUntil(
    self.clients.matchAll({ type: "window" }).then(async (open) => {
      const [page] = open;
      if (!page) return self.clients.openWindow(address.href);
      await page.focus();
      return page.navigate(address.href);
    }),
  );
});
