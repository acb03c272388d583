import { useState, useSyncExternalStore } from 'react'
import { text } from '#web/text/text.ts'
import { hasLooseText, keptNow, onKept, takeNewer } from './keep.ts'
import { onStanding, standingNow } from './standing.ts'
import type { Standing } from './standing.ts'
import './notice.css'

function wordsFor({ server, engine, version }: Standing): string {
  if (server === 'there') return ''
  if (server === 'back') return text.offline.back
  if (engine === 'unable') return text.offline.unable
  return engine === 'ready' && version !== null ? text.offline.here(version) : text.offline.starting
}

function Newer({ worker }: { worker: ServiceWorker }) {
  const [isSure, setSure] = useState(false)
  const take = () => (isSure || !hasLooseText() ? takeNewer(worker) : setSure(true))
  return (
    <p className="notice">
      <span>{isSure ? text.offline.looseText : text.offline.newer}</span>{' '}
      <button type="button" onClick={take}>
        {isSure ? text.offline.takeAnyway : text.offline.takeNewer}
      </button>
    </p>
  )
}

/** Says when the page works without the server, when that is back, and when a newer version is there. */
export function OfflineNotice() {
  const standing = useSyncExternalStore(onStanding, standingNow)
  const { newer } = useSyncExternalStore(onKept, keptNow)
  const words = wordsFor(standing)
  return (
    <div className="screen-only">
      <div aria-live="polite">
        {words !== '' && (
          <p className="notice" data-server={standing.server}>
            {words}
          </p>
        )}
      </div>
      {newer && <Newer worker={newer} />}
    </div>
  )
}

/** One line at the foot, once it is true. */
export function KeptLine() {
  const { ready } = useSyncExternalStore(onKept, keptNow)
  return ready && <p className="kept-line">{text.offline.ready}</p>
}
