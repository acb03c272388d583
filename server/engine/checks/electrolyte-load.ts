import { numberOf, usedClaim, wordOf } from '#engine/graph/subject.ts'
import type { FormulaContext, FormulaLine } from '#engine/formula/context.ts'
import type { Check, Hit } from './check.ts'
import { because, nameOf, sourcesOf } from './say.ts'

/** Salt that a surfactant brings along, as a share of the line: betaines and amphoacetates hold several per cent. */
const SALT_OF_AMPHOTERIC = 0.05
/** Load of dissolved salt [%] from which a body of this kind suffers. Rule of thumb. */
const BEARS_PERCENT: Record<string, { poor: number; breaks: number }> = {
  sensitive: { poor: 0.25, breaks: 0.9 },
  medium: { poor: 3, breaks: 8 },
}

function saltOf({ subject, share_percent }: FormulaLine): number {
  if (subject.classes.has('electrolyte')) return (share_percent * (numberOf(subject, 'active_percent') ?? 100)) / 100
  if (subject.classes.has('betaine-surfactant') || subject.classes.has('amphoacetate'))
    return share_percent * SALT_OF_AMPHOTERIC
  return 0
}

/** Ions shield charges in water only; what is dry, or oil without water, carries no salt load [%]. */
const WATER_THAT_DISSOLVES_PERCENT = 3

function saltHits({ lines, rolesOf, world: { say } }: FormulaContext): Hit[] {
  return lines.flatMap((line) => {
    const word = wordOf(line.subject, 'electrolyte')
    const claim = usedClaim(line.subject, 'electrolyte')
    const bears = word === undefined ? undefined : BEARS_PERCENT[word]
    const givesBody = rolesOf(line.subject).some(({ role }) =>
      /gum|thickener|jelly|emulsifier|suspending|film/.test(role),
    )
    if (!bears || !claim || !givesBody) return []
    const salts = lines.filter((other) => other.subject.id !== line.subject.id && saltOf(other) > 0)
    const load_percent = salts.reduce((sum, other) => sum + saltOf(other), 0)
    if (load_percent < bears.poor) return []
    const [name, load, brought] = [
      nameOf(line.subject),
      say.short(load_percent),
      salts.map((s) => nameOf(s.subject)).join(', '),
    ]
    return [
      {
        severity: load_percent >= bears.breaks ? 'warn' : 'note',
        about: [line.subject.id],
        message:
          word === 'sensitive'
            ? say`${name} bears salts badly; here are ${load} % (${brought})`
            : say`${name} bears salts only in moderation; here are ${load} % (${brought})`,
        remedy: say`Take a thickener or emulsifier that bears salts, or lower the salt`,
        because: [
          because(word === 'sensitive' ? say`bears salts: sensitive` : say`bears salts: medium`, claim),
          ...salts.map((s) => because(say`${nameOf(s.subject)} brings ions`)),
        ],
        sources: sourcesOf(claim),
      } satisfies Hit,
    ]
  })
}

function divalentHits({ lines, world: { say } }: FormulaContext): Hit[] {
  const salts = lines.filter(
    ({ subject, share_percent }) => subject.classes.has('divalent-salt') && share_percent >= 0.1,
  )
  const [salt] = salts
  if (!salt) return []
  return lines.flatMap(({ subject }) => {
    const word = wordOf(subject, 'divalent_ions')
    const claim = usedClaim(subject, 'divalent_ions')
    // A gum that is there to be set by ions (class sets-to-gel) is not harmed by them.
    if (!claim || (word !== 'precipitates' && word !== 'gels') || subject.id === salt.subject.id) return []
    if (word === 'gels' && subject.classes.has('sets-to-gel')) return []
    const [name, bringing] = [nameOf(subject), nameOf(salt.subject)]
    return [
      {
        severity: 'warn' as const,
        about: [salt.subject.id, subject.id].sort(),
        message:
          word === 'gels'
            ? say`${name} gels with calcium and magnesium (${bringing})`
            : say`${name} precipitates with calcium and magnesium (${bringing})`,
        remedy: say`Take a nonionic gum, or leave the salt out`,
        because: [
          because(word === 'gels' ? say`gels with divalent ions` : say`precipitates with divalent ions`, claim),
          because(say`${bringing} brings them`),
        ],
        sources: sourcesOf(claim),
      },
    ]
  })
}

/** rule:electrolyte-load. Why, severity and worked cases: graph-data/rules/electrolyte-load.yaml */
export const electrolyteLoad: Check = (context) =>
  context.water_percent < WATER_THAT_DISSOLVES_PERCENT ? [] : [...saltHits(context), ...divalentHits(context)]
