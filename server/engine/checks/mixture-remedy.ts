import { MIXTURE_POLYMERS, surfactantTotal } from '#engine/chemistry/mixtures/mixture.ts'
import type { Mixture } from '#engine/chemistry/mixtures/mixture.ts'
import { separationRate } from '#engine/chemistry/mixtures/separation-rate.ts'
import type { MixtureModel } from '#engine/chemistry/mixtures/separation-rate.ts'
import type { Say } from '#engine/words/say.ts'

/** Least thickener to surfactants, by weight, that was measured in some number. */
const LEAST_LOAD = 1 / 15
/** A change is worth naming when the rate falls by this much. */
const WORTH = 0.15
const MOST_NAMED = 2

/** The small trial that decides in the end. */
export const trial = (say: Say): string =>
  say`Make 50 g, let it stand for a day at room temperature, and look against the light before a batch`

export const percent = (rate: number): string => `${Math.round(rate * 100)} %`

interface Changing {
  /** @param rate how many such mixtures separate */
  words: (rate: string) => string
  changed: Mixture
}

/** Single changes inside the range of what was measured, each with its words. */
function changesOf(mixture: Mixture, say: Say): Changing[] {
  const thickener_percent = surfactantTotal(mixture) * LEAST_LOAD
  const less: Changing = {
    words: (rate) => say`with ${say.short(thickener_percent)} % thickener about ${rate}`,
    changed: { ...mixture, thickener_percent },
  }
  return [
    ...(thickener_percent < mixture.thickener_percent ? [less] : []),
    ...MIXTURE_POLYMERS.filter((one) => one !== mixture.polymer).map((polymer) => ({
      words: (rate: string) => say`with ${polymer} instead of ${mixture.polymer} about ${rate}`,
      changed: { ...mixture, polymer },
    })),
  ]
}

/** Which single change lowers the rate most, by the same model; the best two in words. */
export function mixtureRemedy(mixture: Mixture, model: MixtureModel, say: Say): string {
  const { rate } = separationRate(mixture, model)
  const named = changesOf(mixture, say)
    .map(({ words, changed }) => ({ words, rate: separationRate(changed, model).rate }))
    .filter((one) => rate - one.rate >= WORTH)
    .sort((a, b) => a.rate - b.rate)
    .slice(0, MOST_NAMED)
    .map((one) => one.words(percent(one.rate)))
  return named.length === 0 ? trial(say) : say`${trial(say)}; by the same measurements ${named.join(', ')} separate`
}
