import type { Limit, LimitRow, When } from '#engine/model/records.ts'
import type { Say } from '#engine/words/say.ts'
import type { World } from './world.ts'

function termText(term: string, world: World): string {
  if (term.startsWith('!')) return world.say`not ${termText(term.slice(1), world)}`
  if (term.startsWith('class:')) return world.say`any ${term.slice(6)}`
  if (term.startsWith('role:')) return world.knowledge.roles.get(term.slice(5))?.label ?? term.slice(5)
  return world.find(term)?.inci ?? term
}

const selectorText = (selector: string, world: World): string =>
  selector
    .split('&')
    .map((term) => termText(term.trim(), world))
    .join(` ${world.say`and`} `)

/** Circumstances of a statement for people: "in powder or bar, at pH 2 to 4.5". */
export function whenText(when: When, world: World): string {
  const { say } = world
  const any = (words: readonly string[]) => say.list(words.map(say.text), 'or')
  const many = (selectors: readonly string[]) =>
    say.list(
      selectors.map((one) => selectorText(one, world)),
      'or',
    )
  return [
    when.form && say`in ${any(when.form)}`,
    when.product && say`in ${say.text(when.product)} products`,
    when.areas && say`on ${any(when.areas)}`,
    when.min_percent !== undefined && say`from ${when.min_percent} %`,
    when.max_percent !== undefined && say`up to ${when.max_percent} %`,
    when.ph && say`at pH ${say.range(when.ph)}`,
    when.with && say`beside ${many(when.with)}`,
    when.without && say`without ${many(when.without)}`,
  ]
    .filter(Boolean)
    .join(', ')
}

const USES: Record<string, (say: Say) => string> = {
  preservative: (say) => say`as preservative`,
  'not-preservative': (say) => say`other than as preservative`,
  'uv-filter': (say) => say`as UV filter`,
  fragrance: (say) => say`as fragrance`,
  'hair-dye': (say) => say`as hair dye`,
}

function whereText({ scope }: LimitRow, use: string, say: Say): string {
  const any = (words: readonly string[]) => say.list(words.map(say.text), 'or')
  return [
    USES[use]?.(say),
    scope.product && say`in ${say.text(scope.product)} products`,
    scope.form && say`in the form of ${any(scope.form)}`,
    scope.areas && say`on ${any(scope.areas)}`,
    scope.not_areas && say`not on ${any(scope.not_areas)}`,
    scope.only && say`only: ${say.text(scope.only)}`,
  ]
    .filter(Boolean)
    .join(', ')
}

function boundText(row: LimitRow, basis: string | undefined, say: Say): string | undefined {
  if (row.prohibited) return say`prohibited`
  if (row.max_percent === undefined) return undefined
  const bound = say`at most ${row.max_percent} %`
  return basis ? `${bound} ${say.text(basis)}` : bound
}

function labelText({ warning, warning_above_percent: above }: LimitRow, say: Say): string | undefined {
  if (!warning) return undefined
  return above === undefined ? say`label: "${say.text(warning)}"` : say`label above ${above} %: "${say.text(warning)}"`
}

function rowText(row: LimitRow, limit: Limit, say: Say): string {
  return [
    [boundText(row, limit.basis, say), whereText(row, limit.use, say)].filter(Boolean).join(' '),
    row.ph && say`pH ${say.range(row.ph)}`,
    row.condition && say.text(row.condition),
    labelText(row, say),
    row.applies_from && say`applies from ${row.applies_from}`,
    row.older_stock_until && say`goods already on the market until ${row.older_stock_until}`,
    row.note && say.text(row.note),
  ]
    .filter(Boolean)
    .join('; ')
}

/** Act, number and subject of a legal entry. */
export const limitTitle = ({ act, entry, title }: Limit, say: Say): string =>
  [say.text(act), say`entry ${entry}`, say.text(title)].filter((part) => part !== '').join(', ')

/** One sentence a row of a legal entry; an opinion of experts is said to be one. */
export function limitTexts(limit: Limit, say: Say): string[] {
  const lead = limit.kind === 'opinion' ? say`opinion of experts, not law: ` : ''
  return limit.rows.map((row) => `${lead}${rowText(row, limit, say)}`).filter((text) => text !== lead)
}
