import { because } from '#engine/checks/say.ts'
import type { Need } from '#engine/model/records.ts'
import { englishOf } from './english-of.ts'
import type { Heat } from './heat.ts'
import type { Placed } from './item.ts'
import { isHotWetted } from './media.ts'
import type { Setting } from './setting.ts'

/** What the records of these lines say about how they are worked in. */
export const waysOf = (items: readonly Placed[]): Need[] =>
  items.flatMap(({ line }) => line.subject.needs.filter(({ need, says }) => need === 'process' && says !== ''))

export const told = (ways: readonly Need[]) => [...new Set(ways.map(({ says }) => says))].map((says) => because(says))

const HOT_AT = /above (\d+) C/

/** Heat of the water in which these gums are wetted, as their records say; null where none asks for it or says how hot. */
export function hotWaterFor(items: readonly Placed[], setting: Setting): Heat | null {
  const ways = waysOf(items.filter(({ line }) => isHotWetted(setting, line)))
  const at_c = ways
    .map(({ says }) => HOT_AT.exec(englishOf(says, setting.context.world))?.[1])
    .find((found) => found !== undefined)
  return at_c === undefined ? null : { min_c: Number(at_c), max_c: Number(at_c), because: told(ways) }
}
