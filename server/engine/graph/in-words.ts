import type { Limit, LimitRow, When } from '#engine/model/records.ts'
import { rangeText } from '#engine/units/range.ts'
import type { World } from './world.ts'

const anyOf = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`

function termText(term: string, world: World): string {
  if (term.startsWith('!')) return `not ${termText(term.slice(1), world)}`
  if (term.startsWith('class:')) return `any ${term.slice(6)}`
  if (term.startsWith('role:')) return world.knowledge.roles.get(term.slice(5))?.label ?? term.slice(5)
  return world.find(term)?.inci ?? term
}

const selectorText = (selector: string, world: World): string =>
  selector
    .split('&')
    .map((term) => termText(term.trim(), world))
    .join(' and ')

/** Circumstances of a statement for people: "in powder or bar, at pH 2 to 4.5". */
export function whenText(when: When, world: World): string {
  const many = (selectors: readonly string[]) => anyOf(selectors.map((one) => selectorText(one, world)))
  return [
    when.form && `in ${anyOf(when.form)}`,
    when.product && `in ${when.product} products`,
    when.areas && `on ${anyOf(when.areas)}`,
    when.min_percent !== undefined && `from ${when.min_percent} %`,
    when.max_percent !== undefined && `up to ${when.max_percent} %`,
    when.ph && `at pH ${rangeText(when.ph)}`,
    when.with && `beside ${many(when.with)}`,
    when.without && `without ${many(when.without)}`,
  ]
    .filter(Boolean)
    .join(', ')
}

const USES: Record<string, string> = {
  preservative: 'as preservative',
  'not-preservative': 'other than as preservative',
  'uv-filter': 'as UV filter',
  fragrance: 'as fragrance',
  'hair-dye': 'as hair dye',
}

function whereText({ scope }: LimitRow, use: string): string {
  return [
    USES[use],
    scope.product && `in ${scope.product} products`,
    scope.form && `in the form of ${anyOf(scope.form)}`,
    scope.areas && `on ${anyOf(scope.areas)}`,
    scope.not_areas && `not on ${anyOf(scope.not_areas)}`,
    scope.only && `only: ${scope.only}`,
  ]
    .filter(Boolean)
    .join(', ')
}

function boundText(row: LimitRow, basis: string | undefined): string | undefined {
  if (row.prohibited) return 'prohibited'
  return row.max_percent === undefined ? undefined : `at most ${row.max_percent} %${basis ? ` ${basis}` : ''}`
}

function rowText(row: LimitRow, limit: Limit): string {
  const from = row.warning_above_percent === undefined ? '' : ` above ${row.warning_above_percent} %`
  return [
    [boundText(row, limit.basis), whereText(row, limit.use)].filter(Boolean).join(' '),
    row.ph && `pH ${rangeText(row.ph)}`,
    row.condition,
    row.warning && `label${from}: "${row.warning}"`,
    row.applies_from && `applies from ${row.applies_from}`,
    row.older_stock_until && `goods already on the market until ${row.older_stock_until}`,
    row.note,
  ]
    .filter(Boolean)
    .join('; ')
}

/** One sentence a row of a legal entry; an opinion of experts is said to be one. */
export function limitTexts(limit: Limit): string[] {
  const lead = limit.kind === 'opinion' ? 'opinion of experts, not law: ' : ''
  return limit.rows.map((row) => `${lead}${rowText(row, limit)}`).filter((text) => text !== lead)
}
