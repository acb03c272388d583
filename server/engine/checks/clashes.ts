import { matches } from '#engine/knowledge/selector.ts'
import type { ClassClash, Relation } from '#engine/model/records.ts'
import { inside } from '#engine/units/range.ts'
import type { FormulaContext, FormulaLine } from '#engine/formula/context.ts'
import type { Check, Hit } from './check.ts'
import { because, nameOf, sourcesOf } from './say.ts'

const SEVERITY = { breaks: 'warn', weakens: 'note', poor: 'note' } as const

type Clash = Pick<ClassClash | Relation, 'severity' | 'says' | 'source' | 'ph' | 'min_percent'> & { mechanism?: string }

const REMEDY: Record<string, string> = {
  charge: 'Keep to one charge: take a nonionic or amphoteric partner',
  electrolyte: 'Take a thickener that bears salts, or leave the salt out',
  ions: 'Take a thickener that bears calcium and magnesium, or leave the salt out',
}

function applies(clash: Clash, second: FormulaLine, { ph }: FormulaContext): boolean {
  if (clash.min_percent !== undefined && second.share_percent < clash.min_percent) return false
  return !clash.ph || (ph !== null && inside(ph, clash.ph))
}

function hitOf(clash: Clash, first: FormulaLine, second: FormulaLine): Hit {
  const remedy = REMEDY[clash.mechanism ?? '']
  return {
    severity: SEVERITY[clash.severity ?? 'breaks'],
    about: [first.subject.id, second.subject.id].sort(),
    message: `${nameOf(first.subject)} and ${nameOf(second.subject)}: ${clash.says}`,
    ...(remedy && { remedy }),
    because: [because(clash.says), because(`${nameOf(first.subject)} beside ${nameOf(second.subject)}`)],
    sources: sourcesOf(clash),
  }
}

/** Clashes between classes that meet in this pair of lines, read off the sides worked out when the graph was built. */
function* classClashes(
  a: FormulaLine,
  b: FormulaLine,
  clashes: readonly ClassClash[],
): Generator<[ClassClash, FormulaLine, FormulaLine]> {
  for (const [first, second] of [
    [a, b],
    [b, a],
  ] as const) {
    for (const index of first.subject.clashSides[0]) {
      const clash = clashes[index]
      if (clash && second.subject.clashSides[1].has(index)) yield [clash, first, second]
    }
  }
}

function* pairsOf(lines: readonly FormulaLine[]): Generator<[FormulaLine, FormulaLine]> {
  for (const [index, a] of lines.entries()) {
    for (const b of lines.slice(index + 1)) if (a.subject.id !== b.subject.id) yield [a, b]
  }
}

/** All clashes with one of the given mechanisms; the worst of each pair. */
export function clashCheck(mechanisms: readonly string[]): Check {
  const wanted = (clash: { mechanism?: string }) => mechanisms.includes(clash.mechanism ?? 'reaction')
  return (context) => {
    const hits = new Map<string, Hit>()
    const add = (hit: Hit) => {
      const key = hit.about.join('|')
      if (hits.get(key)?.severity !== 'warn') hits.set(key, hit)
    }
    for (const [a, b] of pairsOf(context.lines)) {
      for (const [clash, first, second] of classClashes(a, b, context.world.knowledge.clashes)) {
        if (wanted(clash) && applies(clash, second, context)) add(hitOf(clash, first, second))
      }
      for (const [own, other] of [
        [a, b],
        [b, a],
      ] as const) {
        for (const clash of own.subject.clashes) {
          if (wanted(clash) && matches(clash.with, other.subject) && applies(clash, other, context))
            add(hitOf(clash, own, other))
        }
      }
    }
    return [...hits.values()]
  }
}

/** rule:charge-clash */
export const chargeClash = clashCheck(['charge'])
/** rule:ion-clash */
export const ionClash = clashCheck(['electrolyte', 'ions'])
/** rule:reaction-clash */
export const reactionClash = clashCheck(['reaction', 'oxidation', 'hydrolysis', 'solubility'])
/** rule:binding-clash */
export const bindingClash = clashCheck(['binding', 'adsorption'])
