// `files` and `name` stand before this text; the build writes them.
addEventListener("install", (event) => {
  event.waitUntil(
    caches
      .open(name)
      .then((cache) => cache.addAll(files.map((file) => new Request(file, { cache: "reload" }))))
      .then(() => skipWaiting()),
  );
});

addEventListener("activate", (event) => {
  const isOld = (key) => key.startsWith("bondmil-try-") && key !== name;
  event.waitUntil(
    caches
      .keys()
      .then((keys) => Promise.all(keys.filter(isOld).map((key) => caches.delete(key))))
      .then(() => clients.claim()),
  );
});

addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET") return;
  event.respondWith(
    caches
      .open(name)
      .then((cache) => cache.match(request, { ignoreSearch: true }))
      .then((kept) => kept ?? fetch(request)),
  );
});
