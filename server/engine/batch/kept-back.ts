import { numberOf } from '#engine/graph/subject.ts'
import type { Placed } from './item.ts'
import { isHotWetted } from './media.ts'
import type { KeptBack } from './plan.ts'
import { massOf } from './plan.ts'
import { dissolvesIn, hasClass, isFirst, isPowder, isSolid } from './roles-here.ts'
import type { Setting } from './setting.ts'

/** A lesser line is weighed as a stock solution instead (its remark says how). */
const LEAST_UNITS = 10
/** Alkali and acid for pH are used as solutions of a fifth. */
const PH_TIMES = 4
const DISSOLVES_TIMES = 2
const LEAST_TIMES = 1.5
/** A little more than the least water that dissolves it. */
const SPARE = 1.3
const POLYMER_TIMES = 50
/** More than this is no longer a little water kept back [share of the water]. */
const MOST_OF_WATER = 0.35

const timesFor = ({ line }: Placed): number => {
  if (hasClass(line, 'polysaccharide', 'cellulose-ether')) return POLYMER_TIMES
  const limit_percent = numberOf(line.subject, 'water_solubility_percent')
  if (limit_percent === undefined || limit_percent >= 100) return DISSOLVES_TIMES
  return Math.max(LEAST_TIMES, (SPARE * (100 - limit_percent)) / limit_percent)
}

/** Gums that are wetted hot get a part of the water hot and the rest cold. */
const COLD_PART = 0.6

/** Water [g] that the powders of each step need beside the batch. */
function wanted({ context, process, heat }: Setting, placed: readonly Placed[]): [string, number][] {
  const at = (place: Placed['place'], fits: (item: Placed) => boolean) =>
    placed.filter((item) => item.place === place && item.units >= LEAST_UNITS && fits(item))
  const cold = process === 'emulsion' && heat !== null && context.form !== 'water-in-oil'
  const cool = cold ? at('cool', ({ line }) => isPowder(line) && dissolvesIn(line) === 'water') : []
  const solid = ({ line }: Placed): boolean => isSolid(line) && dissolvesIn(line) === 'water'
  return [
    ['cool-down', cool.reduce((sum, item) => sum + item.exact_g * timesFor(item), 0)],
    ['ph', massOf(at('ph', solid)) * PH_TIMES],
    ['neutralise', massOf(at('neutraliser', solid)) * PH_TIMES],
  ]
}

/** Water taken from the water phase for powders that go in later as a solution; null where there is none to take. */
export function keptBackOf(setting: Setting, placed: readonly Placed[], step_g: number): KeptBack | null {
  const water = placed
    .filter(({ place, line }) => place === 'base' && isFirst(setting.context, line, 'water'))
    .sort((a, b) => b.exact_g - a.exact_g)[0]
  if (!water) return null
  const small = wanted(setting, placed)
    .map(([step, mass_g]) => [step, Math.ceil(mass_g / step_g - 1e-9)] as const)
    .filter(([, count]) => count > 0)
  const total = small.reduce((sum, [, count]) => sum + count, 0)
  const later = total > MOST_OF_WATER * water.units ? [] : small
  const cold = placed.some(({ place, line }) => place === 'gum' && isHotWetted(line))
    ? [['water-phase', Math.floor(water.units * COLD_PART)] as const]
    : []
  const units = new Map([...cold, ...later])
  return units.size === 0 ? null : { key: water.key, units }
}
