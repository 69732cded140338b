// Shows what the office sends while no page is open. It gets a title, a farm and a link; the advice is read on the page.
self.addEventListener("push", (event) => {
  const { title, farm, link } = event.data?.json() ?? {};
  if (typeof title !== "string") return;
  event.waitUntil(
    self.registration.showNotification(title, { body: farm, icon: "/icon.svg", tag: link, data: { link } }),
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
