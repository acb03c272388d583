import { hlbOfBlend, requiredHlbOfOils } from '#engine/chemistry/hlb-blend.ts'
import { linesPlayingHere } from '#engine/formula/build-context.ts'
import type { FormulaContext, FormulaLine } from '#engine/formula/context.ts'
import { usedClaim, wordOf } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { Claim } from '#engine/model/claim.ts'
import { gap } from '#engine/units/range.ts'
import type { Range } from '#engine/units/range.ts'
import { roundTo } from '#engine/units/round.ts'
import type { Say } from '#engine/words/say.ts'
import type { Check, Hit } from './check.ts'
import { because, becauseOf, nameOf, sourcesOf } from './say.ts'

type Span = Required<Range>

/** Charged, lamellar and polymeric emulsifiers are not chosen by HLB. */
const NOT_BY_HLB = [
  ...['anionic', 'cationic', 'amphoteric'],
  ...['phospholipid', 'alkyl-glucoside', 'lactylate', 'citrate-ester'],
  ...['acrylic-polymer', 'silicone-emulsifier', 'soap'],
]

const HOLDING = ['emulsifier', 'surfactant', 'solubiliser', 'cationic-conditioner']

/** Neither is one that makes the wanted kind of emulsion by itself. */
function isByHlb({ classes, allRoles }: Subject, form: FormulaContext['form']): boolean {
  const wanted = form === 'water-in-oil' ? 'water-in-oil-emulsifier' : 'oil-in-water-emulsifier'
  const complete = classes.has('complete-emulsifier') && allRoles.has(wanted)
  return classes.has('nonionic') && !complete && !NOT_BY_HLB.some((one) => classes.has(one))
}

/** A fatty acid beside a base becomes soap, and soap is an ionic emulsifier. */
function hasSoap(context: FormulaContext): boolean {
  const bases = [...linesPlayingHere(context, 'base'), ...linesPlayingHere(context, 'lye')]
  return bases.length > 0 && context.lines.some(({ subject }) => subject.classes.has('fatty-acid'))
}

/** Oil gels and oils that rinse off are no emulsions yet: their emulsifier is not balanced to the oil. */
const makesNoEmulsion = (context: FormulaContext, { subject }: FormulaLine): boolean =>
  ['oil-gel-emulsifier', 'oil-cleanser-emulsifier'].includes(context.rolesOf(subject)[0]?.role ?? '')

/** All that is stated, contested values too; null where nothing is. */
function stated(subject: Subject, property: string): { span: Span; claims: Claim[] } | null {
  const claims = (subject.facts.get(property) ?? []).filter((claim) => (claim.value ?? claim.min) !== undefined)
  if (claims.length === 0) return null
  const lows = claims.map(({ value, min }) => value ?? min ?? Infinity)
  const highs = claims.map(({ value, max, min }) => value ?? max ?? min ?? -Infinity)
  return { span: { min: Math.min(...lows), max: Math.max(...highs) }, claims }
}

/** HLB that decides for the emulsifier, as its record has chosen it. */
function chosen(subject: Subject): { span: Span; claims: Claim[] } | null {
  const claim = usedClaim(subject, 'hlb')
  const [min, max] = [claim?.value ?? claim?.min, claim?.value ?? claim?.max ?? claim?.min]
  return claim === undefined || min === undefined || max === undefined ? null : { span: { min, max }, claims: [claim] }
}

/** Emulsifiers that are chosen by HLB, with what they come to together. */
export interface HlbSystem {
  emulsifiers: FormulaLine[]
  withoutHlb: FormulaLine[]
  /** from the lowest to the highest that the stated values allow; null where one is not known */
  span: Span | null
  claims: Claim[]
}

const blendOf = (lines: readonly FormulaLine[], end: 'min' | 'max'): number =>
  hlbOfBlend(lines.map(({ subject, share_percent }) => ({ share_percent, hlb: chosen(subject)?.span[end] ?? 0 })))

/** Glyceryl stearate and the like give body too: the balance is told with and without them. */
function spanOf(emulsifiers: readonly FormulaLine[]): Span {
  const plain = emulsifiers.filter(({ subject }) => !subject.allRoles.has('body-giver'))
  const ways = plain.length > 0 && plain.length < emulsifiers.length ? [emulsifiers, plain] : [emulsifiers]
  return {
    min: Math.min(...ways.map((lines) => blendOf(lines, 'min'))),
    max: Math.max(...ways.map((lines) => blendOf(lines, 'max'))),
  }
}

/** The emulsifiers of a formula as far as HLB rules them; null where something ionic, lamellar, polymeric or complete holds it. */
export function hlbSystem(context: FormulaContext): HlbSystem | null {
  const emulsifiers = linesPlayingHere(context, 'emulsifier')
  if (emulsifiers.length === 0 || hasSoap(context)) return null
  if (emulsifiers.some((line) => makesNoEmulsion(context, line))) return null
  const holding = HOLDING.flatMap((role) => linesPlayingHere(context, role))
  if (!holding.every(({ subject }) => isByHlb(subject, context.form))) return null
  const withoutHlb = emulsifiers.filter(({ subject }) => chosen(subject) === null)
  return {
    emulsifiers,
    withoutHlb,
    span: withoutHlb.length > 0 ? null : spanOf(emulsifiers),
    claims: emulsifiers.flatMap(({ subject }) => chosen(subject)?.claims ?? []),
  }
}

/** Oil phase less the emulsifiers, parted by whether a required HLB is published. */
function oilsOf(context: FormulaContext, { emulsifiers }: HlbSystem) {
  const oily = ({ subject }: FormulaLine): boolean =>
    ['oil', 'silicone'].includes(wordOf(subject, 'solubility') ?? '') &&
    (subject.allRoles.has('emollient') || subject.allRoles.has('structurant'))
  const oils = context.lines.filter(
    (line) => !emulsifiers.includes(line) && (oily(line) || stated(line.subject, 'required_hlb') !== null),
  )
  const known = oils.filter(({ subject }) => stated(subject, 'required_hlb') !== null)
  const share = (lines: readonly FormulaLine[]): number => lines.reduce((sum, line) => sum + line.share_percent, 0)
  return {
    known,
    unknown: oils.filter((line) => !known.includes(line)),
    known_percent: share(known),
    all_percent: share(oils),
  }
}

/** Of the oil phase this much has to have a published value [share]. */
const LEAST_KNOWN = 0.5

/** Values of one oil differ by a unit even within one table; further apart than this the pair does not suit [HLB]. */
const HLB_OFF = 2

const names = (lines: readonly FormulaLine[]): string => lines.map(({ subject }) => nameOf(subject)).join(', ')
const ids = (lines: readonly FormulaLine[]): string[] => lines.map(({ subject }) => subject.id).sort()
const rounded = ({ min, max }: Span, say: Say): string => say.range({ min: roundTo(min, 1), max: roundTo(max, 1) })

const hlbNotKnown = (lines: readonly FormulaLine[], say: Say): Hit => ({
  severity: 'unknown',
  about: ids(lines),
  message: say`The HLB of ${names(lines)} is not known: whether emulsifiers and oils suit each other cannot be told`,
  remedy: say`Ask the supplier for the HLB, or make a row of trials one HLB unit apart`,
  because: lines.map(({ subject }) => because(say`no HLB of ${nameOf(subject)}`)),
  sources: [],
})

const requiredHlbNotKnown = (lines: readonly FormulaLine[], say: Say): Hit => ({
  severity: 'unknown',
  about: ids(lines),
  message: say`The required HLB of ${names(lines)} is not known: whether emulsifiers and oils suit each other cannot be told`,
  remedy: say`Ask the supplier for the required HLB, or make a row of trials one HLB unit apart`,
  because: lines.map(({ subject }) => because(say`no required HLB of ${nameOf(subject)}`)),
  sources: [],
})

function requiredSpan(known: readonly FormulaLine[]): Span {
  const at = (end: 'min' | 'max'): number =>
    requiredHlbOfOils(
      known.map(({ subject, share_percent }) => ({
        share_percent,
        required_hlb: stated(subject, 'required_hlb')?.span[end] ?? 0,
      })),
    )
  return { min: at('min'), max: at('max') }
}

/** "Paraffinum liquidum 10 to 12, castor oil 14" */
const wanted = (known: readonly FormulaLine[], say: Say): string =>
  known.map(({ subject }) => `${nameOf(subject)} ${say.range(stated(subject, 'required_hlb')?.span ?? {})}`).join(', ')

/** rule:hlb-off-balance. A note: required HLB values of one oil differ by units between sources, and all of them count. */
export const hlbOffBalance: Check = (context) => {
  if (context.form !== 'oil-in-water') return []
  const { say } = context.world
  const system = hlbSystem(context)
  if (!system) return []
  const { known, unknown, known_percent, all_percent } = oilsOf(context, system)
  if (all_percent === 0) return []
  if (!system.span) return [hlbNotKnown(system.withoutHlb, say)]
  if (known_percent < LEAST_KNOWN * all_percent) return [requiredHlbNotKnown(unknown, say)]
  const required = requiredSpan(known)
  if (gap(system.span, required) <= HLB_OFF) return []
  const claims = [...system.claims, ...known.flatMap(({ subject }) => stated(subject, 'required_hlb')?.claims ?? [])]
  const [has, needs, each] = [rounded(system.span, say), rounded(required, say), wanted(known, say)]
  return [
    {
      about: ids(system.emulsifiers),
      message:
        unknown.length > 0
          ? say`The emulsifiers have an HLB of ${has}, the oils ask for about ${needs} (${each}; not known for ${names(unknown)})`
          : say`The emulsifiers have an HLB of ${has}, the oils ask for about ${needs} (${each})`,
      remedy: say`Shift the ratio of the high- and the low-HLB emulsifier, and make trials one unit to either side`,
      because: claims.map((claim) => becauseOf(claim.property === 'hlb' ? say`HLB` : say`required HLB`, claim, say)),
      sources: sourcesOf(...claims),
    },
  ]
}
