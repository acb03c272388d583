import { carriedAt } from '#engine/chemistry/ph/speciate.ts'
import { numberOf } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { AcidTable } from '#engine/knowledge/acids.ts'

/** Where the pH is not known: equivalents on record are those near it. */
const USUAL_PH = 5
/** Nearer to neither acid nor base than this it moves no pH, it buffers. */
const LEAST_PER_MOL = 0.2

/**
 * Protons that one mole gives off (or takes up) until the water has this pH [mol/mol]: the charge that it then carries,
 * ions included, by the constants at 25 °C without salt. Where no constants are known, or too little is given off to
 * dose by, the figure on record; undefined where there is none either.
 *
 * Valid for what stays dissolved: gas that leaves is not counted.
 */
export function equivalentsAt(subject: Subject, ph: number | null, { byIngredient }: AcidTable): number | undefined {
  const recorded = numberOf(subject, 'equivalents')
  const compound = byIngredient.get(subject.id)
  if (!compound || compound.acids.some(({ acid }) => acid.apparent)) return recorded
  const ofAcids = compound.acids.reduce((sum, { acid, per_mol }) => {
    const pkas = acid.steps.map(({ pka }) => pka)
    const system = { charge: acid.charge, pkas, mol_per_l: 1 }
    return sum + per_mol * carriedAt(system, pkas, ph ?? USUAL_PH).charge
  }, 0)
  const ofIons = compound.ions.reduce((sum, { charge, mol_per_l }) => sum + charge * mol_per_l, 0)
  const net = Math.abs(ofAcids + ofIons)
  return net < LEAST_PER_MOL ? recorded : net
}
