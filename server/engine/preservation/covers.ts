import type { FormulaContext } from '#engine/formula/context.ts'
import { usedClaim } from '#engine/graph/subject.ts'
import { likeLotions } from './lotions.ts'
import type { Sure } from './strength.ts'
import { GROUPS } from './tables.ts'
import type { Group, LevelRow } from './tables.ts'
import { groupLevels, levelReached } from './levels.ts'
import { preservingWork, worthOf } from './work.ts'
import type { Work } from './work.ts'

export type Covers = Record<Group, Sure>

export const GROUP_NAME: Record<Group, string> = {
  gramPositive: 'gram-positive bacteria',
  gramNegative: 'gram-negative bacteria',
  yeast: 'yeast',
  mould: 'mould',
}

const STRENGTH: Record<string, number> = { strong: 1, moderate: 0.6, weak: 0.25, none: 0 }

/** A level somewhat below the typical one still covers. */
const LENIENT = 1.5

/** From here on a group counts as covered, below that as weakly covered or open. */
export const COVERED = 0.4
export const WEAK = 0.15

const spectrumOf = ({ subject }: Work) => usedClaim(subject, 'spectrum')?.spectrum

export const isTested = ({ subject, share_percent }: Work, context: FormulaContext): boolean =>
  likeLotions(subject, context).some(({ level_percent }) => level_percent !== null && share_percent >= level_percent)

const NONE: readonly LevelRow[] = []

/** Levels of the only agents at work are known and even the most that may be free does not reach any of them. */
function belowAllLevels(work: readonly Work[], group: Group, context: FormulaContext): boolean {
  const working = work.filter((one) => (STRENGTH[spectrumOf(one)?.[group] ?? 'none'] ?? 0) > 0)
  if (working.length === 0) return false
  let reached = 0
  for (const { substances } of working) {
    for (const state of substances) {
      const rows = groupLevels(state, context.world).get(group) ?? NONE
      const part = levelReached(state, rows)
      if (part === null) return false
      reached += part
    }
  }
  return reached < 1
}

function add(sum: Sure, one: Work, strength: number): void {
  const value = (effect: number) => strength * Math.min(1, effect * LENIENT) * worthOf(one)
  sum.least = Math.min(1, sum.least + value(one.effect.least))
  sum.most = Math.min(1, sum.most + value(one.effect.most))
}

function coverOf(work: readonly Work[], group: Group, context: FormulaContext): Sure {
  const sum = { least: 0, most: 0 }
  for (const one of work) add(sum, one, STRENGTH[spectrumOf(one)?.[group] ?? 'none'] ?? 0)
  // Growth that is not even stopped in broth is not stopped in the product.
  if (!belowAllLevels(work, group, context)) return sum
  return { least: Math.min(sum.least, WEAK), most: Math.min(sum.most, WEAK) }
}

const memo = new WeakMap<FormulaContext, Covers | null>()

/** Cover by organism group, 0 to 1; null where no agent states its spectrum. Worked out once for each context. */
export function coversOf(context: FormulaContext): Covers | null {
  const known = memo.get(context)
  if (known !== undefined) return known
  const work = preservingWork(context)
  const stated = work.filter((one) => spectrumOf(one))
  const covers =
    stated.length === 0
      ? null
      : (Object.fromEntries(GROUPS.map((group) => [group, coverOf(stated, group, context)])) as Covers)
  memo.set(context, covers)
  return covers
}

/** Organism groups that the preservatives leave open even where all goes well; empty when nothing is stated. */
export function openGroups(context: FormulaContext): Group[] {
  const covers = coversOf(context)
  return covers ? GROUPS.filter((group) => covers[group].most < COVERED) : []
}
