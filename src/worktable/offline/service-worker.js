/* global self, caches, fetch, File, Response, __FILES__, __EDITION__ */
// Keeps the page on the device, so that it opens without a network. The build puts in the two constants:
// every file that is wanted at once, and a name that changes with any of them.
const files = __FILES__;
const edition = __EDITION__;

self.addEventListener('install', (event) => {
  event.waitUntil(caches.open(edition).then((cache) => cache.addAll(files)));
});

self.addEventListener('activate', (event) => {
  const older = caches
    .keys()
    .then((names) => names.filter((name) => name.startsWith('rondure-') && name !== edition));
  event.waitUntil(
    older
      .then((names) => Promise.all(names.map((name) => caches.delete(name))))
      .then(() => self.clients.claim()),
  );
});

// The page asks for it once the maker has said yes; until then the older edition goes on.
self.addEventListener('message', ({ data }) => {
  if (data === 'take the new edition') void self.skipWaiting();
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method === 'POST' && request.url === new URL('./shared', self.location.href).href) {
    event.respondWith(takeShared(request));
    return;
  }
  if (request.method !== 'GET' || origin !== self.location.origin) return;
  if (!pathname.startsWith(new URL(self.registration.scope).pathname)) return;
  event.respondWith(answer(request));
});

async function answer(request) {
  const cache = await caches.open(edition);
  const kept = await cache.match(request, { ignoreSearch: true });
  if (kept) return kept;
  const fresh = await fetch(request);
  // Large fonts are wanted by few: they are kept when they come for the first time.
  if (fresh.ok && fresh.type === 'basic') await cache.put(request, fresh.clone());
  return fresh;
}

/** A file that another app hands over: it never leaves the device, and the page takes it from where it is laid. */
async function takeShared(request) {
  const file = (await request.formData()).get('file');
  if (file instanceof File) {
    const cache = await caches.open('shared with rondure');
    const headers = { 'file-name': encodeURIComponent(file.name), 'content-type': file.type };
    await cache.put('./shared-file', new Response(file, { headers }));
  }
  return Response.redirect('./?shared', 303);
}
