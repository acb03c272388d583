import { nameOf } from '#engine/checks/say.ts'
import { numberOf } from '#engine/graph/subject.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import type { Say } from '#engine/words/say.ts'
import type { Placed } from './item.ts'
import { hasClass, isLiquid, playsHere } from './roles-here.ts'

const allNamed = (items: readonly Placed[], say: Say): string =>
  say.list(
    items.map(({ line }) => nameOf(line.subject)),
    'and',
  )

const ofClass = (items: readonly Placed[], ...classes: string[]): Placed[] =>
  items.filter(({ line }) => hasClass(line, ...classes))

/** An acid as supplied from this strength on burns [%]; usual practice, no figure of law. */
const BURNS_FROM_PERCENT = 50

const isStrongAcid = ({ line }: Placed): boolean =>
  isLiquid(line) &&
  hasClass(line, 'organic-acid', 'alpha-hydroxy-acid') &&
  (line.strength_percent ?? numberOf(line.subject, 'active_percent') ?? 0) >= BURNS_FROM_PERCENT

/** What can hurt while these lines are handled, each with the usual caution. */
export function hazardsOf(context: FormulaContext, items: readonly Placed[]): string[] {
  const { say } = context.world
  const burning = allNamed(ofClass(items, 'corrosive', 'strong-base', 'strong-acid'), say)
  const acids = allNamed(items.filter(isStrongAcid), say)
  const dusty = allNamed(ofClass(items, 'dust-hazard'), say)
  const flammable = allNamed(ofClass(items, 'flammable', 'short-alcohol'), say)
  const scents = allNamed(
    items.filter(({ line }) => playsHere(context, line, 'scent')),
    say,
  )
  return [
    burning &&
      say`${burning}: burns skin and eyes. Gloves and goggles; into water, never water onto it; water at hand to rinse.`,
    acids && say`${acids}: burns eyes and skin undiluted. Gloves and goggles; acid into water.`,
    dusty && say`${dusty}: do not breathe the dust. Dust mask while weighing and until it is wetted.`,
    flammable && say`${flammable}: catches fire. No flame, no open heating coil, and air the room.`,
    scents && say`${scents}: undiluted it irritates and can make allergic. Gloves, and air the room.`,
  ].filter((text) => text !== '')
}

export const hotOil = (say: Say): string =>
  say`Hot oil burns: heat in a water bath, never leave it alone, keep water drops and children away from it.`
export const hotWater = (say: Say): string =>
  say`Hot water and steam scald: cover the beaker, lift the lid away from you.`
