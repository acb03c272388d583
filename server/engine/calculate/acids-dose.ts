import { chargePerMole, doseTo, DOSE_MAX_MOL_PER_L, wayTo, withAdditive } from '#engine/chemistry/ph/dose-to.ts'
import type { Additive } from '#engine/chemistry/ph/dose-to.ts'
import type { Mixture } from '#engine/chemistry/ph/mixture.ts'
import { solvePh } from '#engine/chemistry/ph/solve-ph.ts'
import { additiveOf } from '#engine/knowledge/acids.ts'
import type { AcidCompound } from '#engine/knowledge/acids.ts'
import { roundTo, short } from '#engine/units/round.ts'
import { compoundOrThrow, readMixture, sourcesOfAcids } from './acids-mixture.ts'
import { constantSteps, rangeOf, step } from './acids-steps.ts'
import type { Calculation } from './calculation.ts'

/** @throws RangeError where the addition pulls the other way or does not get there */
function doseOrThrow(mixture: Mixture, additive: Additive, asked: { name: string; target_ph: number }): number {
  const { name, target_ph } = asked
  const dose = doseTo(mixture, additive, target_ph)
  if (dose !== null) return dose
  const { ph, ionic_strength } = solvePh(mixture)
  const way = wayTo(mixture, target_ph)
  const charge = chargePerMole(additive, target_ph, { ionic_strength, temp_c: mixture.temp_c })
  const lies = `${short(target_ph)} lies ${way === 'acid' ? 'below' : 'above'} pH ${roundTo(ph, 2)} of the mixture`
  const pullsTheOtherWay = way === 'acid' ? charge >= 0 : charge <= 0
  throw new RangeError(
    pullsTheOtherWay
      ? `target_ph: ${lies} and asks for ${way === 'acid' ? 'an acid' : 'a base'}, which ${name} is not at that pH`
      : `target_ph: ${lies}; not even ${DOSE_MAX_MOL_PER_L} mol/L of ${name} gets there`,
  )
}

/** @throws RangeError for a mixture of substances, which has no molar mass */
function molarMassOf({ name, molar_mass }: AcidCompound): number {
  if (molar_mass === undefined) throw new RangeError(`add: ${name} has no molar mass to turn moles into per cent`)
  return molar_mass
}

export const ACID_DOSE: Calculation<'acid-dose'> = {
  title: 'How much acid or base brings this mixture to a pH?',
  run(input, { knowledge }) {
    const mixture = readMixture(input, knowledge.acids)
    const compound = compoundOrThrow(knowledge.acids, input.add, 'add')
    const molar_mass = molarMassOf(compound)
    const { target_ph, temp_c } = input
    const additive = additiveOf(compound, temp_c)
    const dose = doseOrThrow(mixture, additive, { name: compound.name, target_ph })
    const after = solvePh(withAdditive(mixture, additive, dose))
    const charge = chargePerMole(additive, target_ph, { ionic_strength: after.ionic_strength, temp_c })
    const dose_mmol_per_l = dose * 1000
    const dose_percent = (dose * molar_mass) / 10
    const acids = [...mixture.acids, ...compound.acids.map(({ acid }) => acid)]
    return {
      values: { dose_mmol_per_l, dose_percent },
      steps: [
        ...constantSteps(mixture),
        step('pH of the mixture as it is', 'Σ charges = 0', solvePh(mixture).ph, 'pH'),
        step(`Charge that a mole of ${compound.name} carries at pH ${short(target_ph)}`, 'Σ z · share', charge, ''),
        step(
          'Charges of the mixture that are left over at the target',
          `${short(-charge)} × dose`,
          -charge * dose_mmol_per_l,
          'mmol/L',
        ),
        step('Dose', 'charges left over / charge of a mole', dose_mmol_per_l, 'mmol/L'),
        step('By mass, pure and dry', `${short(dose_mmol_per_l)} × ${short(molar_mass)} / 10000`, dose_percent, '%'),
        step('pH with this dose, solved again', 'Σ charges = 0', after.ph, 'pH'),
      ],
      range: `${rangeOf({ ...mixture, acids }, after.ionic_strength)} The volume of the addition is not counted.`,
      sources: sourcesOfAcids(acids),
    }
  },
}
