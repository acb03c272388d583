import { heatAsked } from '#engine/checks/heat-too-low.ts'
import { because } from '#engine/checks/say.ts'
import type { Say } from '#engine/words/say.ts'
import { HAND_WARM_C } from './heat.ts'
import { bears_c } from './roles-here.ts'
import type { Item, Place, Reason } from './item.ts'
import type { Setting } from './setting.ts'

/** Where a line goes, or null where the rule has no word on it. */
export type Where = { place: Place; reasons: Reason[] } | null
export type Rule = (item: Item, setting: Setting) => Where

export const at = (place: Place, ...reasons: Reason[]): Where => ({ place, reasons })

/** What heat a line asks for, with the claim. */
export const heatFact = ({ what, asked_c, claim }: NonNullable<ReturnType<typeof heatAsked>>, say: Say): Reason =>
  because(what === 'needs' ? say`needs ${asked_c} °C` : say`melts up to ${asked_c} °C`, claim)

export const heatAskReason = ({ line }: Item, say: Say): Reason => {
  const asked = heatAsked(line)
  return asked ? heatFact(asked, say) : because(say`what heat it needs is not on record`)
}

/** Whether it has to be warmer than a hand to melt or dissolve. */
export const asksHeat = ({ line }: Item): boolean => (heatAsked(line)?.asked_c ?? 0) > HAND_WARM_C

/** Whether the heat of this work is more than it bears. */
export const tooHotFor = ({ line }: Item, { heat }: Setting): boolean =>
  heat !== null && (bears_c(line) ?? Infinity) < heat.min_c
