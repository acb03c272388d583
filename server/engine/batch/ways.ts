import { because } from '#engine/checks/say.ts'
import type { Need } from '#engine/model/records.ts'
import type { Heat } from './heat.ts'
import type { Placed } from './item.ts'
import { isHotWetted } from './media.ts'

/** What the records of these lines say about how they are worked in. */
export const waysOf = (items: readonly Placed[]): Need[] =>
  items.flatMap(({ line }) => line.subject.needs.filter(({ need, says }) => need === 'process' && says !== ''))

export const told = (ways: readonly Need[]) => [...new Set(ways.map(({ says }) => says))].map((says) => because(says))

/** Heat of the water in which these gums are wetted, as their records say; null where none asks for it or says how hot. */
export function hotWaterFor(items: readonly Placed[]): Heat | null {
  const ways = waysOf(items.filter(({ line }) => isHotWetted(line)))
  const at_c = ways.find(({ above_c }) => above_c !== undefined)?.above_c
  return at_c === undefined ? null : { min_c: at_c, max_c: at_c, because: told(ways) }
}
