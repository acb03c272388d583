import type { FormulaContext } from '#engine/formula/context.ts'
import { usedClaim } from '#engine/graph/subject.ts'
import type { Say } from '#engine/words/say.ts'
import type { Sure } from './strength.ts'
import { GROUPS } from './tables.ts'
import type { Group } from './tables.ts'
import { groupLevels, levelReached } from './levels.ts'
import { onceFor } from './once.ts'
import { preservingWork, sumOver } from './work.ts'
import type { Work } from './work.ts'

const GROUP_NAME: Record<Group, (say: Say) => string> = {
  gramPositive: (say) => say`gram-positive bacteria`,
  gramNegative: (say) => say`gram-negative bacteria`,
  yeast: (say) => say`yeast`,
  mould: (say) => say`mould`,
}

export const groupName = (group: Group, say: Say): string => GROUP_NAME[group](say)

const STRENGTH: Record<string, number> = { strong: 1, moderate: 0.6, weak: 0.25, none: 0 }

/** A level somewhat below the typical one still covers. */
const LENIENT = 1.5

/** From here on a group counts as covered, below that as weakly covered or open. */
export const COVERED = 0.4
export const WEAK = 0.15

const spectrumOf = ({ subject }: Work) => usedClaim(subject, 'spectrum')?.spectrum

/** Levels of the only agents at work are known and even the most that may be free does not reach any of them. */
function belowAllLevels(work: readonly Work[], group: Group, context: FormulaContext): boolean {
  const working = work.filter(
    (one) => one.joinedFrom.length === 0 && (STRENGTH[spectrumOf(one)?.[group] ?? 'none'] ?? 0) > 0,
  )
  if (working.length === 0) return false
  let reached = 0
  for (const { substances } of working) {
    for (const state of substances) {
      const part = levelReached(state, groupLevels(state, context.world).get(group))
      if (part === null) return false
      reached += part
    }
  }
  return reached < 1
}

/** Cover of one group by one agent, by its own record. */
const valueOf =
  (group: Group, sure: keyof Sure) =>
  (one: Work): number =>
    (STRENGTH[spectrumOf(one)?.[group] ?? 'none'] ?? 0) * Math.min(1, one.effect[sure] * LENIENT)

function coverOf(work: readonly Work[], group: Group, sure: keyof Sure, context: FormulaContext): number {
  const sum = Math.min(1, sumOver(work, valueOf(group, sure)))
  // Growth that is not even stopped in broth is not stopped in the product.
  return sum > WEAK && belowAllLevels(work, group, context) ? WEAK : sum
}

export type Cover = Record<Group, number>

const coverFor = (sure: keyof Sure) =>
  onceFor((context): Cover | null => {
    const work = preservingWork(context)
    if (!work.some((one) => spectrumOf(one))) return null
    const cover = { gramPositive: 0, gramNegative: 0, yeast: 0, mould: 0 }
    for (const group of GROUPS) cover[group] = coverOf(work, group, sure, context)
    return cover
  })

/** Cover by organism group, 0 to 1, surely and at most; null where no agent states its spectrum. Once for each context. */
export const coverAt = { least: coverFor('least'), most: coverFor('most') }

/** Organism groups that the preservatives leave open even where all goes well; empty when nothing is stated. */
export function openGroups(context: FormulaContext): Group[] {
  const cover = coverAt.most(context)
  return cover ? GROUPS.filter((group) => cover[group] < COVERED) : []
}
