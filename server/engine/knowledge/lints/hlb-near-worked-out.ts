import { gap } from '#engine/units/range.ts'
import { rangeOfClaim } from './facts.ts'
import type { Lint } from './lint.ts'
import { placeOf } from './places.ts'

const OXYETHYLENE_G_PER_MOL = 44.053
const TOLERANCE = 1.5 // technical grades hold a spread of chain lengths, and some free hydrophobe

/** Molar mass of the fatty alcohol [g/mol] by the stem of its ethoxylates. */
const ALCOHOLS: Record<string, number> = {
  laureth: 186.33,
  trideceth: 200.36,
  ceteth: 242.44,
  oleth: 268.48,
  steareth: 270.49,
  isosteareth: 270.49,
  ceteareth: 256.5, // about half C16, half C18
  beheneth: 326.6,
}

/** Molar mass of the fatty acid [g/mol] of a polyethylene glycol monoester. */
const ACIDS: Record<string, number> = {
  laurate: 200.32,
  palmitate: 256.42,
  stearate: 284.48,
  isostearate: 284.48,
  oleate: 282.46,
}

/**
 * HLB of an ethoxylate: a fifth of the mass per cent of oxyethylene; null for any other name.
 * Source: the rule of W. C. Griffin, J. Soc. Cosmet. Chem. 5 (1954) 249 (from memory). Molar masses by atomic weights.
 */
export function hlbOfEthoxylate(id: string): number | null {
  const ether = /^([a-z]+eth)-(\d+)$/.exec(id)
  const ester = /^peg-(\d+)-([a-z]+)$/.exec(id)
  const hydrophobe = ether ? ALCOHOLS[ether[1] ?? ''] : ester ? ACIDS[ester[2] ?? ''] : undefined
  if (hydrophobe === undefined) return null
  const oxyethylene = Number(ether?.[2] ?? ester?.[1]) * OXYETHYLENE_G_PER_MOL
  return (20 * oxyethylene) / (oxyethylene + hydrophobe)
}

/** Points out an HLB that does not go with the oxyethylene in the name: a digit slipped, or another grade. */
export const hlbNearWorkedOut: Lint = (_raw, { ingredients }) =>
  [...ingredients.values()].flatMap((ingredient) => {
    const expected = hlbOfEthoxylate(ingredient.id)
    if (expected === null) return []
    return (ingredient.facts.get('hlb') ?? []).flatMap((claim) => {
      const stated = rangeOfClaim(claim)
      if (!stated || gap(stated, { min: expected, max: expected }) <= TOLERANCE) return []
      const text = `${stated.min ?? '?'} to ${stated.max ?? '?'}`
      return [
        { path: placeOf(ingredient, claim), message: `HLB ${text}, its oxyethylene gives ${expected.toFixed(1)}` },
      ]
    })
  })
