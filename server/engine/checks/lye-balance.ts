import { kohBound } from '#engine/calculate/koh-bound.ts'
import type { KohBound } from '#engine/calculate/koh-bound.ts'
import { LYE_G_PER_MOL } from '#engine/chemistry/lye.ts'
import { linesPlayingHere } from '#engine/formula/build-context.ts'
import type { FormulaContext, FormulaLine } from '#engine/formula/context.ts'
import { activeMatter } from '#engine/formula/totals.ts'
import { roundTo } from '#engine/units/round.ts'
import type { Say } from '#engine/words/say.ts'
import type { Check, Hit } from './check.ts'
import { because, becauseOf, nameOf, sourcesOf } from './say.ts'

const LYES = { 'sodium-hydroxide': LYE_G_PER_MOL.naoh, 'potassium-hydroxide': LYE_G_PER_MOL.koh } as const
type LyeId = keyof typeof LYES

const isLye = (id: string): id is LyeId => id in LYES

/** What alkali turns into soap; hydrocarbons, silicones and waxes without acid are left alone. */
const isFat = ({ subject }: FormulaLine): boolean =>
  ['triglyceride', 'fatty-acid', 'wax-ester'].some((one) => subject.classes.has(one)) ||
  subject.allRoles.has('carrier-oil') ||
  subject.allRoles.has('butter')

/** Other acids of the formula in g KOH per 100 g, every proton that soap takes counted. */
function boundByAcids(context: FormulaContext): number {
  return context.lines.reduce((sum, line) => {
    const compound = context.world.knowledge.acids.byIngredient.get(line.subject.id)
    if (!compound?.molar_mass || isFat(line)) return sum
    const protons = compound.acids.reduce((all, { acid, per_mol }) => all + per_mol * protonsGivenOff(acid), 0)
    const cations = compound.ions.reduce((all, ion) => all + Math.max(0, ion.charge) * ion.mol_per_l, 0)
    return sum + (activeMatter(line) / compound.molar_mass) * Math.max(0, protons - cations) * LYE_G_PER_MOL.koh
  }, 0)
}

/** At the pH of soap a proton is gone whose constant lies below this. */
const GONE_BELOW_PKA = 9

const protonsGivenOff = ({ charge, steps }: { charge: number; steps: readonly { pka: number }[] }): number =>
  charge > 0 ? 0 : steps.filter(({ pka }) => pka < GONE_BELOW_PKA).length

/** Alkali that the fats bind and alkali that is there, in g KOH per 100 g of formula. */
export function lyeBalance(context: FormulaContext) {
  const fats = context.lines.filter(isFat)
  const bound = (of: 'mg' | 'least' | 'most', lines = fats): number =>
    lines.reduce((sum, { subject, share_percent }) => sum + (share_percent * (kohBound(subject)?.[of] ?? 0)) / 1000, 0)
  const given_g = context.lines.reduce((sum, line) => {
    const { id } = line.subject
    return isLye(id) ? sum + (activeMatter(line) * LYE_G_PER_MOL.koh) / LYES[id] : sum
  }, 0)
  const acids_g = boundByAcids(context)
  const bound_g = bound('mg') + acids_g
  return {
    fats,
    unknown: fats.filter(({ subject }) => kohBound(subject) === undefined),
    bound_g,
    most_g: bound('most') + acids_g,
    /** by esters, not by free acids */
    ester_g: bound(
      'mg',
      fats.filter(({ subject }) => !subject.classes.has('fatty-acid')),
    ),
    given_g,
    superfat_percent: bound_g === 0 ? 0 : (1 - given_g / bound_g) * 100,
  }
}

type Balance = ReturnType<typeof lyeBalance>

const workOutAnew = (say: Say): string =>
  say`Work the lye out anew for these fats (5 to 8 % superfat); gloves and goggles, lye into water and never water into lye`

const BOUND: Record<KohBound['what'], (say: Say) => string> = {
  'saponification value': (say) => say`saponification value`,
  'acid value': (say) => say`acid value`,
  'molar mass': (say) => say`molar mass`,
}

const names = (fats: readonly FormulaLine[]): string => fats.map((line) => nameOf(line.subject)).join(', ')
const ids = (fats: readonly FormulaLine[]): string[] => fats.map(({ subject }) => subject.id).sort()

const lyeUnknown = (fats: readonly FormulaLine[], say: Say): Hit => ({
  severity: 'unknown',
  about: ids(fats),
  message: say`How much lye ${names(fats)} binds is not known: whether free lye is left cannot be told`,
  remedy: say`Take the saponification value from the data sheet and work the lye out before you mix anything; gloves and goggles, lye into water and never water into lye`,
  because: fats.map((line) => because(say`no saponification value of ${nameOf(line.subject)}`)),
  sources: [],
})

function reasons({ fats, given_g, bound_g }: Balance, say: Say): Pick<Hit, 'about' | 'because' | 'sources'> {
  const bounds = fats.flatMap(({ subject }) => kohBound(subject) ?? [])
  return {
    about: ids(fats),
    because: [
      ...bounds.map(({ what, claim }) => becauseOf(BOUND[what](say), claim, say)),
      because(say`lye for ${say.short(given_g)} g KOH, bound ${say.short(bound_g)} g KOH in 100 g`),
    ],
    sources: sourcesOf(...bounds.map(({ claim }) => claim)),
  }
}

/** Free lye: certain when even fats at the top of their ranges cannot bind it. */
function freeLye(balance: Balance, say: Say): Hit {
  const { superfat_percent, given_g, most_g } = balance
  const certain = given_g > most_g
  const over = say.short(-superfat_percent)
  return {
    severity: certain ? 'stop' : 'warn',
    message: certain
      ? say`The lye exceeds what these fats can bind by ${over} %: the soap is caustic and burns skin and eyes`
      : say`The lye exceeds what these fats usually bind by ${over} %: lye may stay free, which burns skin and eyes`,
    remedy: workOutAnew(say),
    ...reasons(balance, say),
  }
}

/** More of the fats than this is left in a bar and it stays soft [%]. */
const MOST_SUPERFAT_PERCENT = 15

/** Esters that meet at least half the lye they need are meant to become soap. A fatty acid that is half neutralised is meant to stay so. */
const isSoap = ({ form }: FormulaContext, { ester_g, bound_g, given_g }: Balance): boolean =>
  ester_g > 0.5 * bound_g && (form === 'bar' || given_g > 0.5 * bound_g)

/** rule:lye-balance. Free lye burns: here a computed fact stops the formula. */
export const lyeBalanceRule: Check = (context) => {
  // Beside an acid at skin pH the alkali is there for the acid.
  const acid = context.ph !== null && context.ph < 8
  if (acid || !context.lines.some(({ subject }) => isLye(subject.id))) return []
  const { say } = context.world
  const balance = lyeBalance(context)
  const { fats, unknown, superfat_percent } = balance
  if (fats.length === 0) return []
  const known = superfat_percent >= 0
  if (unknown.length > 0) {
    const soapMaking = linesPlayingHere(context, 'lye').length > 0 && context.oil_percent >= 10
    return soapMaking || !known ? [lyeUnknown(unknown, say)] : []
  }
  if (!known) return [freeLye(balance, say)]
  if (superfat_percent <= MOST_SUPERFAT_PERCENT || !isSoap(context, balance)) return []
  return [
    {
      severity: 'warn',
      message: say`The fats exceed the lye by ${roundTo(superfat_percent, 1)} %: the soap stays soft and turns rancid`,
      remedy: workOutAnew(say),
      ...reasons(balance, say),
    },
  ]
}
