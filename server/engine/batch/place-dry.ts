import { heatAsked } from '#engine/checks/heat-too-low.ts'
import { HAND_WARM_C, mostHeatAsked } from './heat.ts'
import type { Item, Place, Placed, Reason } from './item.ts'
import { pigmentOilFor } from './media.ts'
import { heatFact } from './place-rule.ts'
import { heatReason, phaseReason, practice, roleReason, solubilityReason } from './reasons.ts'
import { bears_c, dissolvesIn, hasClass, inOil, isFirst, isLiquid, isPowder, onlyInOil } from './roles-here.ts'
import type { Setting } from './setting.ts'

const asked_c = ({ line }: Item): number => heatAsked(line)?.asked_c ?? 0

/** Soft fats melt in the heat that waxes leave behind [C below the hardest line]. */
const BUTTER_BELOW_C = 15

const isDry = ({ line }: Item): boolean => isPowder(line) && !onlyInOil(line)
const isLate = ({ context, heat }: Setting, { line }: Item): boolean =>
  line.phase === 'cool-down' ||
  isFirst(context, line, 'scent', 'antioxidant', 'preservative') ||
  (heat !== null && (bears_c(line) ?? Infinity) < heat.min_c)

function inMelt(item: Item, setting: Setting, hardest_c: number): [Place, Reason[]] {
  const { line, stated } = item
  const { context, say } = setting
  if (isDry(item)) {
    const isFine = hasClass(line, 'pigment', 'metal-oxide')
    return [isFine ? 'pigment' : 'powder', [solubilityReason(line, say), roleReason(context, line)]]
  }
  if (isLate(setting, item) && !(asked_c(item) > HAND_WARM_C && inOil(line)))
    return ['cool', [roleReason(context, line), heatReason(line, say), phaseReason(line, stated, say)]]
  if (!inOil(line))
    return ['cool', [solubilityReason(line, say), practice(say`it does not melt into fat: stirred in last`, say)]]
  const asked = heatAsked(line)
  const melts = asked && asked.asked_c > HAND_WARM_C ? [heatFact(asked, say)] : []
  const isSoft = asked !== null && asked.asked_c <= hardest_c - BUTTER_BELOW_C && isFirst(context, line, 'emollient')
  return [isSoft ? 'butter' : 'oil', [solubilityReason(line, say), ...melts]]
}

const WAX_C = 55

/** Wax alone sets the moment cold butter meets it: the largest soft fats melt along with it until there is as much fat as wax. */
function withEnoughFat(placed: readonly Placed[]): Placed[] {
  const massOf = (items: readonly Placed[]): number => items.reduce((sum, { exact_g }) => sum + exact_g, 0)
  const melt = placed.filter(({ place }) => place === 'oil')
  const wax_g = massOf(melt.filter((item) => asked_c(item) >= WAX_C))
  let fat_g = massOf(melt) - wax_g
  const along = new Set<string>()
  const bySize = (a: Placed, b: Placed): number => b.exact_g - a.exact_g || (a.key < b.key ? -1 : 1)
  for (const butter of placed.filter(({ place }) => place === 'butter').sort(bySize)) {
    if (fat_g >= wax_g) break
    along.add(butter.key)
    fat_g += butter.exact_g
  }
  return placed.map((item) => (along.has(item.key) ? { ...item, place: 'oil' } : item))
}

/** Places in a product of fats, oils and waxes. */
export function placeAnhydrous(setting: Setting): Placed[] {
  const { say } = setting
  const hardest_c = mostHeatAsked(setting.items.map(({ line }) => line))?.asked_c ?? 0
  const placed = setting.items.map((item): Placed => {
    const [place, reasons] = inMelt(item, setting, hardest_c)
    return { ...item, place, reasons }
  })
  const eased = withEnoughFat(placed)
  const pigments = eased.filter(({ place }) => place === 'pigment')
  const grinder = pigmentOilFor(setting, pigments)
  return eased.map((item) => {
    if (item.key === grinder?.key)
      return { ...item, place: 'pigment-medium', reasons: [practice(say`wets the powder`, say), ...item.reasons] }
    return item.place === 'pigment' && !grinder ? { ...item, place: 'powder' } : item
  })
}

/** Places in a dry mix: powders, colours, and the liquids that bind. */
export const placePowder = (setting: Setting): Placed[] =>
  setting.items.map((item): Placed => {
    const { line } = item
    const reasons = [roleReason(setting.context, line), solubilityReason(line, setting.say)]
    if (!isPowder(line) && (isLiquid(line) || dissolvesIn(line) !== 'insoluble'))
      return { ...item, place: 'binder', reasons }
    return { ...item, place: isFirst(setting.context, line, 'colour') ? 'pigment' : 'powder', reasons }
  })
