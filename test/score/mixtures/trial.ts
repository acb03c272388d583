import { join } from 'node:path'
import { termsOf } from '#engine/chemistry/mixtures/terms.ts'
import type { MeasuredMixture } from '#engine/chemistry/mixtures/mixture.ts'
import { buildKnowledge } from '#engine/index.ts'
import { mixtureDataOf } from '#engine/knowledge/mixture-data.ts'
import { loadRaw } from '#load/load-raw.ts'

/** A measured mixture as the models see it. */
export interface Trial {
  mixture: MeasuredMixture
  pair: string
  terms: ReadonlyMap<string, number>
  separated: boolean
}

/** Learns from some mixtures and foretells the rate of another. */
export type Method = (known: readonly Trial[]) => (asked: Trial) => number

export const trialOf = (mixture: MeasuredMixture): Trial => ({
  mixture,
  pair: [...mixture.names].sort().join(' + '),
  terms: termsOf(mixture),
  separated: !mixture.held,
})

export function readTrials(): Trial[] {
  const knowledge = buildKnowledge(loadRaw(join(import.meta.dirname, '../../../graph-data')))
  return mixtureDataOf(knowledge).measured.map(trialOf)
}
