import { diluted } from '#engine/chemistry/ph/dilute.ts'
import { solvePh } from '#engine/chemistry/ph/solve-ph.ts'
import { undissociatedShare } from '#engine/chemistry/undissociated-share.ts'
import { short } from '#engine/units/round.ts'
import { ACID_DOSE } from './acids-dose.ts'
import { readMixture, sourcesOfAcids } from './acids-mixture.ts'
import { balanceSteps, constantSteps, rangeOf, step } from './acids-steps.ts'
import type { Calculation, Calculations } from './calculation.ts'

const UNDISSOCIATED: Calculation<'undissociated-share'> = {
  title: 'Which share of an acid is undissociated at this pH?',
  run({ ph, pka }) {
    const share = undissociatedShare(ph, pka)
    const ions_per_molecule = 10 ** (ph - pka)
    return {
      values: { share },
      steps: [
        step('Ions for each undissociated molecule', `10^(${short(ph)} - ${short(pka)})`, ions_per_molecule, ''),
        step('Undissociated share', `1 / (1 + ${short(ions_per_molecule)})`, share, ''),
      ],
      range:
        'One step of one acid in the water phase, with the constant at this temperature and salt level: at 0.1 mol/L of salt the constant of an uncharged acid is about 0.11 lower. Acid in oil or micelles is not counted.',
      sources: ['ANDERSON1967'],
    }
  },
}

const BUFFER: Calculation<'buffer-ph'> = {
  title: 'Which pH does this mixture of acids, bases and salts have?',
  run(input, { knowledge }) {
    const mixture = readMixture(input, knowledge.acids)
    const solved = solvePh(mixture)
    return {
      values: { ph: solved.ph, ionic_strength: solved.ionic_strength },
      steps: [...constantSteps(mixture), ...balanceSteps(mixture, solved)],
      range: rangeOf(mixture, solved.ionic_strength),
      sources: sourcesOfAcids(mixture.acids),
    }
  },
}

const DILUTION: Calculation<'dilution-ph'> = {
  title: 'What does a test strip or meter read after dilution?',
  run(input, { knowledge }) {
    const mixture = readMixture(input, knowledge.acids)
    const share = input.product_g / (input.product_g + input.water_g)
    const neat = solvePh(mixture)
    const thin = solvePh(diluted(mixture, share))
    return {
      values: { ph: neat.ph, ph_diluted: thin.ph },
      steps: [
        step(
          'Share of product in the dilution',
          `${short(input.product_g)} / (${short(input.product_g)} + ${short(input.water_g)})`,
          share,
          '',
        ),
        step('pH of the product itself, by its charges', 'Σ charges = 0', neat.ph, 'pH'),
        step('Its ionic strength', '½ Σ c z²', neat.ionic_strength, 'mol/L'),
        step(
          'pH of the dilution, all totals times the share',
          `Σ charges = 0 at ${short(share)} of each`,
          thin.ph,
          'pH',
        ),
        step('Its ionic strength', '½ Σ c z²', thin.ionic_strength, 'mol/L'),
        step('Shift', `${short(thin.ph)} - ${short(neat.ph)}`, thin.ph - neat.ph, 'pH'),
      ],
      range: `${rangeOf(mixture, neat.ionic_strength)} Water without carbon dioxide: air-saturated water draws a product that hardly buffers to pH 5.6 to 6.`,
      sources: sourcesOfAcids(mixture.acids),
    }
  },
}

export const ACIDS: Calculations<'undissociated-share' | 'buffer-ph' | 'acid-dose' | 'dilution-ph'> = {
  'undissociated-share': UNDISSOCIATED,
  'buffer-ph': BUFFER,
  'acid-dose': ACID_DOSE,
  'dilution-ph': DILUTION,
}
