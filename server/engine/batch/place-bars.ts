import type { Place, Placed } from './item.ts'
import { heatReason, practice, roleReason, solubilityReason } from './reasons.ts'
import { bears_c, dissolvesIn, hasClass, isFirst, isPowder, onlyInOil, playsHere } from './roles-here.ts'
import type { Setting } from './setting.ts'

/** Places in soap made with lye: lye, its water, the fats, and what goes in when it thickens. */
export const placeSoap = ({ context, say, items }: Setting): Placed[] =>
  items.map((item): Placed => {
    const { line } = item
    const role = roleReason(context, line)
    if (playsHere(context, line, 'lye')) return { ...item, place: 'lye', reasons: [role] }
    if (isPowder(line) && (dissolvesIn(line) === 'insoluble' || line.phase === 'powder'))
      return { ...item, place: 'powder', reasons: [role, practice(say`stirred in when the soap thickens`, say)] }
    if (line.phase === 'cool-down' || isFirst(context, line, 'scent', 'antioxidant', 'preservative'))
      return { ...item, place: 'cool', reasons: [role, practice(say`stirred in when the soap thickens`, say)] }
    if (dissolvesIn(line) === 'water') return { ...item, place: 'base', reasons: [solubilityReason(line, say)] }
    return { ...item, place: 'oil', reasons: [solubilityReason(line, say), role] }
  })

/** Places in a bar of dry surfactants: what melts, what is worked in, what comes when it cools. */
export const placeBar = ({ context, say, items, heat }: Setting): Placed[] =>
  items.map((item): Placed => {
    const { line } = item
    const tooHot = heat !== null && (bears_c(line) ?? Infinity) < heat.min_c
    const isLate = line.phase === 'cool-down' || isFirst(context, line, 'scent', 'preservative') || tooHot
    const isWash = isFirst(context, line, 'surfactant')
    const place = ((): Place => {
      if (isLate) return 'cool'
      if (isWash) return 'surfactant'
      if (hasClass(line, 'pigment') || (isPowder(line) && dissolvesIn(line) === 'insoluble')) return 'powder'
      return onlyInOil(line) || line.phase === 'oil' ? 'oil' : 'surfactant'
    })()
    return {
      ...item,
      place,
      reasons: [roleReason(context, line), isLate ? heatReason(line, say) : solubilityReason(line, say)],
    }
  })
