import type { DoseBasis, Level, PlaysRole } from '#engine/model/records.ts'
import { numberOf } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { Say } from '#engine/words/say.ts'

export interface DoseQuestion {
  basis: DoseBasis
  /** what is missing, its share as supplied [%], its active matter where the bottle says it [%], its claim for the role */
  missing: Subject
  share_percent: number
  strength_percent?: number
  missingClaim: PlaysRole | undefined
  stand: Subject
  standClaim: PlaysRole | undefined
  /** protons that one mole gives off or takes up here [mol/mol]; undefined when not known */
  equivalentsOf: (subject: Subject) => number | undefined
  /** says how the figure came about */
  say: Say
  /** mass of the stand-in per mass of the missing one, from a direct statement */
  ratio?: number
}

export interface Dose {
  share_percent: number
  /** how the figure came about, for people */
  how: string
  /** properties that were not known and for which the same mass was taken */
  unknown: string[]
}

const typicalOf = (level: Level | undefined): number | undefined =>
  level?.typical ?? (level?.max === undefined ? undefined : ((level.min ?? 0) + level.max) / 2)

const same = ({ say, share_percent }: DoseQuestion, unknown: string[] = []): Dose => ({
  share_percent,
  how: say`1:1 by mass`,
  unknown,
})

/** Equal active matter: share x strength stays the same. */
function byActiveMatter(question: DoseQuestion): Dose {
  const { missing, stand, share_percent, strength_percent, say } = question
  const old_percent = strength_percent ?? numberOf(missing, 'active_percent')
  const new_percent = numberOf(stand, 'active_percent')
  if (old_percent === undefined || new_percent === undefined) {
    return same(question, ['active_percent'])
  }
  return {
    share_percent: (share_percent * old_percent) / new_percent,
    how: say`equal active matter: ${say.short(old_percent)} % in the missing one, ${say.short(new_percent)} % in the stand-in`,
    unknown: [],
  }
}

/** Equal acid or base equivalents: mass per equivalent = molar mass / equivalents / strength. */
function byEquivalents(question: DoseQuestion): Dose {
  const { missing, stand, share_percent, strength_percent, equivalentsOf, say } = question
  const massPerEquivalent = (subject: Subject, stated?: number): number | undefined => {
    const molar_mass = numberOf(subject, 'molar_mass')
    const equivalents = equivalentsOf(subject)
    const active = stated ?? numberOf(subject, 'active_percent') ?? 100
    return molar_mass && equivalents ? molar_mass / equivalents / (active / 100) : undefined
  }
  const old_g = massPerEquivalent(missing, strength_percent)
  const new_g = massPerEquivalent(stand)
  if (old_g === undefined || new_g === undefined) return same(question, ['molar_mass', 'equivalents'])
  return {
    share_percent: (share_percent * new_g) / old_g,
    how: say`equal equivalents: ${say.short(new_g)} g against ${say.short(old_g)} g per mole of charge; the pH meter decides`,
    unknown: [],
  }
}

/** Like effect: the ratio of the usual levels in the same role. */
function byStrength(question: DoseQuestion): Dose {
  const { missingClaim, standClaim, share_percent, say } = question
  const old_percent = typicalOf(missingClaim?.level_percent)
  const new_percent = typicalOf(standClaim?.level_percent)
  if (!old_percent || !new_percent) return same(question, ['level_percent'])
  const factor = new_percent / old_percent
  return {
    share_percent: share_percent * factor,
    how:
      factor === 1
        ? say`1:1 by mass`
        : say`${say.short(factor)} times as much: usual levels are ${say.short(new_percent)} % and ${say.short(old_percent)} %`,
    unknown: [],
  }
}

/** The stand-in's own usual level; a missing one that was dosed low or high carries over within bounds. */
function byOwnLevel(question: DoseQuestion): Dose {
  const { missingClaim, standClaim, share_percent, say } = question
  const new_percent = typicalOf(standClaim?.level_percent)
  if (!new_percent) return same(question, ['level_percent'])
  const old_percent = typicalOf(missingClaim?.level_percent)
  const fill = old_percent ? Math.min(1.5, Math.max(0.7, share_percent / old_percent)) : 1
  const { min = 0, max = 100 } = standClaim?.level_percent ?? {}
  const dose_percent = Math.min(max, Math.max(min, new_percent * fill))
  const how = say`its own usual level, ${say.short(min)} to ${say.short(max)} %`
  return { share_percent: dose_percent, how, unknown: [] }
}

const BY_BASIS: Record<DoseBasis, (question: DoseQuestion) => Dose> = {
  same: (question) => same(question),
  'active-matter': byActiveMatter,
  equivalents: byEquivalents,
  strength: byStrength,
  'own-level': byOwnLevel,
}

/** The stated ratio of the pair; what is dosed by its own usual level never goes above that, whatever the ratio gives. */
function byRatio({ basis, share_percent, standClaim, say }: DoseQuestion, ratio: number): Dose {
  const dose_percent = share_percent * ratio
  const most_percent = basis === 'own-level' ? standClaim?.level_percent?.max : undefined
  if (most_percent !== undefined && dose_percent > most_percent) {
    const how = say`${say.short(ratio)} times as much would be ${say.short(dose_percent)} %; kept to the ${say.short(most_percent)} % to which it is used`
    return { share_percent: most_percent, how, unknown: [] }
  }
  return {
    share_percent: dose_percent,
    how: ratio === 1 ? say`1:1 by mass` : say`${say.short(ratio)} times as much`,
    unknown: [],
  }
}

const BULK_PERCENT = 30

/**
 * How much of the stand-in does the job of the missing one [% of the formula, as supplied].
 * A stated ratio of the very pair beats the general basis of the role.
 */
export function doseOf(question: DoseQuestion): Dose {
  // What makes up a third of a product is its bulk: never more of the stand-in than there was, whatever its usual level.
  const isBulk =
    question.share_percent >= BULK_PERCENT && (question.basis === 'strength' || question.basis === 'own-level')
  if (isBulk && question.ratio === undefined) {
    const dose = question.basis === 'strength' ? byStrength(question) : same(question)
    return dose.share_percent <= question.share_percent ? dose : same(question)
  }
  if (question.ratio !== undefined && question.basis !== 'active-matter' && question.basis !== 'equivalents')
    return byRatio(question, question.ratio)
  return BY_BASIS[question.basis](question)
}
