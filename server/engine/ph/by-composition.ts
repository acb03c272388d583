import { doseTo } from '#engine/chemistry/ph/dose-to.ts'
import { hiddenCharge, ionOf } from '#engine/chemistry/ph/hidden-charge.ts'
import type { Mixture } from '#engine/chemistry/ph/mixture.ts'
import { roundTo } from '#engine/units/round.ts'
import type { Say } from '#engine/words/say.ts'
import type { Addition } from './additive.ts'
import { bottleOf } from './additive.ts'
import type { Adjusted, Gap, Span, Way } from './adjust-types.ts'
import { said } from './amounts.ts'
import type { Amounts } from './amounts.ts'
import type { Composition } from './composition.ts'
import { stepsTo, trialOf, trialStep } from './dose-steps.ts'

/** Surfactants, glycols and oil shift a real product against a salt solution by so much; our guess. */
const MODEL_ERROR_PH = 0.2
/** Recipe and stated pH further apart than this contradict each other. */
const CONTRADICTS_PH = 0.3
/** Below this share of water a pH means little. */
export const LEAST_WATER_SHARE = 0.2

/**
 * What a wash of glucosides and betaine took up on the way from about pH 7 to about 5, in equivalents per kg and pH:
 * 0.25 % citric acid by one bench note; other batches may take a third or three times as much.
 */
const WASH_MOL_PER_KG_PH = { min: 0.0119 / 3, max: 0.0119 * 3 }
const WASH_RANGE_PH = { min: 4, max: 9 }

export interface CompositionAsked {
  composition: Composition
  start: NonNullable<Adjusted['start']> | null
  addition: Addition | null
  amounts: Amounts | null
  target_ph: number
  batch_g: number
  say: Say
}

/** The mixture with as much unnamed charge as brings it to a pH that was read. */
export const fittedTo = (mixture: Mixture, ph: number, more_mol_per_l = 0): Mixture => {
  const hidden = hiddenCharge(mixture, { systems: [], ions: [] }, { added_mol_per_l: 0, ph })
  return { ...mixture, ions: [...mixture.ions, ionOf(hidden + more_mol_per_l)] }
}

const notKnown = (uncertainty: string, unknown: Gap[], rest: Partial<Way> = {}): Way => ({
  way: 'composition',
  verdict: 'not-known',
  dose_g: null,
  likely_g: null,
  still_g: null,
  steps: [],
  uncertainty,
  because: [],
  unknown,
  ...rest,
})

const factsOf = ({ composition, start, target_ph, say }: CompositionAsked): Way['because'] => [
  { fact: say`water and what mixes with it make up ${say.short(composition.water_share * 100)} % of the product` },
  ...composition.lines.map(({ compound, mol_per_l }) => ({
    fact: say`${say.text(compound.name)}: ${say.short(mol_per_l * 1000)} mmol in a litre of that water`,
  })),
  ...(start
    ? [{ fact: say`from pH ${say.short(start.ph)} (${say.text(FROM[start.from])}) to ${say.short(target_ph)}` }]
    : [{ fact: say`the pH at the start is not known` }]),
]

const FROM = { measured: 'measured', formula: 'stated with the formula', composition: 'worked out from the lines' }

/** Doses of a mixture for the target and for as far on either side of it as the model may be off [mol/L]. */
function dosesOf(mixture: Mixture, addition: Addition, target_ph: number): Span & { at: number } {
  const down = addition.kind === 'acid' ? 1 : -1
  const dose = (ph: number): number => doseTo(mixture, addition.additive, Math.min(14, Math.max(0, ph))) ?? Number.NaN
  const at = dose(target_ph)
  const min = dose(target_ph + down * MODEL_ERROR_PH)
  const max = dose(target_ph - down * MODEL_ERROR_PH)
  return { at, min: Number.isNaN(min) ? 0 : min, max: Number.isNaN(max) ? at : max }
}

/** All lines known: the dose from the start that was read or stated, else from the lines alone. */
function whenKnown(asked: CompositionAsked, addition: Addition, amounts: Amounts): Way {
  const { composition, start, target_ph, batch_g, say } = asked
  const recipe_ph = composition.own?.ph ?? start?.ph ?? target_ph
  const fitted = start ? fittedTo(composition.mixture, start.ph) : composition.mixture
  const apart = start !== null && start.from === 'formula' && Math.abs(recipe_ph - start.ph) > CONTRADICTS_PH
  const doses = [fitted, ...(apart ? [composition.mixture] : [])].map((mixture) =>
    dosesOf(mixture, addition, target_ph),
  )
  const [first] = doses
  const grams = (of: (one: Span & { at: number }) => number, pick: (...all: number[]) => number): number =>
    said(amounts.grams(pick(...doses.map(of).map((dose) => (Number.isNaN(dose) ? 0 : dose)))))
  const dose_g = { min: grams(({ min }) => min, Math.min), max: grams(({ max }) => max, Math.max) }
  if (first === undefined || Number.isNaN(first.at))
    return notKnown(say`${bottleOf(addition, say)} does not reach pH ${say.short(target_ph)} here`, [], {
      because: factsOf(asked),
    })
  const likely_g = said(amounts.grams(first.at))
  const sure_g = apart ? dose_g.min : likely_g
  const of = bottleOf(addition, say)
  return {
    way: 'composition',
    verdict: apart ? 'range' : 'known',
    dose_g,
    likely_g,
    still_g: null,
    steps:
      sure_g > 0
        ? stepsTo(sure_g, sure_g / 2, { of, say })
        : trialStep(trialOf(batch_g, addition.strength_percent), of, say),
    uncertainty: apart
      ? say`By its lines the formula would be at pH ${roundTo(recipe_ph, 1)}, stated is ${say.short(start?.ph ?? 0)}: the range covers both. Measure the batch first.`
      : say`Good to about ${MODEL_ERROR_PH} in pH, which is the range given (our guess for a product with surfactant, glycol or oil); strengths of the bottles add to it.`,
    because: [...factsOf(asked), { fact: say`by its lines alone it would be at pH ${roundTo(recipe_ph, 2)}` }],
    unknown: [],
  }
}

/** The least that the known lines take, with whatever else from no hidden buffer to `most` [mol/L]. */
function spanWith(
  asked: CompositionAsked,
  start_ph: number,
  add: { addition: Addition; amounts: Amounts },
  most: Span,
): Span {
  const { composition, target_ph } = asked
  const down = add.addition.kind === 'acid' ? 1 : -1
  const doseWith = (more: number): number => {
    const mixture = fittedTo(composition.mixture, start_ph, down * more)
    return said(add.amounts.grams(doseTo(mixture, add.addition.additive, target_ph) ?? 0))
  }
  return { min: doseWith(most.min), max: doseWith(most.max) }
}

interface Partly extends CompositionAsked {
  start: NonNullable<Adjusted['start']>
}

const bareGaps = ({ unknown }: Composition): Gap[] => unknown.map(({ ingredient, says }) => ({ ingredient, says }))

/** A wash of glucosides and betaine: the range of bench practice. */
function asWash(asked: Partly, addition: Addition, amounts: Amounts): Way {
  const { composition, start, target_ph, say } = asked
  const fall = (start.ph - target_ph) / composition.water_share
  const hidden = { min: WASH_MOL_PER_KG_PH.min * fall, max: WASH_MOL_PER_KG_PH.max * fall }
  const dose_g = spanWith(asked, start.ph, { addition, amounts }, hidden)
  return {
    ...notKnown(washUncertain(say), bareGaps(composition)),
    verdict: 'range',
    dose_g,
    steps: stepsTo(dose_g.min, dose_g.min / 2, { of: bottleOf(addition, say), say }),
    because: [...factsOf(asked), { fact: say`a like wash took 12 mmol of acid equivalents per kg and unit of pH` }],
  }
}

const washUncertain = (say: Say): string =>
  say`A factor of three either way around one bench note (0.25 % citric acid from about pH 7 to 5 in a wash of glucosides and betaine): common practice, no measurement of this product. Dose in steps.`

/** Lines that can hold something, with a bound on how much. */
function withBound(asked: Partly, hidden_most: number, addition: Addition, amounts: Amounts): Way {
  const { composition, start, say } = asked
  const dose_g = spanWith(asked, start.ph, { addition, amounts }, { min: 0, max: hidden_most })
  return {
    ...notKnown('', bareGaps(composition)),
    verdict: 'range',
    dose_g,
    steps: stepsTo(dose_g.min, dose_g.min / 2, { of: bottleOf(addition, say), say }),
    uncertainty: say`From nothing to all acid groups that these lines can have; besides good to about ${MODEL_ERROR_PH} in pH.`,
    because: factsOf(asked),
  }
}

/** Some lines not known: what the known ones take is the least. */
function whenPartlyKnown(asked: CompositionAsked, addition: Addition, amounts: Amounts): Way {
  const { composition, start, target_ph, batch_g, say } = asked
  const unknown = bareGaps(composition)
  if (start === null)
    return notKnown(
      say`Not known without a reading of the pH at the start`,
      [...unknown, { says: say`the pH of the batch as it is: measure it and ask again with this reading` }],
      { because: factsOf(asked) },
    )
  const partly = { ...asked, start }
  if (composition.hidden_most_mol_per_l !== null)
    return withBound(partly, composition.hidden_most_mol_per_l, addition, amounts)
  const { min: from, max: to } = WASH_RANGE_PH
  const isWash = addition.kind === 'acid' && composition.unknown.every(({ wash }) => wash)
  if (isWash && start.ph <= to && target_ph >= from) return asWash(partly, addition, amounts)
  const { min: least_g } = spanWith(asked, start.ph, { addition, amounts }, { min: 0, max: 0 })
  return notKnown(say`Not known: at least ${say.short(least_g)} g, and how much more only readings tell`, unknown, {
    because: [
      ...factsOf(asked),
      { fact: say`what is known takes ${say.short(least_g)} g; what is not known comes on top` },
    ],
    steps: trialStep(Math.max(least_g / 2, trialOf(batch_g, addition.strength_percent)), bottleOf(addition, say), say),
  })
}

/** Nearer than this nobody measures. */
const THERE_PH = 0.05

const there = (asked: CompositionAsked): Way => ({
  way: 'composition',
  verdict: 'known',
  dose_g: { min: 0, max: 0 },
  likely_g: 0,
  still_g: null,
  steps: [],
  uncertainty: asked.say`It is there already, within the error of a reading.`,
  because: factsOf(asked),
  unknown: [],
})

/** The dose worked out from what the formula holds. */
export function byComposition(asked: CompositionAsked): Way {
  const { composition, start, addition, amounts, say } = asked
  if (composition.water_share < LEAST_WATER_SHARE)
    return notKnown(say`Not known: with so little water a pH means little`, [
      { says: say`water makes up ${say.short(composition.water_share * 100)} % of the product` },
    ])
  if (addition === null || amounts === null)
    return notKnown(
      say`Not known which way the pH has to go: the pH at the start is missing`,
      [
        ...composition.unknown.map(({ ingredient, says }) => ({ ingredient, says })),
        { says: say`the pH of the batch as it is: measure it` },
      ],
      { because: factsOf(asked) },
    )
  if (start && Math.abs(start.ph - asked.target_ph) <= THERE_PH) return there(asked)
  return composition.unknown.length === 0
    ? whenKnown(asked, addition, amounts)
    : whenPartlyKnown(asked, addition, amounts)
}
