import { because } from '#engine/checks/say.ts'
import { isGum, needsOtherLiquid, pigmentOilFor, solventFor, surfactantCarrier, wetterFor } from './media.ts'
import { practice } from './reasons.ts'
import type { Place, Placed, Reason } from './item.ts'
import type { Setting } from './setting.ts'

const moved = (item: Placed, place: Place, why: Reason): Placed => ({ ...item, place, reasons: [why] })

const firstReasons = ({ line }: Placed): Reason[] =>
  line.subject.needs.filter(({ need }) => need === 'process' || need === 'solubiliser').map(({ says }) => because(says))

/** Gives the helpers their place: the liquid that wets, dissolves, grinds or melts what cannot go in by itself. */
export function withMedia(placed: readonly Placed[], setting: Setting): Placed[] {
  const { say } = setting
  const hard = placed.filter((item) => ['water', 'cool'].includes(item.place) && needsOtherLiquid(setting, item.line))
  const solvent = solventFor(setting, hard)
  const gums = placed.filter(({ place }) => place === 'gum')
  const wetter = wetterFor(
    setting,
    [...gums, ...placed.filter(({ place }) => place === 'hot')].filter(({ line }) => isGum(setting, line)),
    solvent,
  )
  const pigments = placed.filter(({ place }) => place === 'pigment')
  const grinder = pigmentOilFor(setting, pigments)
  const melted = placed.filter(({ place }) => place === 'warm-surfactant')
  const carrier = melted.length > 0 ? surfactantCarrier(setting) : null
  return placed.map((item) => {
    if (solvent && hard.includes(item))
      return { ...item, place: 'first', reasons: [...firstReasons(item), ...item.reasons] }
    if (item.key === solvent?.key)
      return moved(item, 'first-medium', practice(say`takes up what hardly dissolves in water`, say))
    if (item.key === wetter?.key)
      return moved(item, 'gum-medium', practice(say`wets the gum without swelling it, so that it does not lump`, say))
    if (item.key === grinder?.key) return moved(item, 'pigment-medium', practice(say`wets the powder`, say))
    if (item.place === 'pigment' && !grinder) return { ...item, place: 'powder' }
    // Without a liquid surfactant to melt into, only hot water is left.
    if (item.place === 'warm-surfactant' && !carrier) return { ...item, place: 'hot' }
    if (item.key === carrier?.key)
      return moved(item, 'warm-surfactant', practice(say`takes up what melts into it`, say))
    return item
  })
}
