import { usedClaim } from '#engine/graph/subject.ts'
import type { Item } from './item.ts'
import { asksHeat, at, heatAskReason, tooHotFor } from './place-rule.ts'
import type { Rule } from './place-rule.ts'
import { heatReason, phaseReason, practice, roleReason, solubilityReason } from './reasons.ts'
import {
  bears_c,
  dissolvesIn,
  hasClass,
  inOil,
  isFirst,
  isPowder,
  isSolid,
  onlyInOil,
  playsHere,
} from './roles-here.ts'

/** Water and plant waters. */
export const base: Rule = (item, setting) => {
  const { line } = item
  if (!isFirst(setting.context, line, 'water-phase')) return null
  // Where no other water is there to carry the batch, it has to bear the heat; the check warns of that.
  const hasOther = setting.items.some(
    (one) => one.key !== item.key && isFirst(setting.context, one.line, 'water-phase') && !tooHotFor(one, setting),
  )
  if (hasOther && item.stated === 'cool-down') return at('cool', phaseReason(line, item.stated, setting.say))
  return hasOther && tooHotFor(item, setting)
    ? at('cool', heatReason(line, setting.say))
    : at('base', roleReason(setting.context, line))
}

/** Powders that neither dissolve nor melt. */
export const insoluble: Rule = (item, { context, say, process }) => {
  const { line } = item
  const isGrain = isPowder(line) || (isSolid(line) && dissolvesIn(line) === 'insoluble')
  if (!isGrain || (dissolvesIn(line) !== 'insoluble' && line.phase !== 'powder')) return null
  const isFine = hasClass(line, 'pigment', 'metal-oxide') && !hasClass(line, 'pearl')
  return process === 'emulsion' && isFine
    ? at('pigment', solubilityReason(line, say), practice(say`ground into oil, it does not clot`, say))
    : at('powder', solubilityReason(line, say), roleReason(context, line))
}

/** Neither phase nor heat limit on record. */
const isOpen = (line: Item['line']): boolean =>
  usedClaim(line.subject, 'phase') === undefined && bears_c(line) === undefined

/** What goes in when the batch has cooled: by its heat limit, by the recipe or its record, and what preserves or scents. */
export const coolsDown: Rule = (item, setting) => {
  const { line, stated } = item
  const { context, say, heat, process } = setting
  if (tooHotFor(item, setting)) return at('cool', heatReason(line, say), roleReason(context, line))
  if (heat !== null && stated === undefined && isOpen(line) && isFirst(context, line, 'plant-extract', 'active'))
    return at('cool', heatReason(line, say), practice(say`what is not known to bear heat goes in after it`, say))
  const isLate = line.phase === 'cool-down' || isFirst(context, line, 'preservative', 'scent')
  if (!isLate) return null
  if (isSolid(line) && !isPowder(line) && asksHeat(item)) return null // it would stay as grains
  if (heat === null && process === 'one-phase' && isPowder(line) && dissolvesIn(line) === 'water')
    return at(
      'water',
      solubilityReason(line, say),
      practice(say`a powder dissolves best before the batch is thick`, say),
    )
  const holds = heat !== null && (bears_c(line) ?? -Infinity) >= heat.max_c
  if (context.form === 'water-in-oil' && dissolvesIn(line) === 'water' && holds)
    return at(
      'water',
      heatReason(line, say),
      practice(say`in a water-in-oil emulsion it no longer reaches the droplets later`, say),
    )
  return at('cool', roleReason(context, line), heatReason(line, say), phaseReason(line, stated, say))
}

const OILY = ['emulsifier', 'cationic-conditioner', 'structurant', 'emollient']

/** What melts or mixes into the oil phase. */
export const oily: Rule = (item, { context, say, process }) => {
  const { line, stated } = item
  if (process !== 'emulsion') return null
  const isOily =
    onlyInOil(line) ||
    line.phase === 'oil' ||
    (inOil(line) && line.phase !== 'water' && playsHere(context, line, ...OILY))
  if (!isOily || stated === 'water') return null
  return at(
    'oil',
    solubilityReason(line, say),
    ...(asksHeat(item) ? [heatAskReason(item, say)] : []),
    phaseReason(line, stated, say),
  )
}
