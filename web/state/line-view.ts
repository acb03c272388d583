import type { Question } from '#web/client/question.ts'
import type { Resolved, ResolvedNames } from '#web/client/use-resolve.ts'
import type { BenchLine } from './bench.ts'

/** How a line stands with the server: what its name was found to mean, or what has to be asked. */
export type Standing =
  | { state: 'unread' }
  | { state: 'waiting' }
  | { state: 'failed' }
  | { state: 'known'; id: string; inci: string | null; note: string | null; tier: Resolved['tier'] }
  | { state: 'ask' | 'unknown'; note: string | null; choices: Resolved['choices'] }

export function standingOf(line: BenchLine, resolved: Question<ResolvedNames>): Standing {
  if (line.kind === 'unread') return { state: 'unread' }
  const hit = resolved.state === 'ready' ? resolved.data.get(line.name.slice(0, 200)) : undefined
  const note = hit?.note ?? null
  if (line.chosen !== null) {
    const choice = hit?.choices.find(({ ingredient }) => ingredient === line.chosen)
    const inci = hit?.ingredient === line.chosen ? hit.inci : (choice?.inci ?? null)
    return { state: 'known', id: line.chosen, inci, note: null, tier: hit?.tier ?? null }
  }
  if (!hit) return { state: resolved.state === 'failed' ? 'failed' : 'waiting' }
  if (hit.status === 'found' && hit.ingredient !== null) {
    return { state: 'known', id: hit.ingredient, inci: hit.inci, note, tier: hit.tier }
  }
  return { state: hit.status === 'ask' ? 'ask' : 'unknown', note, choices: hit.choices }
}
