import type { FormulaContext } from '#engine/formula/context.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { WouldWork } from '#engine/model/swap.ts'
import { commonPh } from '#engine/checks/report.ts'
import { nameOf } from '#engine/checks/say.ts'
import { rebalance, takesUpDifference } from '#engine/dose/rebalance.ts'
import { roundTo } from '#engine/units/round.ts'
import { contextAfter, replaceLines } from './apply.ts'
import { look } from './trial.ts'
import type { Before } from './trial.ts'
import type { Placed } from './apply.ts'

interface Question {
  before: Before
  /** ids that are missing, of which nothing comes back */
  out: ReadonlySet<string>
  placed: Placed
  /** what it clashes with */
  conflict: readonly Finding[]
}

/** Nothing that forbids is left when the formula is like this. */
function holds(formula: FormulaContext['formula'], { before, out, placed }: Question): boolean {
  const after = contextAfter(formula, before.context)
  return look(after, before, new Set([...out, placed.stand.id])).conflict.length === 0
}

const swapped = ({ before, out, placed }: Question, share_percent = placed.share_percent) =>
  replaceLines(before.context, out, [{ ...placed, share_percent }])

/** The nearest pH at which the stand-in would hold, however far it is and whether or not it may be moved. */
function atAnotherPh(question: Question): WouldWork | null {
  const { before } = question
  const { ph } = before.context
  if (ph === null) return null
  const formula = swapped(question)
  const common = commonPh(contextAfter(formula, before.context))
  if (!common) return null
  const { min = 0, max = 14 } = common
  if (ph >= min && ph <= max) return null
  const target = roundTo(ph < min ? Math.ceil(min * 10) / 10 : Math.floor(max * 10) / 10, 1)
  if (target < min || target > max) return null
  const moved = { ...formula, ph: target }
  if (!holds(moved, question)) return null
  const { say } = before.context.world
  return {
    kind: 'ph',
    text:
      ph < min
        ? say`would hold if the pH were at least ${say.short(target)}`
        : say`would hold if the pH were at most ${say.short(target)}`,
    ...(ph < min ? { min: target } : { max: target }),
    unit: 'pH',
    formula: moved,
  }
}

const HALVINGS = 7

/** The highest dose that would hold, when a lower one does; halved down between nothing and the full dose. */
function atLowerDose(question: Question): WouldWork | null {
  const { share_percent, stand } = question.placed
  const { say } = question.before.context.world
  const least = stand.roles.reduce((min, { level_percent }) => Math.min(min, level_percent?.min ?? min), Infinity)
  if (!Number.isFinite(least) || least >= share_percent || !holds(swapped(question, least), question)) return null
  let [low, high] = [least, share_percent]
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (low + high) / 2
    if (holds(swapped(question, middle), question)) low = middle
    else high = middle
  }
  const most = Math.floor(low * 100) / 100 >= least ? Math.floor(low * 100) / 100 : least
  const formula = swapped(question, most)
  if (!holds(formula, question)) return null
  return {
    kind: 'dose',
    text: say`would hold at no more than ${say.short(most)} %, less than the job asks for`,
    max: most,
    unit: '%',
    ingredient: stand.id,
    formula,
  }
}

/** The one neighbour without which it would hold. */
function withoutNeighbour(question: Question): WouldWork | null {
  const { before, out, placed, conflict } = question
  const formula = swapped(question)
  const named = new Set(conflict.flatMap(({ about }) => about))
  for (const { subject, share_percent } of before.context.lines) {
    if (
      !named.has(subject.id) ||
      out.has(subject.id) ||
      subject.id === placed.stand.id ||
      subject.allRoles.has('water-phase')
    )
      continue
    if (share_percent >= MOST_PERCENT) continue
    const lines = formula.lines.filter(({ ingredient }) => ingredient !== subject.id)
    const filler = takesUpDifference(before.context, new Set([subject.id, placed.stand.id]))
    const less = { ...formula, lines: rebalance(lines, filler, new Set([placed.stand.id])) }
    if (holds(less, question))
      return {
        kind: 'remove',
        text: before.context.world.say`would hold without ${nameOf(subject)}`,
        ingredient: subject.id,
        formula: less,
      }
  }
  return null
}

/** What is more than this of a formula is not left out for the sake of a stand-in. */
const MOST_PERCENT = 20

/** The smallest changes, one at a time, with which a refused stand-in would hold; each was tried and found to. */
export function wouldWork(question: Question): WouldWork[] {
  return [atAnotherPh, atLowerDose, withoutNeighbour].flatMap((change) => change(question) ?? [])
}
