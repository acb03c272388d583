import type { Example } from './example.ts'
import { near, readReference, worked } from './say.ts'

interface OneHlb {
  inci: string
  published_hlb: number
  computed_hlb: number
  agrees_within_0_3?: boolean
}
interface Reference {
  griffin_eo: (OneHlb & { hydrophobe_molar_mass: number; ethylene_oxide_units: number })[]
  griffin_ester: (OneHlb & { saponification_value: number; acid_value_of_acid: number })[]
  davies: (OneHlb & { hydrophilic_sum: number; lipophilic_groups: number })[]
}

/** The one hydrophilic group that each molecule of the examples has. */
const GROUP: Readonly<Record<string, string>> = {
  'Sodium Lauryl Sulfate': '-SO4Na',
  'Sodium Oleate': '-COONa',
  'Potassium Oleate': '-COOK',
  'Cetyl Alcohol': '-OH (free)',
}

/** A listed HLB is printed with one decimal and rounded by its maker. */
const TO_LISTED = 0.3
/** The same worked out apart, printed with two decimals; molar masses may differ in the second. */
const TO_WORKED_OUT = 0.02

function bothOf(topic: string, row: OneHlb, got: number): Example[] {
  const flagged = row.agrees_within_0_3 === false
  return [
    near({ topic, id: `${row.inci}, listed`, flagged }, row.published_hlb, TO_LISTED, got),
    near({ topic, id: `${row.inci}, worked out apart` }, row.computed_hlb, TO_WORKED_OUT, got),
  ]
}

/** HLB of single emulsifiers: listed values and values worked out apart from this program. */
export function examples(): Example[] {
  const { griffin_eo, griffin_ester, davies } = readReference<Reference>('worked-examples.json')
  return [
    ...griffin_eo.flatMap((row) => {
      const { hydrophobe_molar_mass, ethylene_oxide_units: oxyethylene_units } = row
      return bothOf(
        'hlb-by-oxyethylene',
        row,
        worked('hlb-by-oxyethylene', { hydrophobe_molar_mass, oxyethylene_units }, 'hlb'),
      )
    }),
    ...griffin_ester.flatMap((row) => {
      const { saponification_value, acid_value_of_acid: acid_value } = row
      return bothOf(
        'hlb-by-saponification',
        row,
        worked('hlb-by-saponification', { saponification_value, acid_value }, 'hlb'),
      )
    }),
    ...davies.flatMap((row) => {
      const { inci, lipophilic_groups } = row
      return bothOf(
        'hlb-by-groups',
        row,
        worked('hlb-by-groups', { hydrophilic: [GROUP[inci] ?? ''], lipophilic_groups }, 'hlb'),
      )
    }),
  ]
}
