import type { GraphEdge } from '#web/client/use-graph.ts'
import { gradeWords, severityWords } from '#web/format/code-words.ts'
import { rangeText } from '#web/format/number.ts'
import { sourceWords } from '#web/format/source.ts'
import { text } from '#web/text/text.ts'
import { explorer } from '#web/text/explorer.ts'

const T = explorer.detail

function levelWords({ relation, level_percent }: GraphEdge): string {
  if (!level_percent) return ''
  const { typical, ...range } = level_percent
  const words = rangeText(range) || (typical === undefined ? '' : rangeText({ min: typical, max: typical }))
  return words === '' ? '' : relation === 'made-of' ? T.share(words) : T.level(words)
}

function windowWords({ relation, ph, heat_c }: GraphEdge): string {
  if (relation !== 'holds-with') return ''
  const phWords = ph === undefined ? '' : ph === null ? T.phNever : T.ph(rangeText(ph))
  return T.holds(phWords, heat_c ? T.heat(rangeText(heat_c)) : '')
}

/** What an edge says beside its ends: circumstances, level, ratio, windows. */
export function saysOf(edge: GraphEdge): string {
  const { says = '', severity = '', ratio, grade = '' } = edge
  const parts = [
    says,
    severityWords(severity),
    gradeWords(grade),
    levelWords(edge),
    ratio === undefined ? '' : T.ratio(ratio),
    windowWords(edge),
  ]
  return parts.filter((part) => part !== '').join('; ')
}

/** Relations that the list of roles states itself. */
const OF_ROLES = ['broader', 'confused-with']

/** Where an edge is known from and how that was seen. */
export function seenOf({ relation, source, locator = '', access }: GraphEdge): string {
  if (source === undefined) return OF_ROLES.includes(relation) ? T.noEvidence : ''
  const sources = source.split(/\s*;\s*/)
  const works = sources.slice(0, 3).map(sourceWords).join(', ') + (sources.length > 3 ? '…' : '')
  const how = access === undefined ? '' : text.ingredient.accesses[access]
  const isPlain = works === how || source === 'memory' || source === 'practice'
  return [works, isPlain ? '' : locator, isPlain ? '' : how].filter((part) => part !== '').join(', ')
}
