import { nameOf } from '#engine/checks/say.ts'
import { numberOf } from '#engine/graph/subject.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import type { Placed } from './item.ts'
import { hasClass, isLiquid, playsHere } from './roles-here.ts'
import { listed } from './draft.ts'

const naming = (items: readonly Placed[], classes: readonly string[]): string =>
  listed(items.filter(({ line }) => hasClass(line, ...classes)).map(({ line }) => nameOf(line.subject)))

/** An acid as supplied from this strength on burns [%]; usual practice, no figure of law. */
const BURNS_FROM_PERCENT = 50

const isStrongAcid = ({ line }: Placed): boolean =>
  isLiquid(line) &&
  hasClass(line, 'organic-acid', 'alpha-hydroxy-acid') &&
  (line.strength_percent ?? numberOf(line.subject, 'active_percent') ?? 0) >= BURNS_FROM_PERCENT

/** What can hurt while these lines are handled, each with the usual caution. */
export function hazardsOf(context: FormulaContext, items: readonly Placed[]): string[] {
  const burning = naming(items, ['corrosive', 'strong-base', 'strong-acid'])
  const acids = listed(items.filter(isStrongAcid).map(({ line }) => nameOf(line.subject)))
  const dusty = naming(items, ['dust-hazard'])
  const flammable = naming(items, ['flammable', 'short-alcohol'])
  const scents = listed(
    items.filter(({ line }) => playsHere(context, line, 'scent')).map(({ line }) => nameOf(line.subject)),
  )
  return [
    burning &&
      `${burning}: burns skin and eyes. Gloves and goggles; into water, never water onto it; water at hand to rinse.`,
    acids && `${acids}: burns eyes and skin undiluted. Gloves and goggles; acid into water.`,
    dusty && `${dusty}: do not breathe the dust. Dust mask while weighing and until it is wetted.`,
    flammable && `${flammable}: catches fire. No flame, no open heating coil, and air the room.`,
    scents && `${scents}: undiluted it irritates and can make allergic. Gloves, and air the room.`,
  ].filter((text) => text !== '')
}

export const HOT_OIL =
  'Hot oil burns: heat in a water bath, never leave it alone, keep water drops and children away from it.'
export const HOT_WATER = 'Hot water and steam scald: cover the beaker, lift the lid away from you.'
