// Keeps one whole version of the app on the device, and serves only that.
//
// A version is complete or it is not there: each file's SHA-256 is compared with the build's list
// before it is kept, in a cache whose name no other build has. Until every file is right, and the
// page asks for it, the version in use stays as it is.

const BUILD = "{{build}}";
// Name and SHA-256 of every file of this build.
const FILES = {
{{files}}
};

// Caches belong to the whole origin; two copies of the app in two folders must not meet.
const OURS = `pitleaf ${new URL(self.registration.scope).pathname} `;
const CACHE = OURS + BUILD;
const at = (name) => new URL(name, self.registration.scope).href;
const LISTED = new Map(Object.keys(FILES).map((name) => [at(name), at(name)]).concat([[at("./"), at("index.html")]]));

// Languages in folders of this one, which have workers of their own.
const OTHERS = [{{others}}];

const sum = async (bytes) => {
  const digest = await crypto.subtle.digest("SHA-256", bytes);
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, "0")).join("");
};

// The file if its bytes are the build's, made anew: a copy of a redirected answer may not open a page.
const checked = async (response, wanted) => {
  if (!response?.ok) return undefined;
  const bytes = await response.arrayBuffer();
  if (await sum(bytes) !== wanted) return undefined;
  return new Response(bytes, { headers: { "Content-Type": response.headers.get("Content-Type") ?? "" } });
};

const keep = async (cache, name, wanted) => {
  const url = at(name);
  // From the nearest place that has the right bytes: an older version or an interrupted installation,
  // what the page itself has just loaded, and only then the host again, past every cache between.
  const file = await checked(await caches.match(url), wanted)
    ?? await checked(await fetch(url), wanted)
    ?? await checked(await fetch(url, { cache: "reload" }), wanted);
  if (!file) throw new Error(`${name} did not arrive as it was built`);
  await cache.put(url, file);
};

const install = async () => {
  const cache = await caches.open(CACHE);
  await Promise.all(Object.entries(FILES).map(([name, wanted]) => keep(cache, name, wanted)));
};

const activate = async () => {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith(OURS) && name !== CACHE).map((name) => caches.delete(name)));
  await self.clients.claim();
};

const answer = async (request, url) => {
  const listed = LISTED.get(url.origin + url.pathname);
  if (!listed) {
    return request.mode === "navigate" ? Response.redirect(at("./")) : new Response("", { status: 404 });
  }
  const cache = await caches.open(CACHE);
  // Only a browser that threw the cache away leaves nothing here; then the network is all there is.
  return await cache.match(listed) ?? fetch(request);
};

self.addEventListener("install", (event) => event.waitUntil(install()));
self.addEventListener("activate", (event) => event.waitUntil(activate()));
self.addEventListener("message", (event) => {
  if (event.data?.take === true) self.skipWaiting();
});
self.addEventListener("fetch", (event) => {
  const url = new URL(event.request.url);
  const ours = url.origin === self.location.origin;
  if (OTHERS.some((language) => url.href.startsWith(at(`${language}/`)))) return;
  event.respondWith(ours ? answer(event.request, url) : Response.error());
});
