/** Whether the server answers, and whether the page can when it does not. */
export interface Standing {
  server: 'there' | 'away' | 'back'
  engine: 'unasked' | 'starting' | 'ready' | 'unable'
  /** version of the data that the page's engine answers from */
  version: string | null
}

let standing: Standing = { server: 'there', engine: 'unasked', version: null }
const listeners = new Set<() => void>()

function change(next: Partial<Standing>): void {
  const same = Object.entries(next).every(([key, value]) => standing[key as keyof Standing] === value)
  if (same) return
  standing = { ...standing, ...next }
  for (const listener of listeners) listener()
}

export const standingNow = (): Standing => standing

/** @returns how to stop listening */
export function onStanding(listener: () => void): () => void {
  listeners.add(listener)
  return () => void listeners.delete(listener)
}

export const setServer = (server: Standing['server']): void => change({ server })

/** Once ready it stays so: an answer that it owes is no reason to say that it starts. */
export function setEngine(engine: Standing['engine'], version?: string): void {
  change({ engine, ...(version !== undefined && { version }) })
}
