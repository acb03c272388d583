/** What the browser keeps of this page for use without a server. */
export interface Kept {
  /** page and data are kept */
  ready: boolean
  /** another version is kept and waits to take over */
  newer: ServiceWorker | null
}

const LOOK_EVERY_MS = 60 * 60_000

let kept: Kept = { ready: false, newer: null }
const listeners = new Set<() => void>()

function change(next: Partial<Kept>): void {
  kept = { ...kept, ...next }
  for (const listener of listeners) listener()
}

export const keptNow = (): Kept => kept

/** @returns how to stop listening */
export function onKept(listener: () => void): () => void {
  listeners.add(listener)
  return () => void listeners.delete(listener)
}

/** What is installed beside a version in use waits; the first one does not. */
function watch(registration: ServiceWorkerRegistration): void {
  const look = () => change({ newer: registration.active ? registration.waiting : null })
  look()
  registration.addEventListener('updatefound', () => {
    registration.installing?.addEventListener('statechange', look)
  })
  setInterval(() => void registration.update().catch(() => undefined), LOOK_EVERY_MS)
}

async function keep(): Promise<void> {
  const { serviceWorker } = navigator
  try {
    watch(await serviceWorker.register('/sw.js', { updateViaCache: 'none' }))
    await serviceWorker.ready
    change({ ready: true })
  } catch {
    // Private windows and full disks refuse: the page works on, only not without its server.
  }
}

/** Keeps page and data once the page has settled. Browsers offer it on https and on this very machine only. */
export function keepForLater(): void {
  if (!('serviceWorker' in navigator)) return
  const soon = () => void setTimeout(() => void keep(), 1000) // the first answers go before
  if (document.readyState === 'complete') soon()
  else window.addEventListener('load', soon, { once: true })
}

/** Fields for a recipe: what they hold stands on no bench yet. */
const pasteFields = () => [...document.querySelectorAll<HTMLTextAreaElement>('form.paste textarea')]

/** What they hold, by the place of the field. */
export const looseText = (): Record<string, string> =>
  Object.fromEntries(pasteFields().map(({ dataset, value }) => [dataset['place'] ?? '', value]))

/** Whether a recipe stands in its field and on no bench yet: the one thing that a reload would lose. */
export const hasLooseText = (): boolean => pasteFields().some(({ value }) => value.trim() !== '')

/** Has the version that waits take over, and loads it. Other tabs go on with theirs. */
export function takeNewer(newer: ServiceWorker): void {
  navigator.serviceWorker.addEventListener('controllerchange', () => window.location.reload(), { once: true })
  newer.postMessage('take-over')
}
