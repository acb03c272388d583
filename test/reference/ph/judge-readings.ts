import { doseTo } from '#engine/chemistry/ph/dose-to.ts'
import { solvePh } from '#engine/chemistry/ph/solve-ph.ts'
import { additiveOf, compoundNamed } from '#engine/knowledge/acids.ts'
import type { ReadMixture } from '#engine/calculate/acids-mixture.ts'
import { mixtureOf, writtenIn } from './cases.ts'
import type { AdjustCase } from './cases.ts'
import { dose, judged, MMOL, share, world } from './judged.ts'
import type { Figures, Judged } from './judged.ts'

/**
 * Their sodium was worked out with another activity law (Davies, which gives 6.00 and 5.70; by hand), 0.06 away at this
 * ionic strength of 0.26. The reading is what a person has: sodium is set to it, and the rest compared.
 */
const SODIUM_OF_ANOTHER_LAW = new Set(['adj-084'])

function measuredProduct(one: AdjustCase): ReadMixture {
  const written = writtenIn(one)
  if (!SODIUM_OF_ANOTHER_LAW.has(one.id)) return mixtureOf(written)
  const lye = dose(written.systems, [], 'NaOH', Number(one.expected['ph_start']))['dose_mmol_per_l'] ?? NaN
  return mixtureOf({ ...written, ions: [[1, lye * MMOL]] })
}

/** The straight line of the case is checked as arithmetic: its dose, and where it would really lead. */
export function measureTwice(one: AdjustCase): Judged[] {
  const mixture = measuredProduct(one)
  const compound = compoundNamed(world().knowledge.acids, String(one.inputs['acid']))
  const additive = additiveOf(compound ?? { name: '', acids: [], ions: [] }, 25)
  const target_ph = Number(one.inputs['target_ph'])
  const phWith = (mmol: number): number =>
    solvePh({
      ...mixture,
      systems: [
        ...mixture.systems,
        ...additive.systems.map((system) => ({ ...system, mol_per_l: (system.mol_per_l * mmol) / 1000 })),
      ],
      ions: [...mixture.ions, ...additive.ions.map((ion) => ({ ...ion, mol_per_l: (ion.mol_per_l * mmol) / 1000 }))],
    }).ph
  const trial = Number(one.inputs['trial_dose_mmol_per_kg'])
  const start = solvePh(mixture).ph
  const line = (trial * (start - target_ph)) / (start - phWith(trial))
  const printed = one.expected as Figures
  return [
    judged('start pH', printed['ph_start'], start, 0.05),
    judged('pH after the trial', printed['ph_after_trial'], phWith(trial), 0.05),
    share('straight line, mmol/kg', printed['linear_total_dose_mmol_per_kg'], line, 2),
    judged(
      'pH where the straight line leads',
      printed['ph_if_linear_dose_were_added_at_once'],
      phWith(Number(printed['linear_total_dose_mmol_per_kg'])),
      0.05,
    ),
    judged(
      'pH after 70 % of it',
      printed['ph_after_70_percent_step'],
      phWith(Number(printed['dose_after_70_percent_step_mmol_per_kg'])),
      0.05,
    ),
    judged(
      'pH with the second estimate',
      printed['ph_with_second_estimate'],
      phWith(Number(printed['second_estimate_mmol_per_kg'])),
      0.05,
    ),
    {
      ...share(
        'exact dose, mmol/kg',
        printed['exact_total_dose_mmol_per_kg'],
        (doseTo(mixture, additive, target_ph) ?? NaN) * 1000,
        2,
      ),
      ...(SODIUM_OF_ANOTHER_LAW.has(one.id) && { flagged: 'printed by the Davies law, which stands 2.1 % apart here' }),
    },
  ]
}
