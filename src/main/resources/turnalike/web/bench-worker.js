// Keeps the bench view at hand without a connection: what came last is shown when nothing comes.
"use strict";
const SHELF = "turnalike-bench";

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));
self.addEventListener("message", (event) => {
  event.waitUntil(
    caches.open(SHELF).then((shelf) => shelf.addAll(event.data)).then(() => event.source && event.source.postMessage("at hand")),
  );
});
self.addEventListener("fetch", (event) => {
  if (event.request.method !== "GET") return;
  event.respondWith(
    fetch(event.request)
      .then((answer) => {
        if (answer.ok) {
          const copy = answer.clone();
          event.waitUntil(caches.open(SHELF).then((shelf) => shelf.put(event.request, copy)));
        }
        return answer;
      })
      .catch(() => caches.match(event.request).then((had) => had || Response.error())),
  );
});
