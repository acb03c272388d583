import { LYE_G_PER_MOL, lyeForFats } from '#engine/chemistry/lye.ts'
import type { Lye, SoapBatch } from '#engine/chemistry/lye.ts'
import { KOH_MG_PER_MOL } from '#engine/chemistry/oil-constants.ts'
import type { World } from '#engine/graph/world.ts'
import type { Step } from '#engine/model/calculation.ts'
import { readableName } from '#engine/units/readable-name.ts'
import type { Calculations } from './calculation.ts'
import { kohBound } from './koh-bound.ts'
import type { KohBound } from './koh-bound.ts'
import { statedInWords, subjectCalled } from './oil-input.ts'
import { figure, listed, step } from './step.ts'

interface Fat extends KohBound {
  name: string
  share_percent: number
}

/** @throws RangeError when a fat is unknown, has no known saponification value, or the shares do not add up */
function readFats(fats: readonly { ingredient: string; share_percent: number }[], world: World): Fat[] {
  const total = fats.reduce((sum, { share_percent }) => sum + share_percent, 0)
  if (Math.abs(total - 100) > 0.05 + 1e-9) {
    throw new RangeError(`fats: expected shares of the fats that add up to 100 %, got ${figure(total)} %`)
  }
  return fats.map(({ ingredient, share_percent }, index) => {
    const subject = subjectCalled(`fats/${index}/ingredient`, ingredient, world)
    const name = readableName(subject.inci)
    const bound = kohBound(subject)
    if (bound) return { ...bound, name, share_percent }
    throw new RangeError(
      `fats/${index}/ingredient: the saponification value of ${name} is not known; take it from the data sheet, lye is never guessed`,
    )
  })
}

const mean = (fats: readonly Fat[], of: (fat: Fat) => number): number =>
  fats.reduce((sum, fat) => sum + fat.share_percent * of(fat), 0) /
  fats.reduce((sum, fat) => sum + fat.share_percent, 0)

const LYE_NAME: Readonly<Record<Lye, string>> = { naoh: 'sodium hydroxide', koh: 'potassium hydroxide' }

/** Water in grams a gram of lye: a solution of a third, common practice. */
const WATER_A_GRAM = 2

const CAUTION =
  'Lye burns skin and eyes and can blind: goggles, gloves and long sleeves; weigh to the gram; lye into cold water, never water into lye; no aluminium; keep children and animals away. Rinse splashes with much water at once and get help'

/** What is left if the fats bind as little as the bottom of what is stated. */
function lotStep(batch: SoapBatch, lye_g: number, least: number): Step {
  const full_g = lyeForFats({ ...batch, saponification_value: least, superfat_percent: 0 })
  const left_percent = (1 - lye_g / full_g) * 100
  const text =
    left_percent < 0
      ? 'If your lots bind as little as the bottom of the stated range, lye stays FREE: raise the superfat or ask for the value of your lot'
      : 'If your lots bind as little as the bottom of the stated range, this superfat is left'
  return step(text, `(1 − ${figure(lye_g)} / ${figure(full_g)}) × 100`, left_percent, '%')
}

/** Less than any fat or wax binds: what is given is no fat [mg/g]. */
const LEAST_OF_A_FAT = 20

export const SOAP: Calculations<'lye-for-soap'> = {
  'lye-for-soap': {
    title: 'How much lye turns these fats into soap?',
    run({ fats: asked, ...rest }, world) {
      const fats = readFats(asked, world)
      const batch: SoapBatch = { ...rest, saponification_value: mean(fats, ({ mg }) => mg) }
      const least = mean(fats, (fat) => fat.least)
      if (least < LEAST_OF_A_FAT)
        throw new RangeError('fats: expected fats that alkali turns into soap, got hardly any')
      const lye_g = lyeForFats(batch)
      const koh_g = (batch.fats_g * batch.saponification_value) / 1000
      const lye_low_g = lyeForFats({ ...batch, saponification_value: least })
      const lye_high_g = lyeForFats({ ...batch, saponification_value: mean(fats, (fat) => fat.most) })
      const { lye, fats_g, superfat_percent, purity_percent, saponification_value: mg } = batch
      return {
        values: { lye_g, water_g: lye_g * WATER_A_GRAM, lye_low_g, lye_high_g },
        steps: [
          ...fats.map((fat) =>
            step(
              `${fat.name}: ${fat.what} ${statedInWords(fat.claim)}`,
              `${figure(fat.share_percent)} % × ${figure(fat.mg)}`,
              fat.mg,
              'mg KOH/g',
            ),
          ),
          step(
            'Mean of the fats by mass',
            fats.map((fat) => `${figure(fat.share_percent / 100)} × ${figure(fat.mg)}`).join(' + '),
            mg,
            'mg KOH/g',
          ),
          step('KOH that binds all of it', `${figure(fats_g)} × ${figure(mg)} / 1000`, koh_g, 'g'),
          step(
            `As ${LYE_NAME[lye]} of ${figure(purity_percent)} %, with ${figure(superfat_percent)} % of the fats left`,
            `${figure(koh_g)} × ${LYE_G_PER_MOL[lye]} / ${KOH_MG_PER_MOL / 1000} × (1 − ${figure(superfat_percent / 100)}) / ${figure(purity_percent / 100)}`,
            lye_g,
            'g',
          ),
          lotStep(batch, lye_g, least),
          step(
            'Water for a solution of a third (common practice, 1.5 to 3 times the lye)',
            `${figure(lye_g)} × ${WATER_A_GRAM}`,
            lye_g * WATER_A_GRAM,
            'g',
          ),
          step(CAUTION, `${figure(lye_g)} g of ${LYE_NAME[lye]}`, lye_g, 'g'),
        ],
        range:
          'Fats whose saponification value is known; lots of one fat differ by 2 to 5 %, hence the superfat (5 to 8 % in bars, common practice). Acids that are added (citric, lactic) bind lye of their own. Jojoba and other waxes saponify slowly and in part. Test the finished soap before use; local law and a safety assessor decide about sale.',
        sources: listed('atomic-weights-mem', 'practice', ...fats.map(({ claim }) => claim.source)),
      }
    },
  },
}
