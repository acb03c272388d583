import { setServer, standingNow } from './standing.ts'

const ASK_AGAIN_MS = 5_000
const PATIENCE_MS = 4_000
const SAY_SO_MS = 20_000

let timer: ReturnType<typeof setTimeout> | undefined

const isThere = (): Promise<boolean> =>
  fetch('/api/health', { cache: 'no-store', signal: AbortSignal.timeout(PATIENCE_MS) }).then(
    ({ ok }) => ok,
    () => false,
  )

async function look(): Promise<void> {
  clearTimeout(timer)
  if (await isThere()) serverIsBack()
  else timer = setTimeout(() => void look(), ASK_AGAIN_MS)
}

/** The server did not answer: asks now and then whether it is back. */
export function watchForServer(): void {
  if (standingNow().server === 'away') return
  setServer('away')
  clearTimeout(timer)
  timer = setTimeout(() => void look(), ASK_AGAIN_MS)
}

/** Says so for a while, then nothing more. */
export function serverIsBack(): void {
  if (standingNow().server !== 'away') return
  setServer('back')
  clearTimeout(timer)
  timer = setTimeout(() => setServer('there'), SAY_SO_MS)
}

/** The browser knows first when a network comes up. */
export function listenForNetwork(): void {
  window.addEventListener('online', () => {
    if (standingNow().server === 'away') void look()
  })
}
