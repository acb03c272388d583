import { contradicts, extrapolate } from '#engine/chemistry/ph/extrapolate.ts'
import type { Extrapolated, Titration } from '#engine/chemistry/ph/extrapolate.ts'
import type { Mixture } from '#engine/chemistry/ph/mixture.ts'
import type { Say } from '#engine/words/say.ts'
import { bottleOf } from './additive.ts'
import type { Addition } from './additive.ts'
import type { AdjustAsked, Gap, Way } from './adjust-types.ts'
import { said } from './amounts.ts'
import type { Amounts } from './amounts.ts'
import { stepsTo, trialOf, trialStep } from './dose-steps.ts'
import { straightLine } from './readings.ts'

export interface ReadingsAsked {
  measured: NonNullable<AdjustAsked['measured']>
  /** the same readings as pH of the product itself, where they were taken in a dilution */
  product_ph: readonly number[]
  known: Mixture
  addition: Addition | null
  amounts: Amounts | null
  /** what the other way would dose, for the size of a first step */
  composition: Way
  target_ph: number
  batch_g: number
  error_ph: number
  chosen: boolean
  say: Say
}

const notKnown = (uncertainty: string, unknown: Gap[], steps: Way['steps'] = []): Way => ({
  way: 'measured',
  verdict: 'not-known',
  dose_g: null,
  likely_g: null,
  still_g: null,
  steps,
  uncertainty,
  because: [],
  unknown,
})

/** A quarter of the least that the other way knows, else about a drop. */
function firstStep({ composition, batch_g }: ReadingsAsked, addition: Addition): number {
  const usual = trialOf(batch_g, addition.strength_percent)
  const least = composition.dose_g?.min ?? 0
  if (composition.verdict === 'known' && composition.likely_g !== null) return Math.min(usual, composition.likely_g / 4)
  return Math.max(usual, least / 4)
}

/** Where the readings leave nothing safe to plan, a fraction of the last step feels the way. */
const FEELING_SHARE = 1 / 3

/** A quarter of what is likely still needed is the most that feeling the way may take. */
const LIKELY_SHARE = 1 / 4

function nextSteps(found: Extrapolated, asked: ReadingsAsked, addition: Addition, amounts: Amounts): Way['steps'] {
  const added_g = asked.measured.at(-1)?.added_g ?? 0
  const lastStep_g = added_g - (asked.measured.at(-2)?.added_g ?? 0)
  const plan_g = amounts.grams(found.plan) - added_g
  const likely_g = amounts.grams(found.likely) - added_g
  const feeling_g = Math.min(lastStep_g * FEELING_SHARE, likely_g * LIKELY_SHARE)
  return stepsTo(Math.max(plan_g, feeling_g), lastStep_g, { of: bottleOf(addition, asked.say), say: asked.say })
}

function factsOf(
  { measured, product_ph, target_ph, say }: ReadingsAsked,
  found: Extrapolated,
  of: string,
): Way['because'] {
  const line = straightLine(
    measured.map(({ added_g }, n) => ({ added_g, ph: product_ph[n] ?? 0 })),
    target_ph,
  )
  return [
    ...measured.map(({ added_g, ph }) => ({ fact: say`pH ${say.short(ph)} with ${say.short(added_g)} g of ${of}` })),
    {
      fact: say`what is not known in the product holds ${say.short(found.capacity * 1000)} mmol per litre and unit of pH`,
    },
    ...(line === null
      ? []
      : [{ fact: say`a straight line through the last two readings would ask for ${say.short(line)} g in all` }]),
  ]
}

const here = ({ say, ...asked }: ReadingsAsked, added_g: number): Way => ({
  way: 'measured',
  verdict: 'known',
  dose_g: { min: added_g, max: added_g },
  likely_g: added_g,
  still_g: { min: 0, max: 0 },
  steps: [],
  uncertainty: say`Within the error of the reading (${say.short(asked.error_ph)}) it is there: measure again tomorrow.`,
  because: [
    { fact: say`last reading pH ${say.short(asked.product_ph.at(-1) ?? 0)}, target ${say.short(asked.target_ph)}` },
  ],
  unknown: [],
})

const sure = (error: string, say: Say): string =>
  say`Each reading counted as ±${error}. The least holds whatever is in the product; the most is an estimate (up to ten times what was held so far), and a buffer that acts only nearer the target is not seen yet. Never add more than the last step before you measure again.`

/** Readings nearer than their errors say little of the slope. */
function close({ product_ph, error_ph, say }: ReadingsAsked): string {
  const [before = 0, last = 0] = product_ph.slice(-2)
  return Math.abs(before - last) <= 2 * error_ph
    ? say`The last two readings lie no further apart than their errors: the range is wide until a step shows more. `
    : ''
}

function whenMeasured(asked: ReadingsAsked, addition: Addition, amounts: Amounts): Way {
  const { measured, product_ph, known, target_ph, error_ph, say } = asked
  const readings = measured.map(({ added_g }, n) => ({
    added_mol_per_l: amounts.moles(added_g),
    ph: product_ph[n] ?? 0,
  }))
  const titration: Titration = { known, additive: addition.additive, readings, target_ph, error_ph }
  const other = contradicts(titration)
  const used = other ? { ...titration, known: { systems: [], ions: [], temp_c: known.temp_c } } : titration
  const found = extrapolate(used)
  const of = bottleOf(addition, say)
  if (found === null) return notKnown(say`${of} does not reach pH ${say.short(target_ph)} in this product`, [])
  const added_g = measured.at(-1)?.added_g ?? 0
  const total = (mol_per_l: number): number => said(Math.max(added_g, amounts.grams(mol_per_l)))
  const dose_g = { min: total(found.min), max: total(found.max) }
  return {
    way: 'measured',
    verdict: 'range',
    dose_g,
    likely_g: total(found.likely),
    still_g: { min: said(dose_g.min - added_g), max: said(dose_g.max - added_g) },
    steps: nextSteps(found, asked, addition, amounts),
    uncertainty: `${close(asked)}${sure(say.short(error_ph), say)}`,
    because: [
      ...factsOf(asked, found, of),
      ...(other ? [{ fact: say`the readings contradict the recipe: only the readings are used` }] : []),
    ],
    unknown: [],
  }
}

/** The dose from readings at the bench: a small step, a reading, the next step. */
export function byReadings(asked: ReadingsAsked): Way {
  const { measured, product_ph, addition, amounts, target_ph, error_ph, chosen, say } = asked
  if (addition === null || amounts === null)
    return notKnown(say`Not known which way the pH has to go`, [
      { says: say`the pH of the batch as it is: measure it (0 g added)` },
    ])
  const last_ph = product_ph.at(-1)
  if (last_ph !== undefined && Math.abs(last_ph - target_ph) <= error_ph)
    return here(asked, measured.at(-1)?.added_g ?? 0)
  const trial = trialStep(firstStep(asked, addition), bottleOf(addition, say), say)
  if (measured.length >= 2 && !chosen)
    return notKnown(say`Not known of what these grams were`, [
      { says: say`with: name the acid or base that was added` },
    ])
  if (measured.length < 2)
    return notKnown(
      say`Two readings are needed: one before anything goes in, one after a small step`,
      [
        {
          says:
            measured.length === 0
              ? say`the pH with 0 g, and the pH after a small step`
              : say`the pH after a small step`,
        },
      ],
      trial,
    )
  return whenMeasured(asked, addition, amounts)
}
