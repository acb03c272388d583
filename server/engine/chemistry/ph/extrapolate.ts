import type { Additive } from './dose-to.ts'
import { doseTo } from './dose-to.ts'
import { chargeOf, effectiveBuffers } from './effective-buffer.ts'
import type { CurvePoint } from './effective-buffer.ts'
import { hiddenCharge, ionOf } from './hidden-charge.ts'
import type { Reading } from './hidden-charge.ts'
import type { Mixture } from './mixture.ts'

/** Readings of one product, an addition in growing amounts. */
export interface Titration {
  /** what is known to be in the product; nothing is a fair answer */
  known: Mixture
  additive: Additive
  /** the first without addition */
  readings: readonly Reading[]
  target_ph: number
  /** how far a reading may be off */
  error_ph: number
}

export interface Extrapolated {
  /** total addition that reaches the target [mol/L of water]: not less than min, hardly more than max */
  min: number
  max: number
  /** if what is not known holds on as between the last two readings */
  likely: number
  /** what can go in without passing the target, as far as the readings tell */
  plan: number
  /** mean capacity of what is not known, between the last two readings [mol/L per pH] */
  capacity: number
}

/**
 * What is not known may hold this many times more beyond the last reading than it held before. Own choice: it covers
 * nine of ten made-up products with up to three buffers (test/engine/chemistry/ph/extrapolate.test.ts).
 */
const MOST_TIMES_MORE = 10

/** Constants of buffers that act between the readings and the target reach this far beyond them. */
const BEYOND_PH = 1

const pointOf = ({ known, additive, error_ph }: Titration, reading: Reading): CurvePoint => {
  const at = (ph: number): number => hiddenCharge(known, additive, { ...reading, ph })
  const error = Math.abs(at(reading.ph + error_ph) - at(reading.ph - error_ph)) / 2
  return { ph: reading.ph, charge: at(reading.ph), error: Math.max(error, 1e-9) }
}

/** Mean capacity between two points and its largest and least value within the errors; never negative. */
function capacityBetween(from: CurvePoint, to: CurvePoint, error_ph: number) {
  const span = Math.abs(from.ph - to.ph)
  const held = (to.charge - from.charge) * Math.sign(from.ph - to.ph)
  const slack = from.error + to.error
  return {
    mean: Math.max(0, held / Math.max(span, error_ph)),
    most: Math.max(0, held + slack) / Math.max(span, error_ph),
    contradicts: held < -slack,
  }
}

/** True where what is said to be in the product would hold more than the readings show: then it is not in it like that. */
export function contradicts(titration: Titration): boolean {
  const points = titration.readings.map((reading) => pointOf(titration, reading))
  return points.slice(1).some((to, index) => {
    const from = points[index]
    return from !== undefined && capacityBetween(from, to, titration.error_ph).contradicts
  })
}

/** How far the hidden curve may rise from the last reading to the target [mol/L]. */
interface Rise {
  least: number
  likely: number
  most: number
}

function riseOf(titration: Titration, points: readonly CurvePoint[], capacity: { mean: number; most: number }): Rise {
  const { readings, target_ph } = titration
  const last_ph = readings.at(-1)?.ph ?? target_ph
  const down = Math.sign(last_ph - target_ph)
  const distance = Math.abs(last_ph - target_ph)
  const rises = effectiveBuffers(points, rangeOf(titration)).map(
    (buffer) => down * (chargeOf(buffer, target_ph) - chargeOf(buffer, last_ph)),
  )
  const least = rises.length === 0 ? 0 : Math.max(0, Math.min(...rises))
  const likely = Math.max(least, capacity.mean * distance)
  const cap = MOST_TIMES_MORE * capacity.most * distance
  return { least, likely, most: Math.max(likely, rises.length === 0 ? cap : Math.min(cap, Math.max(...rises))) }
}

/**
 * How much of an addition reaches a pH, from readings at the bench.
 *
 * What is known (water, the addition itself, named acids) is worked out; the rest is a hidden buffer curve of which the
 * readings are points. The curve can only rise towards the target, so that the least dose lets it stay where the last
 * reading left it, that reading taken at the worse end of its error. The largest lets it rise like the effective buffers
 * that fit all readings, at most ten times as steeply as between the last two; the plan lets it rise like the one of
 * them that rises least.
 *
 * @returns  null where there are fewer than two readings or the target cannot be reached with the addition
 *
 * A straight line through two readings knows none of this: taken on a plateau it leads far past the target.
 * The least dose holds whatever is in the product; the others are estimates.
 */
export function extrapolate(titration: Titration): Extrapolated | null {
  const { known, additive, readings, target_ph, error_ph } = titration
  const last = readings.at(-1)
  const points = readings.map((reading) => pointOf(titration, reading))
  const [from, to] = [points.at(-2), points.at(-1)]
  if (!last || !from || !to) return null
  const down = Math.sign(last.ph - target_ph) // 1 on the way down, -1 on the way up
  /** The last reading off by `off`, and a hidden curve that rises from there. */
  const doseWith = (off: number, rise: number): number | null => {
    const hidden = hiddenCharge(known, additive, { ...last, ph: last.ph + down * off }) + down * rise
    return doseTo({ ...known, ions: [...known.ions, ionOf(hidden)] }, additive, target_ph)
  }
  const capacity = capacityBetween(from, to, error_ph)
  const rise = riseOf(titration, points, capacity)
  const most = doseWith(error_ph, rise.most)
  if (most === null) return null
  const atLeast = (dose: number | null): number => Math.max(dose ?? 0, last.added_mol_per_l)
  const min = atLeast(doseWith(-error_ph, 0))
  const likely = Math.max(min, atLeast(doseWith(0, rise.likely)))
  const plan = atLeast(doseWith(-error_ph, rise.least))
  return { min, likely, plan, max: Math.max(likely, atLeast(most)), capacity: capacity.mean }
}

function rangeOf({ readings, target_ph }: Titration): { min: number; max: number } {
  const all = [target_ph, ...readings.map(({ ph }) => ph)]
  return { min: Math.min(...all) - BEYOND_PH, max: Math.max(...all) + BEYOND_PH }
}
