import type { SurfactantKind } from './mixture.ts'

/** Classes that a record has to have → kind of surfactant. The first that fits counts. */
const KIND_OF_CLASSES: readonly (readonly [readonly string[], SurfactantKind])[] = [
  [['amphoacetate'], 'amphoacetate'],
  [['betaine-surfactant'], 'betaine'],
  [['alkyl-glucoside'], 'glucoside'],
  [['citrate-ester', 'anionic', 'ethoxylate'], 'citrate-ester'],
  [['sulfosuccinate', 'anionic'], 'mild-anionic'],
  [['acyl-amino-acid', 'anionic'], 'mild-anionic'],
]

/** From here on the tail makes a quat crystallise with fatty alcohols instead of forming micelles. */
const LONGEST_TAIL_OF_SHORT_QUAT = 16

/**
 * Kind of a surfactant by its classes, or undefined where no mixture with such a one was measured: sulfates, sulfonates,
 * isethionates, taurates and soaps are not among them.
 *
 * @param chain_length  carbon atoms of the main chain; a quat whose chain is not known has no kind
 */
export function kindOf(classes: ReadonlySet<string>, chain_length: number | undefined): SurfactantKind | undefined {
  const short = chain_length !== undefined && chain_length <= LONGEST_TAIL_OF_SHORT_QUAT
  if (classes.has('alkyl-quat')) return short ? 'short-quat' : undefined
  return KIND_OF_CLASSES.find(([needed]) => needed.every((one) => classes.has(one)))?.[1]
}
