import { MIXTURE_POLYMERS, SURFACTANT_KINDS, surfactantTotal } from './mixture.ts'
import type { Mixture, SurfactantKind } from './mixture.ts'

/** Share of each kind in all surfactants, 0 to 1. */
export function kindShares(mixture: Mixture): Record<SurfactantKind, number> {
  const total = surfactantTotal(mixture)
  const shares = Object.fromEntries(SURFACTANT_KINDS.map((kind) => [kind, 0])) as Record<SurfactantKind, number>
  for (const { kind, share_percent } of mixture.surfactants) shares[kind] += share_percent / total
  return shares
}

const CHARGE: Readonly<Record<SurfactantKind, string>> = {
  amphoacetate: 'amphoteric',
  betaine: 'amphoteric',
  'citrate-ester': 'anionic',
  glucoside: 'nonionic',
  'mild-anionic': 'anionic',
  'short-quat': 'cationic',
}

/** Thickener to surfactants, by weight, at which the term is 0: the middle of what was measured. */
const USUAL_LOAD = 1 / 7

/**
 * What may decide whether a mixture holds, as numbers of like size:
 *   polymer:p       1 for that cationic polymer (how densely it is charged)
 *   thickener:t     1 for that nonionic thickener
 *   load            log2 of thickener to surfactants, 0 at the middle: what the micelles have to carry
 *   share:k         share of a kind in all surfactants
 *   charge:c        the same summed by the sign of the charge
 *   share:k*p       share of a kind beside that polymer: pairing of charges
 *   like:k          4 x share squared: two of one kind behave as one
 *   cross:k*l       4 x the product of two shares: what two kinds do together beyond their sum
 * All are ratios: a formula diluted as a whole keeps them.
 */
export function termsOf(mixture: Mixture): ReadonlyMap<string, number> {
  const terms = new Map<string, number>()
  const shares = kindShares(mixture)
  for (const polymer of MIXTURE_POLYMERS) terms.set(`polymer:${polymer}`, Number(mixture.polymer === polymer))
  terms.set('thickener:peg-ester', Number(mixture.thickener === 'peg-ester'))
  terms.set('load', Math.log2(mixture.thickener_percent / surfactantTotal(mixture) / USUAL_LOAD))
  SURFACTANT_KINDS.forEach((kind, at) => {
    const share = shares[kind]
    const charge = `charge:${CHARGE[kind]}`
    terms.set(`share:${kind}`, share)
    terms.set(charge, (terms.get(charge) ?? 0) + share)
    terms.set(`like:${kind}`, 4 * share ** 2)
    for (const polymer of MIXTURE_POLYMERS)
      terms.set(`share:${kind}*${polymer}`, mixture.polymer === polymer ? share : 0)
    for (const other of SURFACTANT_KINDS.slice(at + 1)) terms.set(`cross:${kind}*${other}`, 4 * share * shares[other])
  })
  return terms
}
