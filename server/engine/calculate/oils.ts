import {
  GLYCERYL_LESS_WATER_G_PER_MOL,
  IODINE_G_PER_MOL,
  iodineValue,
  KOH_MG_PER_MOL,
  saponificationOfMolecule,
  saponificationValue,
  sumsOfProfile,
} from '#engine/chemistry/oil-constants.ts'
import type { ProfileSums } from '#engine/chemistry/oil-constants.ts'
import { OXIDATION_WEIGHTS, oxidizability, withoutWeight } from '#engine/chemistry/oxidizability.ts'
import { numberOf } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { World } from '#engine/graph/world.ts'
import type { Step, Worked } from '#engine/model/calculation.ts'
import { middle } from '#engine/units/range.ts'
import { readableName } from '#engine/units/readable-name.ts'
import type { Calculations } from './calculation.ts'
import { printedClaim, profileInWords, readOil, statedInWords, subjectCalled } from './oil-input.ts'
import type { Oil, OilInput } from './oil-input.ts'
import { figure, listed, step } from './step.ts'

const firstSteps = ({ origin, profile }: Oil, { share, moles, oilMass }: ProfileSums): Step[] => [
  step(origin, profileInWords(profile), share, 'g of acids'),
  step(
    'Moles of acid, each by its own molar mass (the mean by mass reads seven low for coconut)',
    'Σ share / M',
    moles,
    'mol',
  ),
  step(
    'Mass of the triglyceride that they make: glycerol in, three water out',
    `${figure(share)} + ${figure(moles)} / 3 × ${GLYCERYL_LESS_WATER_G_PER_MOL}`,
    oilMass,
    'g',
  ),
]

/** What the record prints, beside what was worked out. */
function printedStep({ subject }: Oil, property: string, unit: string): { steps: Step[]; sources: string[] } {
  const claim = subject && printedClaim(subject, property)
  const value = claim && (claim.value ?? middle(claim))
  if (!claim || value === undefined) return { steps: [], sources: [] }
  const text = 'For comparison, as printed; single lots differ'
  return { steps: [step(text, statedInWords(claim), value, unit)], sources: [claim.source] }
}

const NOT_FOR =
  'Triglycerides only: not wax esters such as jojoba, not hydrocarbons such as squalane, not single esters such as isopropyl myristate.'

/** Wax esters and free acids have one bond that takes up KOH, hydrocarbons none; null for everything else. */
const bondsOf = ({ classes }: Subject): number | null => {
  if (classes.has('triglyceride')) return null
  if (classes.has('wax-ester') || classes.has('fatty-acid')) return 1
  return classes.has('hydrocarbon') ? 0 : null
}

/** Saponification value of one molecule, where the record says how large it is and its class how many bonds it has. */
function ofOneMolecule(subject: Subject): Worked | null {
  const bonds = bondsOf(subject)
  const molar_mass = numberOf(subject, 'molar_mass')
  if (bonds === null || molar_mass === undefined) return null
  const saponification_value = saponificationOfMolecule(molar_mass, bonds)
  const what = bonds === 0 ? 'has nothing that alkali can split' : 'has one bond that takes up KOH'
  const printed = printedStep({ profile: {}, origin: '', sources: [], subject }, 'saponification_value', 'mg/g')
  return {
    values: { saponification_value },
    steps: [
      step(
        `${readableName(subject.inci)} ${what}`,
        `${bonds} × ${KOH_MG_PER_MOL} / ${figure(molar_mass)}`,
        saponification_value,
        'mg/g',
      ),
      ...printed.steps,
    ],
    range: 'Wax esters, free fatty acids and hydrocarbons, as pure as their molar mass says.',
    sources: listed('atomic-weights-mem', ...printed.sources),
  }
}

function saponification(input: OilInput, world: World): Worked {
  if (input.ingredient !== undefined && input.fatty_acids === undefined) {
    const alone = ofOneMolecule(subjectCalled('ingredient', input.ingredient, world))
    if (alone) return alone
  }
  const oil = readOil(input, world, 'saponification_value')
  const sums = sumsOfProfile(oil.profile)
  const saponification_value = saponificationValue(oil.profile) ?? Number.NaN
  const printed = printedStep(oil, 'saponification_value', 'mg/g')
  return {
    values: { saponification_value },
    steps: [
      ...firstSteps(oil, sums),
      step(
        'KOH that takes up all acids of one gram',
        `${figure(sums.moles)} × ${KOH_MG_PER_MOL} / ${figure(sums.oilMass)}`,
        saponification_value,
        'mg/g',
      ),
      ...printed.steps,
    ],
    range: `${NOT_FOR} Within about 2 mg/g of a measured value for refined oils; unsaponifiable matter (shea: up to 19 %) lowers it.`,
    sources: listed('aocs-cd3a94-mem', ...oil.sources, ...printed.sources),
  }
}

const HYDROXY_NOTE = 'Ricinoleic acid: about 3 below a measured (Wijs) value. '

export const OILS: Calculations<'iodine-value' | 'saponification-value' | 'oxidizability'> = {
  'iodine-value': {
    title: 'Which iodine value has an oil with these fatty acids?',
    run(input, world) {
      const oil = readOil(input, world, 'iodine_value')
      const sums = sumsOfProfile(oil.profile)
      const iodine_value = iodineValue(oil.profile) ?? Number.NaN
      const printed = printedStep(oil, 'iodine_value', 'g/100 g')
      const hydroxy = 'C18:1-OH' in oil.profile ? HYDROXY_NOTE : ''
      return {
        values: { iodine_value },
        steps: [
          ...firstSteps(oil, sums),
          step('Moles of double bonds', 'Σ share × bonds / M', sums.doubleBondMoles, 'mol'),
          step(
            'One I2 a double bond',
            `${figure(sums.doubleBondMoles)} × ${IODINE_G_PER_MOL} × 100 / ${figure(sums.oilMass)}`,
            iodine_value,
            'g/100 g',
          ),
          ...printed.steps,
        ],
        range: `${hydroxy}${NOT_FOR} Within about 3 g/100 g of a measured value; reads low above 0.5 % of unsaponifiable matter.`,
        sources: listed('aocs-cd1c85', ...oil.sources, ...printed.sources),
      }
    },
  },
  'saponification-value': {
    title: 'Which saponification value has an oil with these fatty acids?',
    run: saponification,
  },
  oxidizability: {
    title: 'How fast does an oil of these acids take up oxygen, against others?',
    run(input, world) {
      const oil = readOil(input, world)
      const value = oxidizability(oil.profile, oil.subject ? 'ingredient' : 'fatty_acids')
      const left = withoutWeight(oil.profile)
      const printed = printedStep(oil, 'oxidation_h', 'h')
      const terms = Object.entries(OXIDATION_WEIGHTS).map(
        ([acid, weight]) => `${weight} × ${figure(oil.profile[acid] ?? 0)}`,
      )
      return {
        values: { oxidizability: value },
        steps: [
          step(oil.origin, profileInWords(oil.profile), 100, '%'),
          step(
            `Weighted sum of C18:1, C18:2 and C18:3${left.length > 0 ? `; ${left.map(([acid]) => acid).join(', ')} have no published weight and are left out` : ''}`,
            `(${terms.join(' + ')}) / 100`,
            value,
            '-',
          ),
          ...printed.steps,
        ],
        range:
          'Puts oils in order by their acids alone, for bulk oil without antioxidant; no shelf life. Tocopherols, metals, light, air and age can turn the order round, as measured stabilities show. The weights are from memory; pure esters are also quoted as 1 : 41 : 98.',
        sources: listed('fatemi-hammond-1980-mem', 'refaat-2009', ...oil.sources, ...printed.sources),
      }
    },
  },
}
