import { worstAccess } from '#engine/model/access.ts'
import { carriedAt } from '#engine/chemistry/ph/speciate.ts'
import type { Claim, Ingredient, Role } from '#engine/model/records.ts'
import { roundTo } from '#engine/units/round.ts'
import type { AcidCompound, AcidTable } from './acids.ts'

/** The property is stated near this pH. */
const USUAL_PH = 5
/** Nearer to neither acid nor base than this it moves no pH, it buffers: nothing to dose by. */
const LEAST_PER_MOL = 0.2

/** Charge of one mole at the usual pH, its ions included: what it has given off or taken up. */
const chargeOf = ({ acids, ions }: AcidCompound): number =>
  acids.reduce(
    (sum, { acid, per_mol }) => {
      const pkas = acid.steps.map(({ pka }) => pka)
      return sum + per_mol * carriedAt({ charge: acid.charge, pkas, mol_per_l: 1 }, pkas, USUAL_PH).charge
    },
    ions.reduce((sum, { charge, mol_per_l }) => sum + charge * mol_per_l, 0),
  )

const isDosedByIt = (one: Ingredient, roles: ReadonlyMap<string, Role>): boolean =>
  one.roles.some(({ role }) => roles.get(role)?.swap.dose === 'equivalents')

/**
 * Protons that a mole gives off or takes up near pH 5, by the acid constants at 25 C without salt, for what is dosed by
 * them; marked derived. None where the record states them.
 */
export function equivalentClaims(
  one: Ingredient,
  { byIngredient }: AcidTable,
  roles: ReadonlyMap<string, Role>,
): Claim[] {
  const compound = byIngredient.get(one.id)
  if (!compound || one.facts.has('equivalents') || !isDosedByIt(one, roles)) return []
  const steps = compound.acids.flatMap(({ acid }) => acid.steps)
  const net = Math.abs(chargeOf(compound))
  if (steps.length === 0 || compound.acids.some(({ acid }) => acid.apparent) || net < LEAST_PER_MOL) return []
  return [
    {
      id: `${one.id}#equivalents/derived`,
      property: 'equivalents',
      value: roundTo(net, 2),
      unit: '1/mol',
      kind: 'derived',
      source: [...new Set(steps.map(({ source }) => source))].sort().join('; '),
      locator: `worked out at pH ${USUAL_PH} from ${steps.length === 1 ? 'the acid constant' : 'the acid constants'}`,
      access: worstAccess(steps),
      date: '2026-11-28',
      used: true,
    },
  ]
}
