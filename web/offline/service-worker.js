/**
 * Keeps the page for use without a server. The build writes two lines before these: VERSION, and FILES as
 * { path: integrity }. The server's /sw.js says where the data are and loads this file.
 *
 * One cache holds one version: its files and the data of the day it was installed, all or none, each checked against
 * its hash. The next version waits beside it until no tab shows this one, or until a person asks for it.
 */
const PREFIX = 'understudy '
const DATA = self.graphData
const CACHE = `${PREFIX}${VERSION} ${DATA}`
const HOME = '/index.html'

/** Hashed names never change, so the browser's own copy will do; the others are fetched anew. */
const fileOf = ([path, integrity]) =>
  new Request(path, { integrity, cache: path.startsWith('/assets/') ? 'default' : 'reload' })

async function keepAll() {
  const cache = await caches.open(CACHE)
  try {
    await cache.addAll([...Object.entries(FILES).map(fileOf), ...(DATA ? [new Request(DATA)] : [])])
  } catch (error) {
    await caches.delete(CACHE)
    throw error
  }
}

/** Caches of other versions go once at most one tab is open: two may show two versions. */
async function dropOthers() {
  const tabs = await self.clients.matchAll({ type: 'window', includeUncontrolled: true })
  if (tabs.length > 1) return
  const names = await caches.keys()
  await Promise.all(
    names.filter((name) => name.startsWith(PREFIX) && name !== CACHE).map((name) => caches.delete(name)),
  )
}

/** This version's file; of another version only what has a hash in its name and so cannot be mistaken. */
async function kept(path, request) {
  const own = await (await caches.open(CACHE)).match(path, { ignoreVary: true })
  const any = own ?? (path.startsWith('/assets/') ? await caches.match(path, { ignoreVary: true }) : undefined)
  return any ?? fetch(request)
}

self.addEventListener('install', (event) => event.waitUntil(keepAll()))
self.addEventListener('activate', (event) => event.waitUntil(dropOthers().then(() => self.clients.claim())))
self.addEventListener('message', ({ data }) => data === 'take-over' && self.skipWaiting())

self.addEventListener('fetch', (event) => {
  const { request } = event
  const { origin, pathname } = new URL(request.url)
  if (request.method !== 'GET' || origin !== self.location.origin) return
  if (pathname === '/api/graph-data' && DATA) return event.respondWith(kept(DATA, request))
  if (pathname === '/api' || pathname.startsWith('/api/')) return
  const isScreen = request.mode === 'navigate' && !/\.[^/]*$/.test(pathname)
  if (isScreen) event.waitUntil(dropOthers())
  event.respondWith(kept(isScreen ? HOME : pathname, request))
})
