import { decidedRange } from './facts.ts'
import type { Lint } from './lint.ts'
import { fileOf } from './places.ts'

const BY_HLB = ['oil-in-water-emulsifier', 'water-in-oil-emulsifier', 'co-emulsifier', 'solubiliser']
/** Charged, lamellar and polymeric emulsifiers, and those that need no partner, are not chosen by HLB. */
const NOT_BY_HLB = ['complete-emulsifier', 'phospholipid', 'alkyl-glucoside', 'silicone-emulsifier', 'citrate-ester']

/** Points out emulsifiers without HLB where it decides: no balance can be worked out with them. */
export const emulsifierStatesHlb: Lint = (_raw, { ingredients }) =>
  [...ingredients.values()]
    .filter(({ roles }) => BY_HLB.includes(roles[0]?.role ?? ''))
    .filter(({ classes }) => classes.has('nonionic') && !NOT_BY_HLB.some((one) => classes.has(one)))
    .filter((ingredient) => !decidedRange(ingredient, 'hlb'))
    .map((ingredient) => ({ path: `${fileOf(ingredient)}/facts`, message: 'an emulsifier without HLB' }))
