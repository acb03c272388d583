import { numberOf, usedClaim } from '#engine/graph/subject.ts'
import { linesPlayingHere } from '#engine/formula/build-context.ts'
import type { FormulaContext, FormulaLine } from '#engine/formula/context.ts'
import { short } from '#engine/units/round.ts'
import type { Check, Hit } from './check.ts'
import { because, nameOf, shareFact, sourcesOf } from './say.ts'

/** From here on oil no longer hides in a gel or wash [%]. */
const OIL_THAT_SHOWS_PERCENT = 1.5
const WATER_THAT_SHOWS_PERCENT = 3

const HOLDERS = ['emulsifier', 'solubiliser', 'surfactant', 'cationic-conditioner']

/** Lines that hold oil and water together, whatever they are called. */
export const holders = (context: FormulaContext): FormulaLine[] => [
  ...new Set(HOLDERS.flatMap((role) => linesPlayingHere(context, role))),
]

/** rule:oil-without-emulsifier */
export const oilWithoutEmulsifier: Check = (context) => {
  const { oil_percent, water_percent } = context
  if (oil_percent < OIL_THAT_SHOWS_PERCENT || water_percent < WATER_THAT_SHOWS_PERCENT) return []
  if (holders(context).length > 0 || linesPlayingHere(context, 'lye').length > 0) return []
  return [
    {
      about: [],
      message: `${short(oil_percent)} % oil and ${short(water_percent)} % water, and nothing that holds them together`,
      remedy: 'Add an emulsifier that suits the wanted form',
      because: [
        because(`oil phase ${short(oil_percent)} %`),
        because(`water phase ${short(water_percent)} %`),
        because('no emulsifier or solubiliser'),
      ],
      sources: ['practice'],
    },
  ]
}

/** Share-weighted HLB of the emulsifiers whose HLB is known; blends are taken by their own figure. */
export function hlbOfEmulsifiers(lines: readonly FormulaLine[]): { hlb: number; known: FormulaLine[] } | null {
  const known = lines.filter(({ subject }) => numberOf(subject, 'hlb') !== undefined)
  const total = known.reduce((sum, line) => sum + line.share_percent, 0)
  if (total === 0) return null
  const hlb = known.reduce((sum, line) => sum + line.share_percent * (numberOf(line.subject, 'hlb') ?? 0), 0) / total
  return { hlb, known }
}

const OIL_IN_WATER_FROM_HLB = 7
const WATER_IN_OIL_TO_HLB = 8

const isComplete = (line: FormulaLine, role: string): boolean =>
  line.subject.allRoles.has(role) && line.subject.classes.has('complete-emulsifier')

/** rule:emulsifier-of-wrong-kind: what is outside is decided by the emulsifiers, not by the wish. */
export const emulsifierOfWrongKind: Check = (context) => {
  const { form } = context
  if (form !== 'oil-in-water' && form !== 'water-in-oil') return []
  const emulsifiers = linesPlayingHere(context, 'emulsifier')
  if (emulsifiers.length === 0) return []
  const wanted = form === 'oil-in-water' ? 'oil-in-water-emulsifier' : 'water-in-oil-emulsifier'
  const right = emulsifiers.filter(
    ({ subject }) =>
      subject.allRoles.has(wanted) ||
      subject.allRoles.has('soap-emulsifier') ||
      subject.allRoles.has('cationic-conditioner'),
  )
  const balance = hlbOfEmulsifiers(emulsifiers)
  const complete = emulsifiers.some((line) => isComplete(line, wanted) || line.subject.classes.has('phospholipid'))
  const offBalance =
    balance !== null &&
    !complete &&
    (form === 'oil-in-water' ? balance.hlb < OIL_IN_WATER_FROM_HLB : balance.hlb > WATER_IN_OIL_TO_HLB)
  const otherCarriers = linesPlayingHere(context, 'cationic-conditioner').length > 0
  if (otherCarriers || (right.length > 0 && !offBalance)) return []
  const claims = (balance?.known ?? []).flatMap(({ subject }) => usedClaim(subject, 'hlb') ?? [])
  return [
    {
      about: emulsifiers.map(({ subject }) => subject.id).sort(),
      message:
        right.length === 0
          ? `None of the emulsifiers makes ${form === 'oil-in-water' ? 'an oil-in-water' : 'a water-in-oil'} emulsion alone (${emulsifiers.map((line) => nameOf(line.subject)).join(', ')})`
          : `The emulsifiers together have an HLB of ${short(balance?.hlb ?? 0)}; ${form === 'oil-in-water' ? `oil in water needs about ${OIL_IN_WATER_FROM_HLB} and more` : `water in oil needs about ${WATER_IN_OIL_TO_HLB} at most`}`,
      remedy: `Add ${form === 'oil-in-water' ? 'an oil-in-water' : 'a water-in-oil'} emulsifier`,
      because: [...emulsifiers.map(shareFact), ...claims.map((claim) => because('HLB', claim))],
      sources: sourcesOf(...claims, { source: 'practice' }),
    },
  ]
}

/** rule:emulsifier-opposed: an oil-soluble water-in-oil emulsion does not bear much of a high-HLB emulsifier, and the other way round. */
export const emulsifierTooLittle: Check = (context) => {
  const { form, oil_percent } = context
  if (form !== 'oil-in-water' && form !== 'water-in-oil') return []
  const emulsifiers = holders(context)
  if (emulsifiers.length === 0) return []
  const filled = emulsifiers.reduce((sum, line) => {
    const level = line.subject.roles.find((role) =>
      /emulsifier|conditioner|surfactant|solubiliser/.test(role.role),
    )?.level_percent
    const least = level?.min ?? (level?.typical !== undefined ? level.typical / 2 : 1)
    return sum + line.share_percent / Math.max(least, 0.05)
  }, 0)
  if (filled >= 0.8 || oil_percent < 3) return []
  return [
    {
      about: emulsifiers.map(({ subject }) => subject.id).sort(),
      message: `The emulsifiers stand below the least level at which they are used, for ${short(oil_percent)} % oil`,
      remedy: 'Raise the emulsifier to its usual level',
      because: [...emulsifiers.map(shareFact), because(`oil phase ${short(oil_percent)} %`)],
      sources: ['practice'],
    } satisfies Hit,
  ]
}

/** rule:conditioner-without-body: a quat makes a cream only together with a fatty alcohol. */
export const conditionerWithoutBody: Check = (context) => {
  if (context.form !== 'oil-in-water') return []
  const quats = linesPlayingHere(context, 'cationic-conditioner')
  const emulsifiers = linesPlayingHere(context, 'emulsifier').filter(
    ({ subject }) => !quats.some((quat) => quat.subject.id === subject.id),
  )
  const body = [...linesPlayingHere(context, 'structurant'), ...linesPlayingHere(context, 'thickener')]
  const bringsOwn = quats.some(({ subject }) => subject.classes.has('fatty-alcohol'))
  if (quats.length === 0 || emulsifiers.length > 0 || body.length > 0 || bringsOwn) return []
  return [
    {
      about: quats.map(({ subject }) => subject.id).sort(),
      message: `${quats.map((line) => nameOf(line.subject)).join(', ')} without a fatty alcohol makes a thin, slimy liquid and no cream`,
      remedy: 'Add cetyl, cetearyl or stearyl alcohol, about two to three times the quat',
      because: [...quats.map(shareFact), because('no fatty alcohol, wax or thickener')],
      sources: ['practice'],
    },
  ]
}

/** Distance between the HLB of the pair and that of the oils from which it is worth a word. */
const HLB_OFF = 3

/** rule:hlb-off-balance. A note: required HLB values of one oil differ by units between sources. */
export const hlbOffBalance: Check = (context) => {
  if (context.form !== 'oil-in-water') return []
  const emulsifiers = linesPlayingHere(context, 'emulsifier')
  if (emulsifiers.some((line) => isComplete(line, 'oil-in-water-emulsifier'))) return []
  const balance = hlbOfEmulsifiers(emulsifiers)
  const oils = context.lines.filter(
    ({ subject }) => numberOf(subject, 'required_hlb') !== undefined && !subject.allRoles.has('emulsifier'),
  )
  const total = oils.reduce((sum, line) => sum + line.share_percent, 0)
  if (!balance || total < 0.5 * context.oil_percent) return []
  const required =
    oils.reduce((sum, line) => sum + line.share_percent * (numberOf(line.subject, 'required_hlb') ?? 0), 0) / total
  if (Math.abs(balance.hlb - required) <= HLB_OFF) return []
  const claims = [
    ...balance.known.map((l) => usedClaim(l.subject, 'hlb')),
    ...oils.map((l) => usedClaim(l.subject, 'required_hlb')),
  ]
  const found = claims.flatMap((claim) => claim ?? [])
  return [
    {
      about: emulsifiers.map(({ subject }) => subject.id).sort(),
      message: `The emulsifiers have an HLB of ${short(balance.hlb)}, the oils ask for about ${short(required)}`,
      remedy: 'Shift the ratio of the high- and the low-HLB emulsifier',
      because: found.map((claim) => because(claim.property === 'hlb' ? 'HLB' : 'required HLB', claim)),
      sources: sourcesOf(...found),
    },
  ]
}
