import { withMedia } from './place-media.ts'
import { phaseReason, solubilityReason } from './reasons.ts'
import { acidPartner, adjustsPh, neutralises } from './rules-ph.ts'
import { base, coolsDown, insoluble, oily } from './rules-phase.ts'
import { dissolvesHot, setsGum, thickens } from './rules-thickener.ts'
import { alcohols, traces, washes } from './rules-wash.ts'
import type { Placed } from './item.ts'
import type { Rule, Where } from './place-rule.ts'
import type { Setting } from './setting.ts'

const RULES: readonly Rule[] = [
  base,
  neutralises,
  acidPartner,
  adjustsPh,
  setsGum,
  thickens,
  alcohols,
  insoluble,
  washes,
  traces,
  coolsDown,
  oily,
  dissolvesHot,
]

/** Place of each line in a product with a water phase; the first rule that has a word decides. */
export function placeWatery(setting: Setting): Placed[] {
  const placed = setting.items.map((item): Placed => {
    const found = RULES.reduce<Where>((where, rule) => where ?? rule(item, setting), null)
    return {
      ...item,
      ...(found ?? {
        place: 'water',
        reasons: [solubilityReason(item.line, setting.say), phaseReason(item.line, item.stated, setting.say)],
      }),
    }
  })
  return withMedia(placed, setting)
}
