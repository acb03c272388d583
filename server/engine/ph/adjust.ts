import { diluted } from '#engine/chemistry/ph/dilute.ts'
import type { Mixture } from '#engine/chemistry/ph/mixture.ts'
import { solvePh } from '#engine/chemistry/ph/solve-ph.ts'
import { buildContext } from '#engine/formula/build-context.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import type { World } from '#engine/graph/world.ts'
import type { Say } from '#engine/words/say.ts'
import { roundTo } from '#engine/units/round.ts'
import { additionFor, mustPull } from './additive.ts'
import type { Addition } from './additive.ts'
import type { AdjustAsked, Adjusted, Chosen } from './adjust-types.ts'
import { amountsOf } from './amounts.ts'
import { byComposition, fittedTo, LEAST_WATER_SHARE } from './by-composition.ts'
import { byReadings } from './by-readings.ts'
import { commonOf } from './common-window.ts'
import { compositionOf } from './composition.ts'
import type { Composition } from './composition.ts'
import { hazardsOf } from './hazards.ts'
import { lineWindows } from './line-window.ts'
import { judgePh, sourcesOfWindows, withoutWindow } from './ph-window.ts'
import { DILUTION_ERROR_PH, mustFollow, mustMove, READING_ERROR_PH } from './readings.ts'
import { trapsOf } from './traps.ts'

const ROOM_C = 25
/** Without a reading the lines are looked at over this range. */
const USUAL_RANGE = { min: 4.5, max: 9 }
/** A stated pH this near the target is the target, not a reading. */
const SAME_PH = 0.05
const USUAL_DILUTION_PERCENT = 10

const rangeOf = (phs: readonly number[], target_ph: number): { min: number; max: number } =>
  phs.length === 0
    ? { min: Math.min(target_ph, USUAL_RANGE.min), max: Math.max(target_ph, USUAL_RANGE.max) }
    : { min: Math.min(target_ph, ...phs), max: Math.max(target_ph, ...phs) }

/** Whether the water of a composition is known well enough to work with. */
const isKnown = ({ unknown, own, water_share }: Composition): boolean =>
  unknown.length === 0 && own !== null && water_share >= LEAST_WATER_SHARE

/** Unknown lines that can hold so little beside the known ones may be left out of a start pH. */
const NEGLIGIBLE_SHARE = 0.05

const isNearlyKnown = (composition: Composition): boolean => {
  const { own, water_share, hidden_most_mol_per_l: hidden, mixture } = composition
  const held = mixture.systems.reduce((sum, { mol_per_l }) => sum + mol_per_l, 0)
  return own !== null && water_share >= LEAST_WATER_SHARE && hidden !== null && hidden <= held * NEGLIGIBLE_SHARE
}

/** Shift from the product to a dilution of it, where the composition tells; null where it does not. */
function dilutionShift(composition: Composition, ph: number, percent: number): number | null {
  if (!isKnown(composition)) return null
  const mixture = fittedTo(composition.mixture, ph)
  return solvePh(diluted(mixture, percent / 100)).ph - ph
}

function startOf(asked: AdjustAsked, product_ph: readonly number[], composition: Composition): Adjusted['start'] {
  const [first] = product_ph
  if (first !== undefined) return { ph: first, from: 'measured' }
  const { ph } = asked.formula
  if (ph !== null && Math.abs(ph - asked.target_ph) > SAME_PH) return { ph, from: 'formula' }
  return isNearlyKnown(composition) && composition.own
    ? { ph: roundTo(composition.own.ph, 2), from: 'composition' }
    : null
}

function windowOf(context: FormulaContext, target_ph: number): Adjusted['window'] {
  const windows = lineWindows(context)
  const { window, low, high } = commonOf(windows)
  const { verdict, objections } = judgePh(target_ph, windows)
  return { common: window, low, high, verdict, objections, unknown: withoutWindow(context, windows) }
}

function dilutionTestOf(composition: Composition, asked: AdjustAsked, say: Say): Adjusted['dilutionTest'] {
  const product_percent = asked.diluted ?? USUAL_DILUTION_PERCENT
  const shift = dilutionShift(composition, asked.target_ph, product_percent)
  if (shift === null) return null
  const ph_diluted = roundTo(asked.target_ph + shift, 2)
  return {
    product_percent,
    ph: asked.target_ph,
    ph_diluted,
    text: say`When the product is at pH ${say.short(asked.target_ph)}, a dilution with ${say.short(product_percent)} % of it in fresh distilled water reads about ${say.short(ph_diluted)}.`,
  }
}

/** Readings as pH of the product itself, and how far they may be off. */
function readingsOf(asked: AdjustAsked, composition: Composition): { product_ph: number[]; error_ph: number } {
  const measured = asked.measured ?? []
  const error_ph = READING_ERROR_PH[asked.meter ?? 'meter']
  const percent = asked.diluted
  if (percent === undefined || percent === 100) return { product_ph: measured.map(({ ph }) => ph), error_ph }
  const shifts = measured.map(({ ph }) => dilutionShift(composition, ph, percent))
  const product_ph = measured.map(({ ph }, n) => Math.min(14, Math.max(0, ph - (shifts[n] ?? 0))))
  return { product_ph, error_ph: shifts.includes(null) ? error_ph + DILUTION_ERROR_PH : error_ph }
}

const chosenOf = ({ ingredient, inci, kind, strength_percent, proposed }: Addition): Chosen => ({
  ingredient,
  inci,
  kind,
  strength_percent,
  proposed,
})

const sourcesOf = (composition: Composition, addition: Addition | null, windows: string[]): string[] => {
  const acids = [...composition.acids, ...(addition?.compound.acids ?? []).map(({ acid }) => acid)]
  const constants = acids.flatMap(({ steps }) => steps.map(({ source }) => source))
  return [...new Set(['PHREEQC-MINTEQ', 'MALMBERG1956', 'practice', ...constants, ...windows])].sort()
}

/** The addition and the mixture it goes into. @throws RangeError "with: …" where it pulls the wrong way */
function choose(context: FormulaContext, asked: AdjustAsked, at: { ph: number | undefined; error_ph: number }) {
  const { ph, error_ph } = at
  const distance = ph === undefined ? 0 : asked.target_ph - ph
  const way = ph === undefined ? null : distance < 0 ? 'acid' : 'base'
  const addition = additionFor(context, { ...asked, temp_c: asked.temp_c ?? ROOM_C }, way)
  if (addition && way && ph !== undefined && Math.abs(distance) > error_ph)
    mustPull(addition, way, { ph, target_ph: asked.target_ph })
  return addition
}

const nothingKnown = (temp_c: number): Mixture => ({ systems: [], ions: [], temp_c })

/**
 * How to bring a batch to a pH: dose by composition, dose by readings at the bench, what misleads and what can hurt.
 *
 * @throws RangeError naming the field: readings that do not follow on one another, an addition that is neither acid nor
 *   base or pulls the other way
 */
export function adjustPh(world: World, asked: AdjustAsked): Adjusted {
  const { target_ph, batch_g, temp_c = ROOM_C, meter = 'meter' } = asked
  const measured = asked.measured ?? []
  mustFollow(measured)
  const context = buildContext(asked.formula, world)
  const stated_ph = asked.formula.ph === null ? [] : [asked.formula.ph]
  const phs = measured.length > 0 ? measured.map(({ ph }) => ph) : stated_ph
  const composition = compositionOf(context, temp_c, rangeOf(phs, target_ph))
  const { product_ph, error_ph } = readingsOf(asked, composition)
  const start = startOf(asked, product_ph, composition)
  const addition = choose(context, asked, { ph: product_ph.at(-1) ?? start?.ph, error_ph })
  if (addition && asked.with !== undefined) mustMove(measured, addition, error_ph)
  const amounts = addition && composition.water_share > 0 ? amountsOf(addition, batch_g, composition.water_share) : null
  const shared = { addition, amounts, target_ph, batch_g, say: world.say }
  const byLines = byComposition({ ...shared, composition, start })
  const known = composition.water_share >= LEAST_WATER_SHARE ? composition.mixture : nothingKnown(temp_c)
  const byBench = byReadings({
    ...shared,
    ...{ measured, product_ph, known, error_ph, composition: byLines, chosen: asked.with !== undefined },
  })
  return {
    target_ph,
    start,
    with: addition ? chosenOf(addition) : null,
    reading: { meter, error_ph, temp_c, diluted_percent: asked.diluted ?? null },
    window: windowOf(context, target_ph),
    ways: [byLines, byBench],
    dilutionTest: dilutionTestOf(composition, asked, world.say),
    warnings: trapsOf({
      context,
      composition,
      addition,
      asked,
      temp_c,
      ionic_strength: composition.own?.ionic_strength ?? Infinity,
    }),
    cautions: hazardsOf(addition, world.say),
    sources: sourcesOf(composition, addition, sourcesOfWindows(lineWindows(context))),
  }
}
