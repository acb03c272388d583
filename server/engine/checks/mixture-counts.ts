import type { MeasuredMixture, MixturePolymer, SurfactantKind } from '#engine/chemistry/mixtures/mixture.ts'

/** How many measured mixtures were like this one and how many of them separated. */
export interface Counted {
  /** what they had in common with it */
  alike: 'kinds and polymer' | 'polymer'
  n: number
  separated: number
  /** surfactants of those mixtures */
  names: string[]
}

const kindsOf = (kinds: readonly SurfactantKind[]): string => [...new Set(kinds)].sort().join(' ')

/** Mixtures with these kinds of surfactant and this polymer; where none was made, all with this polymer. */
export function countAlike(
  measured: readonly MeasuredMixture[],
  kinds: readonly SurfactantKind[],
  polymer: MixturePolymer,
): Counted {
  const same = measured.filter((one) => one.polymer === polymer)
  const close = same.filter(({ surfactants }) => kindsOf(surfactants.map(({ kind }) => kind)) === kindsOf(kinds))
  const counted = close.length > 0 ? close : same
  return {
    alike: close.length > 0 ? 'kinds and polymer' : 'polymer',
    n: counted.length,
    separated: counted.filter(({ held }) => !held).length,
    names: [...new Set(counted.flatMap(({ names }) => names))].sort(),
  }
}
