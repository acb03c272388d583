import { heatAsked } from '#engine/checks/heat-too-low.ts'
import { asksHeat, at, heatAskReason } from './place-rule.ts'
import { heatReason, practice, roleReason, solubilityReason } from './reasons.ts'
import { isFirst, isPowder, isSolid, onlyInOil, playsHere } from './roles-here.ts'
import type { Rule } from './place-rule.ts'

/** Surfactants and what thickens or clouds a wash through them. */
export const washes: Rule = (item, { context, say, process }) => {
  const { line } = item
  const isWash = context.form === 'wash' || process === 'one-phase'
  const melts = isSolid(line) && asksHeat(item)
  if (isFirst(context, line, 'surfactant-thickener', 'opacifier', 'foam-booster') && melts)
    return at(process === 'emulsion' ? 'oil' : 'warm-surfactant', roleReason(context, line), heatAskReason(item, say))
  if (isFirst(context, line, 'surfactant-thickener') && !playsHere(context, line, 'surfactant'))
    return at(
      'thicken',
      roleReason(context, line),
      practice(say`a wash is thickened at the end, when its pH is right`, say),
    )
  if (!isFirst(context, line, 'surfactant', 'surfactant-thickener')) return null
  if (!isWash && playsHere(context, line, 'emulsifier'))
    return at('water', roleReason(context, line), solubilityReason(line, say))
  if (melts && isPowder(line)) return at('warm-surfactant', roleReason(context, line), heatAskReason(item, say))
  return at(
    'surfactant',
    roleReason(context, line),
    practice(say`surfactants go in last and gently, or the batch foams`, say),
  )
}

const ALCOHOL_PERCENT = 10

/** Much alcohol, and what dissolves in it. */
export const alcohols: Rule = ({ line }, { context, say, process }) => {
  if (process !== 'one-phase') return null
  const alcohol_percent = context.lines.reduce(
    (sum, one) => sum + (isFirst(context, one, 'alcohol-solvent') ? one.share_percent : 0),
    0,
  )
  if (alcohol_percent < ALCOHOL_PERCENT) return null
  if (isFirst(context, line, 'alcohol-solvent')) return at('alcohol', roleReason(context, line), heatReason(line, say))
  return onlyInOil(line)
    ? at('alcohol', solubilityReason(line, say), practice(say`oils and scents dissolve in the alcohol first`, say))
    : null
}

/** A solid that melts lower dissolves in scent or surfactant without heat [C]. */
const MELTS_C = 45

/** Traces of oil in a product without oil phase, and what dissolves them there. */
export const traces: Rule = (item, { context, say, process }) => {
  const { line } = item
  if (process !== 'one-phase') return null
  if (context.form === 'wash' && onlyInOil(line) && isSolid(line) && (heatAsked(line)?.asked_c ?? 0) >= MELTS_C)
    return at('warm-surfactant', solubilityReason(line, say), heatAskReason(item, say))
  const isTrace = (one: typeof line): boolean => onlyInOil(one) && !isFirst(context, one, 'surfactant')
  if (isTrace(line))
    return at(
      'premix',
      solubilityReason(line, say),
      practice(say`mixed with what dissolves it before it meets water`, say),
    )
  if (!isFirst(context, line, 'solubiliser', 'emulsifier')) return null
  if (isSolid(line) && asksHeat(item)) return at('hot', roleReason(context, line), heatAskReason(item, say))
  return context.lines.some(isTrace)
    ? at('premix', roleReason(context, line), practice(say`takes the oils up before they meet water`, say))
    : at('surfactant', roleReason(context, line), solubilityReason(line, say))
}
