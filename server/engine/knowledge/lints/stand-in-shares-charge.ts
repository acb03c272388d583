import type { Ingredient } from '#engine/model/records.ts'
import type { Lint } from './lint.ts'
import { fileOf } from './places.ts'

type Sign = 'anionic' | 'cationic'

/** Sign of a charge that is the same at every use pH; undefined for uncharged, two-sided and unknown ones. */
function signOf({ classes }: Ingredient): Sign | undefined {
  if (classes.has('amphoteric') || classes.has('anionic') === classes.has('cationic')) return undefined
  return classes.has('anionic') ? 'anionic' : 'cationic'
}

/** Guards against a stand-in of the opposite charge: what was chosen to go with the one is bound by the other. */
export const standInSharesCharge: Lint = (_raw, { ingredients }) =>
  [...ingredients.values()].flatMap((one) =>
    one.standsFor.flatMap((claim, at) => {
      const other = ingredients.get(claim.for)
      const [own, wanted] = [signOf(one), other && signOf(other)]
      if (!own || !wanted || own === wanted) return []
      return [{ path: `${fileOf(one)}/stands_in_for/${at}`, message: `${one.id} is ${own}, ${claim.for} is ${wanted}` }]
    }),
  )
