import { isDeclared } from '#engine/checks/allergen-sums.ts'
import type { AllergenSum } from '#engine/checks/allergen-sums.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { Position, ShareRange } from '#engine/model/label.ts'
import { roundTo } from '#engine/units/round.ts'
import type { Say } from '#engine/words/say.ts'
import { euName, titleCase, usName } from './label-names.ts'
import type { Part } from './label-parts.ts'

/** A position before it is put in its place. */
interface Placed {
  name: string
  ingredient: string | null
  percent: ShareRange
  group: Position['group']
  from: string[]
  notes: string[]
}

const ONE_PERCENT = 1
const ROUNDING = 1e-9

const middle = ({ min, max }: ShareRange): number => (min + max) / 2

/** In the EU the order is free strictly below 1 %, in the US at 1 % or less; a range is taken at its upper end. */
const isOrdered = ({ max }: ShareRange, market: string): boolean =>
  market === 'eu' ? max >= ONE_PERCENT - ROUNDING : max > ONE_PERCENT + ROUNDING

const isColour = (subject: Subject, context: FormulaContext): boolean =>
  context.rolesOf(subject)[0]?.role.endsWith('colour') === true

/** The declared allergen that a part is itself: it is named once, by the name of the law. */
const declaredAs = (subject: Subject, sums: readonly AllergenSum[], context: FormulaContext): AllergenSum | undefined =>
  sums.find((sum) => sum.allergen.members.includes(subject.id) && isDeclared(sum, context))

function placedOf(part: Part, sums: readonly AllergenSum[], context: FormulaContext): Placed {
  const { subject, percent, from, notes } = part
  const { knowledge, say } = context.world
  const colour = isColour(subject, context)
  const group = colour ? 'colour' : isOrdered(percent, context.formula.market) ? 'ordered' : 'free'
  const placed = { ingredient: subject.id, percent, group, from, notes } as const
  if (context.formula.market === 'us') return { ...placed, name: usName(subject, knowledge) }
  const own = euName(subject, knowledge, colour)
  const allergen = declaredAs(subject, sums, context)
  const name = allergen ? titleCase(allergen.allergen.label) : own
  return { ...placed, name, notes: name === own ? notes : [...notes, say`named by the law in place of ${own}`] }
}

/** What stands under one name is one position: iron oxides in the US, several lavender oils by the law's name for them. */
function merged(placed: readonly Placed[], market: string): Placed[] {
  const sums = new Map<string, Placed>()
  for (const one of placed) {
    const known = sums.get(one.name)
    if (!known) {
      sums.set(one.name, one)
      continue
    }
    const percent = { min: known.percent.min + one.percent.min, max: known.percent.max + one.percent.max }
    const group =
      known.group === 'colour' && one.group === 'colour' ? 'colour' : isOrdered(percent, market) ? 'ordered' : 'free'
    sums.set(one.name, {
      ...known,
      percent,
      group,
      from: [...new Set([...known.from, ...one.from])].sort(),
      notes: [...new Set([...known.notes, ...one.notes])],
    })
  }
  return [...sums.values()]
}

/** Allergens to declare that are no ingredient of their own: named out of the scents that bring them. */
const namedOut = (sums: readonly AllergenSum[], context: FormulaContext): Placed[] =>
  sums
    .filter((sum) => isDeclared(sum, context))
    .map((sum) => ({
      name: titleCase(sum.allergen.label),
      ingredient: null,
      percent: { min: sum.min_percent, max: sum.max_percent },
      group: 'allergen' as const,
      from: sum.from,
      notes: [],
    }))

const ORDER: Record<Position['group'], number> = { ordered: 0, free: 1, allergen: 2, colour: 3 }

/** Descending by share, ties by name, so that one formula has one list. */
const byPlace = (a: Placed, b: Placed): number =>
  ORDER[a.group] - ORDER[b.group] ||
  middle(b.percent) - middle(a.percent) ||
  ((a.ingredient ?? a.name) < (b.ingredient ?? b.name) ? -1 : 1)

const shareText = ({ min, max }: ShareRange, say: Say): string =>
  max - min < 1e-6 ? say`${say.short(max)} %` : say`${say.short(min)} to ${say.short(max)} %`

/** Share and place of a position; from which share on the order counts differs by market. */
function placeText({ group, percent }: Placed, market: string, say: Say): string {
  const share = shareText(percent, say)
  const isEu = market === 'eu'
  if (group === 'allergen')
    return say`${share}, fragrance allergen to declare, named out of what brings it; part of those lines, not beside them`
  if (group === 'colour') return say`${share}, colour: last, in any order`
  if (group === 'ordered')
    return isEu ? say`${share}, by mass, as 1 % or more` : say`${share}, by mass, as more than 1 %`
  return isEu
    ? say`${share}, below 1 %: any order behind the others, here by mass`
    : say`${share}, at 1 % or less: any order behind the others, here by mass`
}

/** A neighbour whose range overlaps could stand before it: then the order hangs on the supplier's figures. */
const isUnsure = (a: Placed, b: Placed | undefined): boolean =>
  b?.group === 'ordered' && a.group === 'ordered' && b.percent.max > a.percent.min + ROUNDING

const DECIMALS = 7
const rounded = ({ min, max }: ShareRange): ShareRange => ({ min: roundTo(min, DECIMALS), max: roundTo(max, DECIMALS) })

/** The list in legal order, each position with its share, its place and its origin. */
export function positionsOf(parts: readonly Part[], sums: readonly AllergenSum[], context: FormulaContext): Position[] {
  const { market } = context.formula
  const { say } = context.world
  const own = merged(
    parts.map((part) => placedOf(part, sums, context)),
    market,
  )
  const names = new Set(own.map(({ name }) => name))
  const all = [...own, ...namedOut(sums, context).filter(({ name }) => !names.has(name))].sort(byPlace)
  return all.map((one, at) => {
    const unsure = isUnsure(one, all[at + 1]) ? [say`could change places with ${all[at + 1]?.name ?? ''}`] : []
    const why = [placeText(one, market, say), ...one.notes, ...unsure].join('; ')
    const { name, ingredient, group, from } = one
    return { name, ingredient, percent: rounded(one.percent), group, why, from }
  })
}
