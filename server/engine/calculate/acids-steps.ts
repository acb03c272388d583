import { activitySlope, IONIC_STRENGTH_MAX } from '#engine/chemistry/ph/activity.ts'
import type { Solved } from '#engine/chemistry/ph/solve-ph.ts'
import { apparentPkas, carriedAt } from '#engine/chemistry/ph/speciate.ts'
import { debyeHueckelA } from '#engine/chemistry/ph/water.ts'
import type { Step } from '#engine/model/calculation.ts'
import { short } from '#engine/units/round.ts'
import { cautionsOf } from './acids-mixture.ts'
import type { ReadMixture } from './acids-mixture.ts'

export const step = (text: string, expression: string, value: number, unit: string): Step => ({
  text,
  expression,
  value,
  unit,
})

/** Constants of every acid at the temperature of the mixture. */
export const constantSteps = ({ acids, systems, temp_c }: ReadMixture): Step[] =>
  acids.flatMap((acid, index) =>
    acid.steps.map((one, place) => {
      const moved =
        one.dh_kj_mol === undefined || one.temp_c === temp_c
          ? ''
          : `, moved by ${one.dh_kj_mol} kJ/mol and ${one.dcp_j_mol_k ?? 'no known'} J/(mol K)`
      return step(
        `pKa of ${acid.name}, step ${acid.steps.length > 1 ? one.step : 1}, at ${short(temp_c)} °C without salt`,
        `${one.pka} at ${one.temp_c} °C${moved}`,
        systems[index]?.pkas[place] ?? one.pka,
        '',
      )
    }),
  )

/** From the constants to the pH: salt, activities, charges. */
export function balanceSteps(mixture: ReadMixture, { ph, ionic_strength }: Solved): Step[] {
  const a = debyeHueckelA(mixture.temp_c)
  const slope = activitySlope(ionic_strength, a)
  return [
    step('Ionic strength of all ions together', '½ Σ c z²', ionic_strength, 'mol/L'),
    step(
      'Activity: -log γ of a single charge (times z² for z charges)',
      `${short(a)} √${short(ionic_strength)} / (1 + 1.5 √${short(ionic_strength)})`,
      slope,
      '',
    ),
    ...mixture.systems.map((system, index) =>
      step(
        `Mean charge of ${mixture.acids[index]?.name ?? 'the acid'} at the pH below`,
        'Σ z · share of each form',
        carriedAt(system, apparentPkas(system, slope), ph).charge,
        '',
      ),
    ),
    step('pH at which all charges add up to nothing', 'Σ c z (ions) + Σ c ⟨z⟩ (acids) + [H+] - [OH-] = 0', ph, 'pH'),
  ]
}

const RANGE =
  'Charge balance with activities (extended Debye-Hückel). Off published buffers by 0.02 in pH on average and by 0.1 at most, up to an ionic strength of 0.5 mol/L and from 0 to 60 °C. Closed vessel, 1 kg counted as 1 L, no ion pairs, nothing falls out. Surfactants, glycols and oil shift a real product by 0.1 to 0.3: always measure.'

/** Where this very mixture stands in that range. */
export function rangeOf(mixture: ReadMixture, ionic_strength: number): string {
  const salty =
    ionic_strength > IONIC_STRENGTH_MAX
      ? [`At ${short(ionic_strength)} mol/L this mixture lies above 0.5: the figure is a guide.`]
      : []
  return [RANGE, ...salty, ...cautionsOf(mixture.acids, mixture.temp_c)].join(' ')
}
