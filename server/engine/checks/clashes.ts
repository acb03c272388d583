import type { FormulaContext, FormulaLine } from '#engine/formula/context.ts'
import { holdsHere } from '#engine/formula/when.ts'
import type { Subject } from '#engine/graph/subject.ts'
import { matches } from '#engine/knowledge/selector.ts'
import type { ClassClash, Relation, When } from '#engine/model/records.ts'
import { inside } from '#engine/units/range.ts'
import type { Say } from '#engine/words/say.ts'
import type { Check, Hit } from './check.ts'
import { mixtureHere } from './mixture-here.ts'
import { rateHere, WARN_FROM_RATE } from './mixture-rate.ts'
import { because, nameOf, sourcesOf } from './say.ts'

const SEVERITY = { breaks: 'warn', weakens: 'note', poor: 'note' } as const

type Clash = Pick<ClassClash | Relation, 'severity' | 'says' | 'source' | 'ph' | 'min_percent'> & {
  mechanism?: string
  unless?: When
}

interface Meeting {
  clash: Clash
  first: FormulaLine
  second: FormulaLine
}

const REMEDY: Record<string, (say: Say) => string> = {
  charge: (say) => say`Keep to one charge: take a nonionic or amphoteric partner`,
  electrolyte: (say) => say`Take a thickener that bears salts, or leave the salt out`,
  ions: (say) => say`Take a thickener that bears calcium and magnesium, or leave the salt out`,
}

function applies({ clash, first, second }: Meeting, context: FormulaContext): boolean {
  const { ph } = context
  if (clash.unless && holdsHere(clash.unless, first.subject, context, first.share_percent)) return false
  if (clash.min_percent !== undefined && second.share_percent < clash.min_percent) return false
  return !clash.ph || (ph !== null && inside(ph, clash.ph))
}

function hitOf({ clash, first, second }: Meeting, say: Say): Hit {
  const remedy = REMEDY[clash.mechanism ?? '']?.(say)
  const [one, other] = [nameOf(first.subject), nameOf(second.subject)]
  return {
    severity: SEVERITY[clash.severity ?? 'breaks'],
    about: [first.subject.id, second.subject.id].sort(),
    message: say`${one} and ${other}: ${clash.says}`,
    ...(remedy && { remedy }),
    because: [because(clash.says), because(say`${one} beside ${other}`)],
    sources: sourcesOf(clash),
  }
}

/** What two records have against each other does not depend on the formula: looked up once for each pair. */
const ofPair = new WeakMap<Subject, WeakMap<Subject, readonly Clash[]>>()

/** Clashes that `first` declares with `second`: those of its classes, read off the sides worked out when the graph was built, and its own. */
function clashesOf(first: Subject, second: Subject, clashes: readonly ClassClash[]): readonly Clash[] {
  const ofClasses = [...first.clashSides[0]].flatMap((index) =>
    second.clashSides[1].has(index) ? (clashes[index] ?? []) : [],
  )
  return [...ofClasses, ...first.clashes.filter((clash) => matches(clash.with, second))]
}

function meetingsOf(first: FormulaLine, lines: readonly FormulaLine[], clashes: readonly ClassClash[]): Meeting[] {
  const pairs = ofPair.get(first.subject) ?? new WeakMap<Subject, readonly Clash[]>()
  ofPair.set(first.subject, pairs)
  const found: Meeting[] = []
  for (const second of lines) {
    if (second.subject.id === first.subject.id) continue
    let known = pairs.get(second.subject)
    if (!known) {
      known = clashesOf(first.subject, second.subject, clashes)
      pairs.set(second.subject, known)
    }
    for (const clash of known) found.push({ clash, first, second })
  }
  return found
}

/** All clashes in a formula. Several rules read them, so they are worked out once for each context. */
const memo = new WeakMap<FormulaContext, Meeting[]>()

function allMeetings(context: FormulaContext): Meeting[] {
  const known = memo.get(context)
  if (known) return known
  const { clashes } = context.world.knowledge
  const meetings = context.lines.flatMap((first) => meetingsOf(first, context.lines, clashes))
  const applying = meetings.filter((meeting) => applies(meeting, context))
  memo.set(context, applying)
  return applying
}

/** All clashes with one of the given mechanisms; the worst of each pair. */
export function clashCheck(mechanisms: readonly string[]): Check {
  return (context) => {
    const hits = new Map<string, Hit>()
    for (const meeting of allMeetings(context)) {
      if (!mechanisms.includes(meeting.clash.mechanism ?? 'reaction')) continue
      const hit = hitOf(meeting, context.world.say)
      const key = hit.about.join('|')
      if (hits.get(key)?.severity !== 'warn') hits.set(key, hit)
    }
    return [...hits.values()]
  }
}

const chargeClashes = clashCheck(['charge'])
const MIXTURES_SOURCE = 'CHITRE2024'

/** rule:charge-clash. What two ingredients do, counted over mixtures, gives way to the rate of the whole mixture where that is known. */
export const chargeClash: Check = (context) => {
  const hits = chargeClashes(context)
  const here = hits.some(({ sources }) => sources.includes(MIXTURES_SOURCE)) ? mixtureHere(context) : null
  const rate = here && rateHere(here, context)
  if (!rate || rate.rate >= WARN_FROM_RATE) return hits
  return hits.map((hit) =>
    hit.sources.every((source) => source === MIXTURES_SOURCE) ? { ...hit, severity: 'note' } : hit,
  )
}
/** rule:ion-clash */
export const ionClash = clashCheck(['electrolyte', 'ions'])
/** rule:reaction-clash */
export const reactionClash = clashCheck(['reaction', 'oxidation', 'hydrolysis', 'solubility'])
/** rule:binding-clash */
export const bindingClash = clashCheck(['binding', 'adsorption'])
