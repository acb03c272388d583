import { carriedAt } from '#engine/chemistry/ph/speciate.ts'
import { numberOf } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { AcidTable } from '#engine/knowledge/acids.ts'

/** Where the pH is not known: equivalents on record are those near it. */
const USUAL_PH = 5
/** Nearer to neither acid nor base than this it moves no pH, it buffers. */
const LEAST_PER_MOL = 0.2

/** What a mole carries at this pH, all its acids together and its ions; undefined where no constants are known. */
function carriedBy(subject: Subject, ph: number, { byIngredient }: AcidTable) {
  const compound = byIngredient.get(subject.id)
  if (!compound || compound.acids.some(({ acid }) => acid.apparent)) return undefined
  const ofIons = compound.ions.reduce((sum, { charge, mol_per_l }) => sum + charge * mol_per_l, 0)
  return compound.acids.reduce(
    (sum, { acid, per_mol }) => {
      const pkas = acid.steps.map(({ pka }) => pka)
      const { charge, variance } = carriedAt({ charge: acid.charge, pkas, mol_per_l: 1 }, pkas, ph)
      return { charge: sum.charge + per_mol * charge, variance: sum.variance + per_mol * variance }
    },
    { charge: ofIons, variance: 0 },
  )
}

/**
 * Protons that one mole gives off (or takes up) until the water has this pH [mol/mol]: the charge that it then carries,
 * ions included, by the constants at 25 °C without salt. Where no constants are known, or too little is given off to
 * dose by, the figure on record; undefined where there is none either.
 *
 * Valid for what stays dissolved: gas that leaves is not counted.
 */
export function equivalentsAt(subject: Subject, ph: number | null, acids: AcidTable): number | undefined {
  const net = Math.abs(carriedBy(subject, ph ?? USUAL_PH, acids)?.charge ?? 0)
  return net < LEAST_PER_MOL ? numberOf(subject, 'equivalents') : net
}

/**
 * How much a mole buffers at this pH: the spread of its charge [-], 0.25 at the constant of a single step and 0.05 about
 * 1.2 pH away from it; undefined where no constants are known.
 */
export const bufferingAt = (subject: Subject, ph: number, acids: AcidTable): number | undefined =>
  carriedBy(subject, ph, acids)?.variance
