import { acidInEmulsion, ionsForEachAcid } from '#engine/chemistry/preservation/acid-in-emulsion.ts'
import { acidSolubility } from '#engine/chemistry/preservation/acid-solubility.ts'
import { partitionWithMicelles } from '#engine/chemistry/preservation/partition-with-micelles.ts'
import { twoPhasePartition } from '#engine/chemistry/preservation/two-phase-partition.ts'
import type { Step } from '#engine/model/calculation.ts'
import { short } from '#engine/units/round.ts'
import type { Calculation, Calculations } from './calculation.ts'

const step = (text: string, expression: string, value: number, unit: string): Step => ({
  text,
  expression,
  value,
  unit,
})

const TWO_PHASES: Calculation<'two-phase-partition'> = {
  title: 'How much of a preservative stays in the water when oil takes its part?',
  run(input) {
    const { total_percent: total, partition_ratio: k, oil_to_water: phi, water_solubility_percent: cap } = input
    const values = twoPhasePartition(input)
    const dissolved = (total * (phi + 1)) / (k * phi + 1)
    const { water_percent, oil_percent } = values
    return {
      values,
      steps: [
        step(
          'The total is spread over oil and water in the ratio of the partition',
          `${short(total)} × (${short(phi)} + 1) / (${short(k)} × ${short(phi)} + 1)`,
          dissolved,
          '% of the water phase',
        ),
        ...(cap === undefined
          ? []
          : [
              step(
                'Water holds no more than the solubility',
                `the smaller of ${short(dissolved)} and ${short(cap)}`,
                water_percent,
                '% of the water phase',
              ),
            ]),
        step(
          'The oil holds the partition ratio times that',
          `${short(k)} × ${short(water_percent)}`,
          oil_percent,
          '% of the oil phase',
        ),
      ],
      range:
        'Two phases at equilibrium, no micelles, no ions, no pairing in the oil. Where the solubility caps the water, the rest stays undissolved.',
      sources: ['BEAN1965', 'BEAN1972'],
    }
  },
}

const MICELLES: Calculation<'partition-with-micelles'> = {
  title: 'How much of a preservative stays free beside oil and the micelles of a surfactant?',
  run(input) {
    const { total_percent, partition_ratio: k, oil_to_water: phi, binding_per_percent, surfactant_percent } = input
    const values = partitionWithMicelles(input)
    return {
      values,
      steps: [
        step(
          'Total over free within the water phase',
          `1 + ${short(binding_per_percent)} × ${short(surfactant_percent)}`,
          values.total_to_free,
          '',
        ),
        step(
          'Free in the water beside oil and micelles',
          `${short(total_percent)} × (${short(phi)} + 1) / (${short(k)} × ${short(phi)} + ${short(values.total_to_free)})`,
          values.free_percent,
          '% of the water phase',
        ),
      ],
      range:
        'A straight line of total over free against surfactant, as measured up to about 5 % of polysorbate 80. Equilibrium, no ions.',
      sources: ['BEAN1972', 'PS80_LINE'],
    }
  },
}

const ACID: Calculation<'acid-in-emulsion'> = {
  title: 'How much of an acid preservative has to go in, for so much of it undissociated in the water?',
  run(input) {
    const { undissociated_percent, ph, pka, partition_ratio: k, oil_to_water: phi } = input
    const total_percent = acidInEmulsion(undissociated_percent, input)
    const ions = ionsForEachAcid(ph, pka)
    return {
      values: { total_percent },
      steps: [
        step('Ions for each undissociated molecule', `10^(${short(ph)} − ${short(pka)})`, ions, ''),
        step('In the oil for each of them', `${short(k)} × ${short(phi)}`, k * phi, ''),
        step(
          'Total that has to go in',
          `${short(undissociated_percent)} × (${short(k * phi)} + 1 + ${short(ions)})`,
          total_percent,
          '% of the water phase',
        ),
      ],
      range:
        'One-step acid, dilute, no micelles; only the undissociated form moves into the oil, and it does not pair up there.',
      sources: ['MARTIN', 'BEAN1972'],
    }
  },
}

const SOLUBILITY: Calculation<'acid-solubility'> = {
  title: 'How much of a weak acid dissolves at this pH?',
  run({ intrinsic_solubility_percent, ph, pka }) {
    const solubility_percent = acidSolubility(intrinsic_solubility_percent, ph, pka)
    const ions = ionsForEachAcid(ph, pka)
    return {
      values: { solubility_percent },
      steps: [
        step('Ions for each undissociated molecule', `10^(${short(ph)} − ${short(pka)})`, ions, ''),
        step(
          'The undissociated acid is saturated, its ions come on top',
          `${short(intrinsic_solubility_percent)} × (1 + ${short(ions)})`,
          solubility_percent,
          '%, counted as the acid',
        ),
      ],
      range:
        'An upper bound: above the pKa the salt has a solubility of its own. Sorbic acid at pH 5.9 dissolves to half of it.',
      sources: ['ADDBOOK'],
    }
  },
}

/** Calculations about preservatives in water, oil and micelles. */
export const PRESERVATION: Calculations<
  'two-phase-partition' | 'partition-with-micelles' | 'acid-in-emulsion' | 'acid-solubility'
> = {
  'two-phase-partition': TWO_PHASES,
  'partition-with-micelles': MICELLES,
  'acid-in-emulsion': ACID,
  'acid-solubility': SOLUBILITY,
}
