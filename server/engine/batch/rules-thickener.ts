import { isGum, isHotGum } from './media.ts'
import { asksHeat, at, heatAskReason, tooHotFor } from './place-rule.ts'
import { practice, roleReason, solubilityReason } from './reasons.ts'
import { hasClass, isFirst, isPowder, isSolid } from './roles-here.ts'
import type { Rule } from './place-rule.ts'

/** Ions that set a gum. */
export const setsGum: Rule = ({ line }, { context, say }) =>
  isFirst(context, line, 'gelling-ion') &&
  context.lines.some((other) => other.subject.needs.some(({ need }) => need === 'ions'))
    ? at('ions', roleReason(context, line), practice(say`the gum has to be dissolved before the ions set it`, say))
    : null

/** Polymers, clays and gums, each worked in its own way. */
export const thickens: Rule = (item, setting) => {
  const { line } = item
  const { context, say } = setting
  if (hasClass(line, 'acrylic-polymer') && !isPowder(line) && isFirst(context, line, 'thickener')) {
    const isAcid = line.subject.needs.some(({ need }) => need === 'neutraliser')
    return at(isAcid ? 'water' : 'thicken', roleReason(context, line), solubilityReason(line, say))
  }
  if (hasClass(line, 'acrylic-polymer') && isPowder(line))
    return at('polymer', roleReason(context, line), solubilityReason(line, say))
  if (hasClass(line, 'swelling-clay') && isFirst(context, line, 'thickener'))
    return at('clay', roleReason(context, line))
  if (isHotGum(setting, line)) return at('hot', roleReason(context, line), heatAskReason(item, say))
  if (isGum(setting, line) && !tooHotFor(item, setting))
    return at('gum', roleReason(context, line), solubilityReason(line, say))
  return null
}

/** Solids that water takes up only hot, where there is no oil phase. */
export const dissolvesHot: Rule = (item, { process, say }) =>
  process === 'one-phase' && asksHeat(item) && isSolid(item.line)
    ? at('hot', heatAskReason(item, say), solubilityReason(item.line, say))
    : null
