import type { Dose } from '#engine/dose/dose.ts'
import type { Swap } from '#engine/model/swap.ts'
import type { Candidate } from './candidates.ts'
import { forbidding } from './compare.ts'
import { servesThePurpose } from './other-kind.ts'
import type { Trial } from './trial.ts'

const GOOD_RANK = 0.62

/**
 * Whether stand-ins are good or only workable: near enough, dosed by what is known, nothing to repair, all of them serving
 * the purpose, and no warning that refuses speaks of one. Where the missing one had that warning too, the stand-in is no
 * worse, but not good.
 */
export function gradeOf(
  chosen: readonly { candidate: Candidate; dose: Dose }[],
  trial: Trial,
  rank: number,
): Swap['grade'] {
  if (rank < GOOD_RANK || trial.repairs.length > 0) return 'workable'
  const warned = new Set(forbidding(trial.findings(), trial.after.world).flatMap(({ about }) => about))
  const isGood = ({ candidate, dose }: { candidate: Candidate; dose: Dose }): boolean =>
    dose.unknown.length === 0 && servesThePurpose(candidate) && !warned.has(candidate.stand.id)
  return chosen.every(isGood) ? 'good' : 'workable'
}
