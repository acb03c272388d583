import type { FormulaContext } from '#engine/formula/context.ts'
import type { LimitRow } from '#engine/model/records.ts'
import type { Say } from '#engine/words/say.ts'
import type { Check, Hit } from './check.ts'
import { entriesOf } from './law-entries.ts'
import type { Entry } from './law-entries.ts'
import { fitOf, givesWay } from './law-fit.ts'
import { isInForce } from './law-judge.ts'
import { lawHit } from './law-say.ts'

/** Words on the label are due above a share of their own, where the row names one. */
export const isWarningDue = ({ warning, warning_above_percent }: LimitRow, counted_percent: number): boolean =>
  warning !== undefined && counted_percent > (warning_above_percent ?? 0)

/** Rows in force that bear on the product for certain, or if it is meant for a use that they name. */
const rowsHere = ({ limit }: Entry, context: FormulaContext): { row: LimitRow; use?: string }[] =>
  limit.rows
    .filter((row) => isInForce(row, limit, context.placedOn) && !givesWay(row, limit.rows, context))
    .flatMap((row) => {
      const { fits, asks } = fitOf(row, context)
      if (fits === 'yes') return [{ row }]
      const isNamedUse = fits === 'unknown' && asks.every(({ kind }) => kind === 'use' || kind === 'professional')
      return isNamedUse ? [{ row, use: row.scope.only ?? '' }] : []
    })

/** Words of a label one by one, as the tables part them, in the language of the answer. */
const labelWords = ({ warning = '' }: LimitRow, say: Say): string => warning.split('; ').map(say.text).join('; ')

/** A ban or a limit that holds for sprays only: told where nobody stated how the product is dispensed. */
function sprayText(row: LimitRow, context: FormulaContext): string | null {
  const { say } = context.world
  const { asks } = fitOf(row, context)
  if (!row.scope.form || !asks.some(({ kind }) => kind === 'spray') || asks.some(({ kind }) => kind === 'use'))
    return null
  if (row.prohibited) return say`not allowed in sprays`
  return row.max_percent === undefined ? null : say`in sprays at most ${row.max_percent} %`
}

interface Told {
  entry: Entry
  row: LimitRow
  text: string
}

function textsOf(entry: Entry, context: FormulaContext): Told[] {
  const { limit, counted_percent } = entry
  const { say } = context.world
  const said = rowsHere(entry, context).flatMap(({ row, use }): Told[] => {
    const texts = [
      ...(row.condition === undefined ? [] : [say.text(row.condition).replace(/\.$/, '')]),
      ...(isWarningDue(row, counted_percent) ? [say`label: "${labelWords(row, say)}"`] : []),
    ]
    return texts.map((text) => ({
      entry,
      row,
      text: use === undefined ? text : say`if meant as ${say.text(use)}: ${text}`,
    }))
  })
  const sprays = limit.rows
    .filter((row) => isInForce(row, limit, context.placedOn))
    .flatMap((row) => {
      const text = sprayText(row, context)
      return text === null ? [] : [{ entry, row, text }]
    })
  // An opinion with figures is told when they are passed; its conditions are not printed beside them.
  return limit.kind === 'law' || isGuidance(entry) ? [...said, ...sprays] : sprays
}

/** An opinion without a figure has nothing but its condition; one with a figure is told when the figure is passed. */
const isGuidance = ({ limit }: Entry): boolean =>
  limit.kind === 'opinion' && !limit.rows.some(({ max_percent, prohibited }) => max_percent !== undefined || prohibited)

/** Bans and limits of one entry are records of their own; what they have to tell is told once. */
const entryKey = ({ limit, members }: Entry): string =>
  `${limit.market} ${limit.act} ${limit.entry} ${members.map(({ subject }) => subject.id).join(' ')}`

const isTold = (entry: Entry): boolean => entry.members.length > 0 && entry.concern === 'yes'

/** rule:law-condition. Conditions and label words that cannot be computed. */
export const lawCondition: Check = (context) => {
  const byEntry = new Map<string, Told[]>()
  for (const entry of entriesOf(context).filter(isTold)) {
    byEntry.set(entryKey(entry), [...(byEntry.get(entryKey(entry)) ?? []), ...textsOf(entry, context)])
  }
  return [...byEntry.values()].flatMap((told): Hit[] => {
    const [first] = told
    if (!first) return []
    const { say } = context.world
    const texts = [...new Set(told.map((one) => one.text))].join('; ')
    const text = first.entry.limit.kind === 'opinion' ? say`guidance, not law: ${texts}` : texts
    return [{ ...lawHit({ ...first, text }, say), severity: 'note' }]
  })
}
