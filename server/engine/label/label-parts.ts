import type { FormulaContext, FormulaLine } from '#engine/formula/context.ts'
import { rangeOfProperty, wordOf } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { World } from '#engine/graph/world.ts'
import type { ShareRange } from '#engine/model/label.ts'
import type { Say } from '#engine/words/say.ts'
import { blendName } from './label-names.ts'

/** One substance of the formula once blends and solutions are taken apart. */
export interface Part {
  subject: Subject
  percent: ShareRange
  /** lines that bring it, by id */
  from: string[]
  /** how it was taken apart, in words */
  notes: string[]
}

/** A blend that is named but not recorded: its parts are known, their shares are not. */
export const isOpenBlend = ({ tier, madeOf }: Subject): boolean => tier === 'inventory' && madeOf.length > 0

/** Above this a solution is sold as the substance itself. */
const NEARLY_PURE_PERCENT = 95

/** Whether a raw material is the substance in water, so that what is not active matter is water. */
const isWatery = (subject: Subject): boolean =>
  wordOf(subject, 'solubility') === 'water' && ['liquid', 'paste'].includes(wordOf(subject, 'form') ?? '')

/** Active matter of a line [% of the line]: as stated, else the range of the record. Null where the line is sold pure. */
export function strengthOf({ subject, strength_percent }: FormulaLine): ShareRange | null {
  const range = rangeOfProperty(subject, 'active_percent')
  const max = strength_percent ?? range?.max ?? range?.min
  const min = strength_percent ?? range?.min ?? range?.max
  if (min === undefined || max === undefined || min >= NEARLY_PURE_PERCENT) return null
  return { min, max: Math.min(100, max) }
}

const part = (line: FormulaLine, subject: Subject, percent: ShareRange, note?: string): Part => ({
  subject,
  percent,
  from: [line.subject.id],
  notes: note === undefined ? [] : [note],
})

const scaled = ({ min, max }: ShareRange, share_percent: number): ShareRange => ({
  min: (min * share_percent) / 100,
  max: (max * share_percent) / 100,
})

function partsOfBlend(line: FormulaLine, say: Say): Part[] {
  const { subject, share_percent } = line
  if (isOpenBlend(subject)) {
    const note = say`in ${blendName(subject.inci)} at a share that nobody stated`
    return subject.parts.map((one) => part(line, one.subject, { min: 0, max: share_percent }, note))
  }
  return subject.parts.map((one) => {
    const percent = share_percent * one.share
    return part(line, one.subject, { min: percent, max: percent }, say`part of ${blendName(subject.inci)}`)
  })
}

function partsOfSolution(line: FormulaLine, world: World): Part[] | null {
  const { say } = world
  const water = world.find('aqua')
  const { subject, share_percent } = line
  const strength = strengthOf(line)
  if (!strength || !water || subject.id === water.id || !isWatery(subject)) return null
  const rest = { min: 100 - strength.max, max: 100 - strength.min }
  return [
    part(line, subject, scaled(strength, share_percent), say`counted without its water`),
    part(line, water, scaled(rest, share_percent), say`water of ${blendName(subject.inci)}`),
  ]
}

const add = (a: Part, b: Part): Part => ({
  subject: a.subject,
  percent: { min: a.percent.min + b.percent.min, max: a.percent.max + b.percent.max },
  from: [...new Set([...a.from, ...b.from])].sort(),
  notes: [...new Set([...a.notes, ...b.notes])].sort(),
})

/**
 * All substances of a formula by id: blends taken apart into their parts, watery solutions into substance and water, what
 * stands twice added up. The sums of the lower and upper ends enclose 100 %.
 */
export function partsOf(context: FormulaContext): Part[] {
  const { world } = context
  const sums = new Map<string, Part>()
  for (const line of context.lines) {
    const parts =
      line.subject.madeOf.length > 0 ? partsOfBlend(line, world.say) : (partsOfSolution(line, world) ?? [wholeOf(line)])
    for (const one of parts) {
      const known = sums.get(one.subject.id)
      sums.set(one.subject.id, known ? add(known, one) : one)
    }
  }
  return [...sums.values()].sort((a, b) => (a.subject.id < b.subject.id ? -1 : 1))
}

const wholeOf = (line: FormulaLine): Part =>
  part(line, line.subject, { min: line.share_percent, max: line.share_percent })
