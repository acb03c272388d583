import { deciding, rangeOfClaim } from './facts.ts'
import type { Lint } from './lint.ts'
import { placeOf } from './places.ts'

const LONG = 90
const MOST_OF_LONG = 203 // tripalmitin has 208.5, triolein 190.1; oils of C16 to C18 acids lie under about 200

const carbons = (acid: string): number => Number(/^C(\d+)/.exec(acid)?.[1] ?? 0)

/** Guards against a saponification value that only short acids give, on an oil of long ones: its lye would burn. */
export const saponificationFitsAcids: Lint = (_raw, { ingredients }) =>
  [...ingredients.values()].flatMap((oil) => {
    const shares = deciding(oil, 'fatty_acids')?.shares ?? {}
    const eighteen = Object.entries(shares).reduce((sum, [acid, share]) => sum + (carbons(acid) >= 18 ? share : 0), 0)
    const long = Object.entries(shares).reduce((sum, [acid, share]) => sum + (carbons(acid) >= 16 ? share : 0), 0)
    if (long < LONG || eighteen < 100 - eighteen) return []
    return (oil.facts.get('saponification_value') ?? []).flatMap((claim) => {
      const { min, max } = rangeOfClaim(claim) ?? {}
      const least = min ?? max
      if (least === undefined || least <= MOST_OF_LONG) return []
      return [{ path: placeOf(oil, claim), message: `${least} mg/g is too much for an oil of C18 acids` }]
    })
  })
