import { linesPlayingHere } from '#engine/formula/build-context.ts'
import type { FormulaContext, FormulaLine } from '#engine/formula/context.ts'
import type { Claim } from '#engine/model/claim.ts'
import { roundTo } from '#engine/units/round.ts'
import type { Check, Hit } from './check.ts'
import { hlbSystem } from './hlb-balance.ts'
import { because, becauseOf, nameOf, shareFact, sourcesOf } from './say.ts'

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
  const { oil_percent, water_percent, world } = context
  const { say } = world
  if (oil_percent < OIL_THAT_SHOWS_PERCENT || water_percent < WATER_THAT_SHOWS_PERCENT) return []
  if (holders(context).length > 0 || linesPlayingHere(context, 'lye').length > 0) return []
  return [
    {
      about: [],
      message: say`${say.short(oil_percent)} % oil and ${say.short(water_percent)} % water, and nothing that holds them together`,
      remedy: say`Add an emulsifier that suits the wanted form`,
      because: [
        because(say`oil phase ${say.short(oil_percent)} %`),
        because(say`water phase ${say.short(water_percent)} %`),
        because(say`no emulsifier or solubiliser`),
      ],
      sources: ['practice'],
    },
  ]
}

const OIL_IN_WATER_FROM_HLB = 7
const WATER_IN_OIL_TO_HLB = 8

/** HLB of nonionic emulsifiers that cannot make the wanted kind, whichever of the stated values holds. */
function offBalance(context: FormulaContext): { hlb: string; claims: Claim[] } | null {
  const system = hlbSystem(context)
  if (!system?.span) return null
  const { min, max } = system.span
  const off = context.form === 'oil-in-water' ? max < OIL_IN_WATER_FROM_HLB : min > WATER_IN_OIL_TO_HLB
  return off
    ? { hlb: context.world.say.range({ min: roundTo(min, 1), max: roundTo(max, 1) }), claims: system.claims }
    : null
}

function wrongKindText(emulsifiers: readonly FormulaLine[], hlb: string | undefined, { form, world }: FormulaContext) {
  const { say } = world
  const names = emulsifiers.map(({ subject }) => nameOf(subject)).join(', ')
  if (form === 'oil-in-water') {
    return hlb === undefined
      ? say`None of the emulsifiers makes an oil-in-water emulsion alone (${names})`
      : say`The emulsifiers together have an HLB of ${hlb}; oil in water needs about ${OIL_IN_WATER_FROM_HLB} and more`
  }
  return hlb === undefined
    ? say`None of the emulsifiers makes a water-in-oil emulsion alone (${names})`
    : say`The emulsifiers together have an HLB of ${hlb}; water in oil needs about ${WATER_IN_OIL_TO_HLB} at most`
}

/** rule:emulsifier-of-wrong-kind: what is outside is decided by the emulsifiers, not by the wish. */
export const emulsifierOfWrongKind: Check = (context) => {
  const { form, world } = context
  const { say } = world
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
  const off = offBalance(context)
  const otherCarriers = linesPlayingHere(context, 'cationic-conditioner').length > 0
  if (otherCarriers || (right.length > 0 && !off)) return []
  const claims = off?.claims ?? []
  return [
    {
      about: emulsifiers.map(({ subject }) => subject.id).sort(),
      message: wrongKindText(emulsifiers, right.length === 0 ? undefined : (off?.hlb ?? '?'), context),
      remedy: form === 'oil-in-water' ? say`Add an oil-in-water emulsifier` : say`Add a water-in-oil emulsifier`,
      because: [
        ...emulsifiers.map((line) => shareFact(line, say)),
        ...claims.map((claim) => becauseOf(say`HLB`, claim, say)),
      ],
      sources: sourcesOf(...claims, { source: 'practice' }),
    },
  ]
}

/** rule:emulsifier-too-little: each emulsifier fills its own least level; together they have to fill about one. */
export const emulsifierTooLittle: Check = (context) => {
  const { form, oil_percent, world } = context
  const { say } = world
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
      message: say`The emulsifiers stand below the least level at which they are used, for ${say.short(oil_percent)} % oil`,
      remedy: say`Raise the emulsifier to its usual level`,
      because: [
        ...emulsifiers.map((line) => shareFact(line, say)),
        because(say`oil phase ${say.short(oil_percent)} %`),
      ],
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
  const { say } = context.world
  if (quats.length === 0 || emulsifiers.length > 0 || body.length > 0 || bringsOwn) return []
  return [
    {
      about: quats.map(({ subject }) => subject.id).sort(),
      message: say`${quats.map((line) => nameOf(line.subject)).join(', ')} without a fatty alcohol makes a thin, slimy liquid and no cream`,
      remedy: say`Add cetyl, cetearyl or stearyl alcohol, about two to three times the quat`,
      because: [...quats.map((line) => shareFact(line, say)), because(say`no fatty alcohol, wax or thickener`)],
      sources: ['practice'],
    },
  ]
}
