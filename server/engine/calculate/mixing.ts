import { activeMatterDose } from '#engine/chemistry/active-matter-dose.ts'
import { short } from '#engine/units/round.ts'
import type { Calculations } from './calculation.ts'

export const MIXING: Calculations<'active-matter-dose'> = {
  'active-matter-dose': {
    title: 'How much of another bottle brings the same active matter?',
    run({ old_percent, old_active_percent, new_active_percent }) {
      const new_percent = activeMatterDose(old_percent, old_active_percent, new_active_percent)
      const active_percent = (old_percent * old_active_percent) / 100
      return {
        values: { new_percent },
        steps: [
          {
            text: 'Active matter that the old one brings into the formula',
            expression: `${short(old_percent)} × ${short(old_active_percent)} / 100`,
            value: active_percent,
            unit: '%',
          },
          {
            text: 'The same active matter from the new one',
            expression: `${short(active_percent)} / ${short(new_active_percent)} × 100`,
            value: new_percent,
            unit: '%',
          },
        ],
        range: 'Mass balance: holds always. Equal active matter is not equal foam, feel or thickness.',
        sources: ['practice'],
      }
    },
  },
}
