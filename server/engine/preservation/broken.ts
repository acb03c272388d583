import type { FormulaContext, FormulaLine } from '#engine/formula/context.ts'
import { holdsHere } from '#engine/formula/when.ts'
import type { Subject } from '#engine/graph/subject.ts'
import { matches } from '#engine/knowledge/selector.ts'
import type { ClassClash, Relation } from '#engine/model/records.ts'
import { inside } from '#engine/units/range.ts'
import type { Sure } from './strength.ts'

type Clash = (ClassClash | Relation) & Pick<Partial<ClassClash>, 'unless'>

type Meeting = readonly [Clash, Subject]

function lookUp(agent: Subject, other: Subject, clashes: readonly ClassClash[]): readonly Meeting[] {
  const declared = (first: Subject, second: Subject): Meeting[] => [
    ...[...first.clashSides[0]].flatMap((index): Meeting[] => {
      const clash = second.clashSides[1].has(index) ? clashes[index] : undefined
      return clash ? [[clash, second]] : []
    }),
    ...first.clashes.filter((clash) => matches(clash.with, second)).map((clash): Meeting => [clash, second]),
  ]
  return [...declared(agent, other), ...declared(other, agent)]
}

/** What two records have against each other does not depend on the formula. */
const pairs = new WeakMap<Subject, WeakMap<Subject, readonly Meeting[]>>()

/** Clashes between an agent and a neighbour, whichever of the two declares them, with the side that `min_percent` counts. */
function clashesBetween(agent: Subject, other: Subject, clashes: readonly ClassClash[]): readonly Meeting[] {
  const known = pairs.get(agent) ?? new WeakMap<Subject, readonly Meeting[]>()
  pairs.set(agent, known)
  const found = known.get(other)
  if (found) return found
  const meetings = lookUp(agent, other, clashes)
  known.set(other, meetings)
  return meetings
}

function holds(clash: Clash, second: Subject, lines: readonly FormulaLine[], context: FormulaContext): boolean {
  const share = lines.reduce((sum, { subject, share_percent }) => (subject === second ? sum + share_percent : sum), 0)
  if (clash.min_percent !== undefined && share < clash.min_percent) return false
  if (clash.unless && holdsHere(clash.unless, second, context, share)) return false
  return !clash.ph || (context.ph !== null && inside(context.ph, clash.ph))
}

/** What a neighbour that stops an agent may leave of it, and what one that weakens it surely leaves. A rule of thumb. */
const LEFT: Record<'breaks' | 'weakens' | 'poor', Sure> = {
  breaks: { least: 0, most: 0.3 },
  weakens: { least: 0.5, most: 1 },
  poor: { least: 1, most: 1 },
}

const WHOLE: Sure = { least: 1, most: 1 }

/** How a neighbour of the wrong charge, a clay or a reaction leaves an agent, 0 to 1: the worst of all neighbours. */
export function leftByNeighbours(agent: Subject, context: FormulaContext): Sure {
  const { clashes } = context.world.knowledge
  let left = WHOLE
  for (const { subject } of context.lines) {
    if (subject.id === agent.id) continue
    for (const [clash, second] of clashesBetween(agent, subject, clashes)) {
      if (!holds(clash, second, context.lines, context)) continue
      const { least, most } = LEFT[clash.severity ?? 'breaks']
      left = { least: Math.min(left.least, least), most: Math.min(left.most, most) }
    }
  }
  return left
}
